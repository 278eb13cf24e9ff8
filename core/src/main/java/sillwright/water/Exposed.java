package sillwright.water;

import sillwright.walk.Member;

/// Which members stand out in front of the wall, and which belong to it.
final class Exposed {
    private Exposed() {}

    /// Parts of porches, steps and stoops, which damp from indoors never reaches.
    static boolean inFront(Member member) {
        return switch (member.kind()) {
            case POST, COLUMN, COLUMN_BASE, PLINTH, BEAM, JOIST, STRINGER, TREAD, RAIL, BALUSTER, NEWEL, FLOORBOARD -> true;
            case SILL, WINDOW_SILL, THRESHOLD, FASCIA, SOFFIT, FRIEZE, RAKE_BOARD, CORNER_BOARD, CASING, BRICKMOULD, HEAD_CASING, CLAPBOARD, SHINGLE,
                 WATER_TABLE, SKIRT_BOARD, BRACKET, SASH, DOOR, SHUTTER, OTHER -> false;
        };
    }

    /// Parts of a roof edge, which belong to whatever roof they are under.
    static boolean atEave(Member member) {
        return switch (member.kind()) {
            case FASCIA, SOFFIT, FRIEZE, RAKE_BOARD, BEAM, BRACKET, OTHER -> true;
            case SILL, WINDOW_SILL, THRESHOLD, POST, COLUMN, COLUMN_BASE, PLINTH, JOIST, CORNER_BOARD, CASING, BRICKMOULD, HEAD_CASING, CLAPBOARD,
                 SHINGLE, WATER_TABLE, SKIRT_BOARD, STRINGER, TREAD, RAIL, BALUSTER, NEWEL, FLOORBOARD, SASH, DOOR, SHUTTER -> false;
        };
    }

    /// What may stand or lie on a porch floor, or be one.
    static boolean onPorch(Member member) {
        return member.contact() == Member.Contact.PORCH_FLOOR || switch (member.kind()) {
            case COLUMN, COLUMN_BASE, PLINTH, NEWEL, BALUSTER, FLOORBOARD, TREAD, JOIST -> true;
            case SILL, WINDOW_SILL, THRESHOLD, POST, BEAM, FASCIA, SOFFIT, FRIEZE, RAKE_BOARD, CORNER_BOARD, CASING, BRICKMOULD, HEAD_CASING, CLAPBOARD,
                 SHINGLE, WATER_TABLE, SKIRT_BOARD, STRINGER, RAIL, BRACKET, SASH, DOOR, SHUTTER, OTHER -> false;
        };
    }

    /// Parts of a window or door.
    static boolean ofOpening(Member member) {
        return switch (member.kind()) {
            case WINDOW_SILL, THRESHOLD, CASING, BRICKMOULD, HEAD_CASING, SASH, DOOR, SHUTTER -> true;
            case SILL, POST, COLUMN, COLUMN_BASE, PLINTH, BEAM, JOIST, FASCIA, SOFFIT, FRIEZE, RAKE_BOARD, CORNER_BOARD, CLAPBOARD, SHINGLE, WATER_TABLE,
                 SKIRT_BOARD, STRINGER, TREAD, RAIL, BALUSTER, NEWEL, FLOORBOARD, BRACKET, OTHER -> false;
        };
    }

    /// What sheds water from its top, so that a cap or flashing may be wanting there.
    static boolean shedsFromTop(Member member) {
        return switch (member.kind()) {
            case WATER_TABLE, RAIL, NEWEL, POST, COLUMN, SKIRT_BOARD, HEAD_CASING, BRACKET, OTHER -> true;
            case SILL, WINDOW_SILL, THRESHOLD, COLUMN_BASE, PLINTH, BEAM, JOIST, FASCIA, SOFFIT, FRIEZE, RAKE_BOARD, CORNER_BOARD, CASING, BRICKMOULD,
                 CLAPBOARD, SHINGLE, STRINGER, TREAD, BALUSTER, FLOORBOARD, SASH, DOOR, SHUTTER -> false;
        };
    }
}
