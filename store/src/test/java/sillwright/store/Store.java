package sillwright.store;

import module java.base;
import module java.sql;

/// Where a test keeps its book: every test runs on both.
enum Store {
    SQLITE, POSTGRES;

    /// A place where there is no book yet.
    String fresh(Path folder) {
        return this == SQLITE ? folder.resolve("house-" + UUID.randomUUID() + ".book").toString() : Cluster.get().fresh();
    }

    /// A way past the book, for those who mean it harm.
    Connection past(String where) throws SQLException {
        return this == SQLITE ? DriverManager.getConnection("jdbc:sqlite:" + where) : Cluster.get().connect(where);
    }
}
