package sillwright.walk;

import java.util.Optional;

import sillwright.measure.Quantity;
import sillwright.measure.Refused;

/// Checks that several records share.
final class Measured {
    private Measured() {}

    static void positive(String field, Quantity value) {
        if (!(value.own() > 0)) throw new Refused(field, "{} is not more than nothing", "measure it again, or leave it out if it may be left out", value);
    }

    static void notNegative(String field, Quantity value) {
        if (!(value.own() >= 0)) throw new Refused(field, "{} is less than nothing", "measure it again, or leave it out if it may be left out", value);
    }

    static void notNegative(String field, Optional<Quantity> value) { value.ifPresent(v -> notNegative(field, v)); }

    static void positive(String field, Optional<Quantity> value) { value.ifPresent(v -> positive(field, v)); }
}
