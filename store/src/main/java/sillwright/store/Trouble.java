package sillwright.store;

import java.sql.SQLException;
import java.sql.SQLTransientConnectionException;

import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;
import sillwright.measure.Refused;

/// What a database throws, told as a mistake of the world where it is one: a full disk, a file that may not be written,
/// a server that is not there. Anything else is ours, and stays as it was thrown.
final class Trouble {
    private Trouble() {}

    static RuntimeException of(String book, RuntimeException thrown) {
        for (Throwable at = thrown; at != null; at = at.getCause()) {
            if (at instanceof SQLiteException file) return ofFile(book, file, thrown);
            if (at instanceof SQLException server) return ofServer(book, server, thrown);
        }
        return thrown;
    }

    private static RuntimeException ofFile(String book, SQLiteException file, RuntimeException thrown) {
        SQLiteErrorCode code = file.getResultCode();
        return switch (SQLiteErrorCode.getErrorCode(code.code & 0xff)) {
            case SQLITE_FULL -> refused(book, "the disk is full; what was not yet acknowledged was not written", "make room, and send it again", thrown);
            case SQLITE_BUSY, SQLITE_LOCKED -> refused(book, "another program keeps the book locked", "close the other program, or wait for it, and try again", thrown);
            case SQLITE_READONLY, SQLITE_PERM, SQLITE_CANTOPEN ->
                    refused(book, "the book may not be written here", "put it in a folder that may be written; a book needs room for two files beside it while it is open", thrown);
            case SQLITE_CORRUPT -> refused(book, "the file is damaged", "keep it, begin a new book from the last backup, and let every phone send again", thrown);
            case SQLITE_NOTADB -> refused(book, "the file is not a field book", "name the book; a survey file is taken in with: sillwright book import", thrown);
            case SQLITE_IOERR -> refused(book, "the disk cannot be read or written: " + file.getMessage(), "look to the disk, then run: sillwright book doctor", thrown);
            default -> thrown;
        };
    }

    private static RuntimeException ofServer(String book, SQLException server, RuntimeException thrown) {
        String state = String.valueOf(server.getSQLState());
        if (state.startsWith("08") || state.startsWith("57P") || server instanceof SQLTransientConnectionException) return refused(book, "the database server does not answer", "see that it runs, that the address is right, and, where it is another machine, that it shows a certificate that is known here: ?sslrootcert=FILE names one", thrown);
        if (state.startsWith("28") || state.equals("42501")) return refused(book, "the database server does not let this user in, or not this far", "check the user, the password and the rights", thrown);
        if (state.equals("3D000")) return refused(book, "there is no such database on the server", "make it first: createdb NAME", thrown);
        if (state.equals("53100")) return refused(book, "the server's disk is full; what was not yet acknowledged was not written", "make room, and send it again", thrown);
        if (state.startsWith("53")) return refused(book, "the server has nothing left to give: " + state, "let fewer programs in at once", thrown);
        if (state.startsWith("25006")) return refused(book, "the server takes no writes just now", "name the server that does", thrown);
        return thrown;
    }

    private static Refused refused(String book, String what, String mend, RuntimeException cause) {
        Refused refused = new Refused(book, what, mend);
        refused.initCause(cause);
        return refused;
    }
}
