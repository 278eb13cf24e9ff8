package sillwright.store;

import module java.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayNameGeneration(ReplaceUnderscores.class)
class TogetherTest {
    @TempDir
    Path folder;

    @Test
    void those_who_wait_at_the_same_time_share_one_transaction() throws Exception {
        AtomicInteger transactions = new AtomicInteger();
        CountDownLatch allWait = new CountDownLatch(1);
        Together together = new Together(work -> {
            transactions.incrementAndGet();
            work.apply(null);
        });
        try (var threads = Executors.newVirtualThreadPerTaskExecutor()) {
            Future<?> first = threads.submit(() -> together.write(_ -> await(allWait)));
            while (transactions.get() == 0) Thread.onSpinWait();
            List<Future<Integer>> others = new ArrayList<>();
            CountDownLatch started = new CountDownLatch(30);
            for (int i = 0; i < 30; i++) {
                int mine = i;
                others.add(threads.submit(() -> {
                    started.countDown();
                    return together.write(_ -> mine);
                }));
            }
            started.await();
            Thread.sleep(50);
            allWait.countDown();
            first.get();
            for (int i = 0; i < 30; i++) assertEquals(i, others.get(i).get(), "each gets its own answer");
        }
        assertTrue(transactions.get() < 10, transactions + " for 31 writers");
    }

    @Test
    void nobody_is_told_that_it_was_written_when_the_program_itself_fails() throws Exception {
        CountDownLatch allWait = new CountDownLatch(1);
        AtomicInteger transactions = new AtomicInteger();
        Together together = new Together(work -> {
            work.apply(null);
            if (transactions.getAndIncrement() == 1) throw new OutOfMemoryError("pretended, at the commit");
        });
        try (var threads = Executors.newVirtualThreadPerTaskExecutor()) {
            Future<?> first = threads.submit(() -> together.write(_ -> await(allWait)));
            List<Future<Integer>> others = new ArrayList<>();
            Thread.sleep(50);
            for (int i = 0; i < 5; i++) others.add(threads.submit(() -> together.write(_ -> 1)));
            Thread.sleep(50);
            allWait.countDown();
            first.get();
            int failed = 0;
            for (Future<Integer> other : others) {
                try {
                    other.get();
                } catch (ExecutionException e) {
                    failed++;
                }
            }
            assertEquals(5, failed, "all that shared the transaction");
            assertEquals("x", together.<String>write(_ -> "x"), "and the next is served");
        }
    }

    private static boolean await(CountDownLatch latch) {
        try {
            return latch.await(10, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    @ParameterizedTest
    @EnumSource
    void one_that_fails_fails_alone(Store store) throws Exception {
        try (Book book = Book.begin(store.fresh(folder)); var threads = Executors.newVirtualThreadPerTaskExecutor()) {
            List<Future<?>> right = new ArrayList<>(), wrong = new ArrayList<>();
            for (int i = 0; i < 60; i++) {
                byte[] picture = PictureTest.jpeg(i + 1, 3);
                right.add(threads.submit(() -> book.photos().keep(picture)));
                if (i % 6 == 0) wrong.add(threads.submit(() -> book.engine().write(handle -> handle.execute("insert into photo values (null, null, null, null)"))));
            }
            for (Future<?> each : right) each.get();
            for (Future<?> each : wrong) assertThrows(ExecutionException.class, each::get);
            assertEquals(60, book.read(Ledger::everyPhoto).size());
        }
    }
}
