package sillwright.work;

import sillwright.walk.Member;

/// How much the shape of a piece itself is worth keeping, whatever its wood. Own choice, by what it is: the order a review board would put them in.
enum Worth {
    /// Flat stock that any yard sells again.
    PLAIN(0.6),
    /// Worked or fitted on the building.
    WORKED(0.7),
    /// Turned, carved or moulded: made once, for this house.
    ORNAMENT(0.8);

    private final double renew;

    Worth(double renew) { this.renew = renew; }

    /// A splice may renew so much of the piece; past that it is made anew.
    double renew() { return renew; }

    static Worth of(Member member) {
        return switch (member.kind()) {
            case COLUMN, COLUMN_BASE, BRICKMOULD, BALUSTER, NEWEL, BRACKET, SASH, DOOR, SHUTTER, FRIEZE -> ORNAMENT;
            case FLOORBOARD, CLAPBOARD, SHINGLE, TREAD, JOIST, STRINGER, SOFFIT -> PLAIN;
            case SILL, WINDOW_SILL, THRESHOLD, POST, PLINTH, BEAM, FASCIA, RAKE_BOARD, CORNER_BOARD, CASING, HEAD_CASING, WATER_TABLE, SKIRT_BOARD, RAIL, OTHER -> WORKED;
        };
    }
}
