package sillwright.page;

import sillwright.measure.Refused;

/// What is refused for a reason that has a status of its own, such as what is not there.
///
/// @see Refused which alone is answered with 400
final class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1;
    private final int status;
    private final transient Refused refused;

    Refusal(int status, Refused refused) {
        super(refused);
        this.status = status;
        this.refused = refused;
    }

    Refusal(int status, String where, String what, String mend, Object... values) { this(status, new Refused(where, what, mend, values)); }

    static Refusal notThere(String where, String what, String mend, Object... values) { return new Refusal(404, where, what, mend, values); }

    int status() { return status; }

    Refused refused() { return refused; }
}
