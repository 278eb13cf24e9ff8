package sillwright.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.result.UnableToProduceResultException;

/// The statements that run for every entry of every phone, spoken to the driver itself: where fifty sync at once they are most of what a server does.
record Entries(Handle handle) {
    /// Ids asked for in one statement: an answer of the server costs more than looking one up. This program's own choice.
    private static final int AT_ONCE = 500;

    /// One entry as it is passed on.
    ///
    /// @param said     one line of JSON, in ASCII
    /// @param unharmed true where it is still what was kept
    record Said(long place, String digest, String said, boolean unharmed) {
        Said(long place, String digest, String said) { this(place, digest, said, Line.unharmed(digest, said)); }
    }

    private interface Work<T> {
        T on(Connection connection) throws SQLException;
    }

    private <T> T on(Work<T> work) {
        try {
            return work.on(handle.getConnection());
        } catch (SQLException thrown) {
            throw new UnableToProduceResultException(thrown);
        }
    }

    /// The digests that are kept under each of these ids.
    Map<String, Set<String>> digests(String building, List<String> ids) {
        return on(connection -> {
            Map<String, Set<String>> digests = new HashMap<>();
            for (int from = 0; from < ids.size(); from += AT_ONCE) {
                List<String> some = ids.subList(from, Math.min(ids.size(), from + AT_ONCE));
                try (PreparedStatement same = connection.prepareStatement("select id, digest from entry where building = ? and id in "
                        + some.stream().map(_ -> "?").collect(Collectors.joining(", ", "(", ")")))) {
                    same.setString(1, building);
                    for (int i = 0; i < some.size(); i++) same.setString(i + 2, some.get(i));
                    try (ResultSet rows = same.executeQuery()) {
                        while (rows.next()) digests.computeIfAbsent(rows.getString(1), _ -> new HashSet<>()).add(rows.getString(2));
                    }
                }
            }
            return digests;
        });
    }

    /// Adds lines that are not here yet, at the places that follow this one.
    void add(List<Line> lines, long place, long nowMs) {
        on(connection -> {
            try (PreparedStatement add = connection.prepareStatement("insert into entry (place, building, id, digest, wall_ms, tick, device, said, received_ms) values (?, ?, ?, ?, ?, ?, ?, ?, ?)")) {
                long at = place;
                for (Line line : lines) {
                    add.setLong(1, ++at);
                    add.setString(2, line.building());
                    add.setString(3, line.id());
                    add.setString(4, line.digest());
                    add.setLong(5, line.stamp().wallMs());
                    add.setInt(6, line.stamp().tick());
                    add.setString(7, line.device());
                    add.setString(8, line.said());
                    add.setLong(9, nowMs);
                    add.addBatch();
                }
                return add.executeBatch();
            }
        });
    }

    /// What arrived after a place, oldest first.
    List<Said> after(String building, long place, int most) {
        return on(connection -> {
            try (PreparedStatement after = connection.prepareStatement("select place, digest, said from entry where building = ? and place > ? order by place limit ?")) {
                after.setString(1, building);
                after.setLong(2, place);
                after.setInt(3, most);
                List<Said> all = new ArrayList<>();
                try (ResultSet rows = after.executeQuery()) {
                    while (rows.next()) all.add(new Said(rows.getLong(1), Ledger.text(rows, 2), Ledger.text(rows, 3)));
                }
                return all;
            }
        });
    }
}
