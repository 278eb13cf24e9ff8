package sillwright.store;

import module java.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sillwright.walk.Entry;
import sillwright.measure.Refused;

/// The short form runs with all other tests: 200 kills on a file, 20 on a server. The long form, several hours:
///
///     mvn -pl core,store -Dtest=KillTest -Dkills=10000 -Dsurefire.failIfNoSpecifiedTests=false test
///
/// `-Dkills.seed=N` repeats a run that failed, as far as moments can be repeated.
@DisplayNameGeneration(ReplaceUnderscores.class)
class KillTest {
    private static final int KILLS = Integer.getInteger("kills", 200);
    private static final long SEED = Long.getLong("kills.seed", 20260418);

    @TempDir
    Path folder;

    @Test
    void killed_at_any_moment_a_file_keeps_all_it_acknowledged() throws Exception {
        int workers = 2;
        Kills.Start start = Kills.Start.trained(folder);
        List<Kills> all = new ArrayList<>();
        try (var threads = Executors.newFixedThreadPool(workers)) {
            List<Future<?>> done = new ArrayList<>();
            for (int i = 0; i < workers; i++) {
                Kills kills = new Kills(start, folder, SEED + i, () -> Store.SQLITE.fresh(folder));
                all.add(kills);
                int share = KILLS / workers + (i < KILLS % workers ? 1 : 0);
                done.add(threads.submit(() -> {
                    kills.run(share, 12);
                    return null;
                }));
            }
            for (Future<?> each : done) each.get();
        }
        int acknowledged = all.stream().mapToInt(k -> k.acknowledged).sum(), unborn = all.stream().mapToInt(k -> k.unborn).sum();
        System.out.println(KILLS + " kills, " + acknowledged + " things acknowledged and none lost; " + unborn + " died before they had a book open");
        assertTrue(acknowledged > 2 * KILLS, "they were at work when they died");
        assertTrue(unborn < KILLS / 2 + 2, "and most were: " + unborn);
    }

    @Test
    void killed_at_any_moment_a_server_keeps_all_it_acknowledged() throws Exception {
        Cluster.get();
        int kills = Math.max(1, KILLS / 10);
        Kills one = new Kills(Kills.Start.trained(folder), folder, SEED + 100, () -> Store.POSTGRES.fresh(folder));
        one.run(kills, 10);
        System.out.println(kills + " kills of a program on PostgreSQL, " + one.acknowledged + " things acknowledged and none lost");
        assertTrue(one.acknowledged > 2 * kills, "it was at work when it died");
    }

    @Test
    void a_server_that_is_itself_killed_keeps_all_it_acknowledged() throws Exception {
        Cluster cluster = Cluster.own();
        Random random = new Random(SEED);
        String where = cluster.fresh();
        Set<String> acknowledged = ConcurrentHashMap.newKeySet();
        Book.begin(where).close();
        for (int kill = 0; kill < Math.max(3, KILLS / 50); kill++) {
            List<Thread> writers = new ArrayList<>();
            Queue<String> told = new ConcurrentLinkedQueue<>();
            for (int i = 0; i < 4; i++) {
                String device = "desk-" + i;
                writers.add(Thread.ofVirtual().start(() -> {
                    try (Book book = Book.open(where)) {
                        Pen pen = book.pen(device, "A");
                        while (true) acknowledged.add(pen.write("shed", BookTest.shed().get(7).body()).id());
                    } catch (RuntimeException gone) {
                        told.add(gone instanceof Refused ? gone.getMessage() : "not told in words: " + gone);
                    }
                }));
            }
            int before = acknowledged.size();
            for (int wait = 0; acknowledged.size() < before + 40 && wait < 6_000; wait++) Thread.sleep(10);
            Thread.sleep(random.nextInt(300));
            cluster.kill();
            for (Thread writer : writers) writer.join();
            assertEquals(4, told.size());
            for (String words : told) assertTrue(words.contains("does not answer"), words);
            cluster.start();
            try (Book book = Book.open(where)) {
                Set<String> kept = new HashSet<>();
                for (Entry entry : book.read("shed").entries()) kept.add(entry.id());
                Set<String> lost = new HashSet<>(acknowledged);
                lost.removeAll(kept);
                assertEquals(Set.of(), lost);
                assertTrue(Doctor.examine(book).sound());
            }
        }
        assertTrue(acknowledged.size() > 100, "there was load: " + acknowledged.size());
        System.out.println("a server killed under load: " + acknowledged.size() + " entries acknowledged and none lost");
    }
}
