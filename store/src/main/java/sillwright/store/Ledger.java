package sillwright.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;
import org.jdbi.v3.core.statement.StatementContext;
import sillwright.walk.Entry;

/// The statements of the book, within one transaction. The same words do for both databases.
record Ledger(Handle handle) {
    private static final String LINE = "select place, building, id, digest, wall_ms, tick, device, said from entry ";
    private static final int FETCH = 500;

    private static Line line(ResultSet row, StatementContext context) throws SQLException {
        return new Line(row.getLong(1), text(row, 2), text(row, 3), text(row, 4), new Entry.Stamp(row.getLong(5), row.getInt(6)), text(row, 7), text(row, 8));
    }

    /// A damaged page can give nothing where a text must be; then the digest will not fit.
    static String text(ResultSet row, int column) throws SQLException { return Objects.requireNonNullElse(row.getString(column), ""); }

    /// What became of one line.
    enum Fate { FRESH, REPEATED, CLASHING }

    static Kept kept(List<Line> lines, List<Fate> fates) {
        int repeated = (int) fates.stream().filter(fate -> fate == Fate.REPEATED).count();
        List<String> clashing = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) if (fates.get(i) == Fate.CLASHING) clashing.add(lines.get(i).id());
        return new Kept(lines.size() - repeated, repeated, clashing.stream().distinct().toList());
    }

    /// Adds every line that is not here yet, and says of each what became of it.
    List<Fate> put(List<Line> lines, long nowMs) {
        Entries entries = new Entries(handle);
        Map<String, List<String>> ids = new LinkedHashMap<>();
        for (Line line : lines) ids.computeIfAbsent(line.building(), _ -> new ArrayList<>()).add(line.id());
        Map<String, Map<String, Set<String>>> known = new HashMap<>();
        ids.forEach((building, asked) -> known.put(building, entries.digests(building, asked)));
        List<Fate> fates = new ArrayList<>();
        List<Line> fresh = new ArrayList<>();
        for (Line line : lines) {
            Set<String> digests = known.get(line.building()).computeIfAbsent(line.id(), _ -> new HashSet<>());
            boolean first = digests.isEmpty();
            if (!digests.add(line.digest())) {
                fates.add(Fate.REPEATED);
                continue;
            }
            fates.add(first ? Fate.FRESH : Fate.CLASHING);
            fresh.add(line);
        }
        if (!fresh.isEmpty()) entries.add(fresh, last(), nowMs);
        return fates;
    }

    List<Line> lines(String building) { return handle.createQuery(LINE + "where building = :building order by place").bind("building", building).map(Ledger::line).list(); }

    List<Line> after(String building, long place, int most) {
        return handle.createQuery(LINE + "where building = :building and place > :place order by place limit :most").bind("building", building)
                .bind("place", place).bind("most", most).map(Ledger::line).list();
    }

    /// Entries after a place that may say what a building is called: descriptions, also within an amendment, and what is taken back.
    List<Line> describing(String building, long place) {
        return handle.createQuery(LINE + "where building = :building and place > :place and (said like '%\"kind\":\"building\"%' or said like '%\"kind\":\"strike\"%') order by place")
                .bind("building", building).bind("place", place).map(Ledger::line).list();
    }

    /// The place of the last entry of a building; 0 where there is none.
    long last(String building) {
        return handle.createQuery("select coalesce(max(place), 0) from entry where building = :building").bind("building", building).mapTo(Long.class).one();
    }

    void eachLine(Consumer<Line> each) {
        try (Query query = handle.createQuery(LINE + "order by place").setFetchSize(FETCH); Stream<Line> all = query.map(Ledger::line).stream()) {
            all.forEach(each);
        }
    }

    Optional<String> digestAt(String building, long place) {
        return handle.createQuery("select digest from entry where building = :building and place = :place").bind("building", building).bind("place", place)
                .mapTo(String.class).findOne();
    }

    /// The latest stamp that a device wrote.
    Optional<Entry.Stamp> latest(String device) {
        return handle.createQuery("select wall_ms, tick from entry where device = :device order by wall_ms desc, tick desc limit 1").bind("device", device)
                .map((row, _) -> new Entry.Stamp(row.getLong(1), row.getInt(2))).findOne();
    }

    /// The latest stamp that is not past a time.
    Optional<Entry.Stamp> latestUpTo(long wallMs) {
        return handle.createQuery("select wall_ms, tick from entry where wall_ms <= :wall order by wall_ms desc, tick desc limit 1").bind("wall", wallMs)
                .map((row, _) -> new Entry.Stamp(row.getLong(1), row.getInt(2))).findOne();
    }

    /// How many entries of each building stand behind one place, up to another.
    List<Book.Shelf> shelves(long behind, long upTo) {
        return handle.createQuery("select building, count(*), max(wall_ms) from entry where place > :behind and place <= :upTo group by building").bind("behind", behind).bind("upTo", upTo)
                .map((row, _) -> new Book.Shelf(row.getString(1), row.getInt(2), row.getLong(3))).list();
    }

    /// The place of the last entry; 0 where there is none.
    long last() { return handle.createQuery("select coalesce(max(place), 0) from entry").mapTo(Long.class).one(); }

    /// Every building that anything is kept of.
    List<String> everyBuilding() {
        return handle.createQuery("select building from entry union select building from photo_name union select building from aside order by building")
                .mapTo(String.class).list();
    }

    long count(String table) { return handle.createQuery("select count(*) from " + table).mapTo(Long.class).one(); }

    boolean keepPhoto(String sha256, String media, byte[] bytes, long nowMs) {
        return !hasPhoto(sha256)
                && handle.createUpdate("insert into photo (sha256, media, bytes, received_ms) values (:sha, :media, :bytes, :now)")
                        .bind("sha", sha256).bind("media", media).bind("bytes", bytes).bind("now", nowMs).execute() == 1;
    }

    boolean namePhoto(String building, String file, String sha256, long nowMs) {
        return !has("select count(*) from photo_name where building = :a and file = :b and sha256 = :c", building, file, sha256)
                && handle.createUpdate("insert into photo_name (building, file, sha256, received_ms) values (:building, :file, :sha, :now)")
                        .bind("building", building).bind("file", file).bind("sha", sha256).bind("now", nowMs).execute() == 1;
    }

    boolean setAside(String building, byte[] bytes, long nowMs) {
        String sha256 = Line.digest(bytes);
        return !has("select count(*) from aside where building = :a and sha256 = :b", building, sha256)
                && handle.createUpdate("insert into aside (building, sha256, bytes, received_ms) values (:building, :sha, :bytes, :now)")
                        .bind("building", building).bind("sha", sha256).bind("bytes", bytes).bind("now", nowMs).execute() == 1;
    }

    boolean hasPhoto(String sha256) { return has("select count(*) from photo where sha256 = :a", sha256); }

    private boolean has(String counting, String... keys) {
        try (Query query = handle.createQuery(counting)) {
            for (int i = 0; i < keys.length; i++) query.bind(String.valueOf((char) ('a' + i)), keys[i]);
            return query.mapTo(Integer.class).one() > 0;
        }
    }

    Optional<Photos.Found> photo(String sha256) {
        return handle.createQuery("select sha256, media, bytes from photo where sha256 = :sha").bind("sha", sha256)
                .map((row, _) -> new Photos.Found(row.getString(1), row.getString(2), row.getBytes(3))).findOne();
    }

    List<String> everyPhoto() { return handle.createQuery("select sha256 from photo order by sha256").mapTo(String.class).list(); }

    /// What a building calls its pictures; of one name with two pictures, both.
    List<Photos.Named> photoNames(String building) {
        return handle.createQuery("select file, sha256 from photo_name where building = :building order by file, sha256").bind("building", building)
                .map((row, _) -> new Photos.Named(row.getString(1), row.getString(2))).list();
    }

    /// What was set aside of a building, as it came, each by the digest it was kept under.
    List<Aside> asides(String building) {
        return handle.createQuery("select sha256, bytes from aside where building = :building order by sha256").bind("building", building)
                .map((row, _) -> new Aside(row.getString(1), row.getBytes(2))).list();
    }

    record Aside(String sha256, byte[] bytes) {}
}
