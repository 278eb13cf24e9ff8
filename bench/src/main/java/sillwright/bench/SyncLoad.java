package sillwright.bench;

import module java.base;
import module java.net.http;

import sillwright.page.Server;
import sillwright.store.Book;
import sillwright.store.Import;
import sillwright.walk.Entry;

/// Fifty phones that come back into signal at once: each sends its entries to one server and fetches what the others wrote.
///
/// The server runs as a program of its own, and has been up for a while when they come: as many phones have synced with
/// another building before, so that what is measured is not its first start. The phones are threads of this program, on the
/// same machine, so that they take their share of its cores too. After the run every phone and the book must hold every entry
/// once; the exit code is 1 where one is lost or doubled, or where the 99th part in a hundred of the requests waited longer than 250 ms.
public final class SyncLoad {
    private static final double BOUND_MS = 250;
    private static final String HOUSE = "porch-alone", BEFORE = "porch-before";
    /// What the field page itself sends and asks for at a time.
    private static final Path PHONE = Path.of("page/src/main/resources/sillwright/page/field/sync.js");

    private final URI server;
    private final int batch;
    private final int page;
    private final HttpClient client = HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).connectTimeout(Duration.ofSeconds(30)).build();
    private final Queue<Double> sends = new ConcurrentLinkedQueue<>(), lists = new ConcurrentLinkedQueue<>(), fetches = new ConcurrentLinkedQueue<>();
    private final List<Queue<Double>> all = List.of(sends, lists, fetches);

    private SyncLoad(int port, int batch, int page) {
        this.server = URI.create("http://127.0.0.1:" + port + "/api/buildings");
        this.batch = batch;
        this.page = page;
    }

    /// @param args the book, phones, entries of each, and entries to a request where it is not the field page's own number; or `serve`, the book, the port
    public static void main(String[] args) throws Exception {
        if (args.length == 3 && args[0].equals("serve")) serve(args[1], Integer.parseInt(args[2]));
        else System.exit(run(args[0], Integer.parseInt(args[1]), Integer.parseInt(args[2]), args.length > 3 ? Integer.parseInt(args[3]) : phones("BATCH = ([0-9]+)")));
    }

    private static int phones(String pattern) throws IOException {
        Matcher match = Pattern.compile(pattern).matcher(Files.readString(PHONE));
        if (!match.find()) throw new IllegalStateException(PHONE + " does not say " + pattern);
        return Integer.parseInt(match.group(1));
    }

    private static void serve(String where, int port) throws Exception {
        try (Book book = Book.begin(where); Server server = Server.start(book, port)) {
            System.out.println("port " + server.port());
            System.in.read();
        }
    }

    private static int run(String where, int phones, int entries, int batch) throws Exception {
        try (Book book = Book.begin(where)) {
            for (String building : List.of(HOUSE, BEFORE)) Import.from(book, Path.of("examples/" + HOUSE + ".survey.json"), Optional.of(building));
        }
        Process process = new ProcessBuilder(ProcessHandle.current().info().command().orElse("java"), "-XX:+UseSerialGC", "-Xmx512m", "--enable-native-access=ALL-UNNAMED", "-cp",
                System.getProperty("java.class.path"), SyncLoad.class.getName(), "serve", where, "0").redirectError(ProcessBuilder.Redirect.INHERIT).start();
        try (var out = process.inputReader()) {
            SyncLoad load = new SyncLoad(Integer.parseInt(out.readLine().substring("port ".length())), batch, phones("limit=([0-9]+)"));
            load.phones(BEFORE, phones, entries, "before");
            load.all.forEach(Queue::clear);
            double server = processor(process.toHandle()), own = processor(ProcessHandle.current());
            long began = System.nanoTime();
            List<Set<String>> held = load.phones(HOUSE, phones, entries, "load");
            double seconds = (System.nanoTime() - began) / 1e9;
            System.out.printf(Locale.ROOT, "%s, %d phones, %d entries each, %d to a request: %.1f s, %.0f entries/s; processor: server %.1f s, phones %.1f s%n", where.startsWith("postgres") ? "PostgreSQL" : "SQLite",
                    phones, entries, batch, seconds, phones * entries / seconds, processor(process.toHandle()) - server, processor(ProcessHandle.current()) - own);
            boolean quick = told("send", load.sends) & told("list", load.lists) & told("fetch", load.fetches);
            // What the field page itself would send is held to the bound; other numbers are for comparison.
            return whole(where, held) && (quick || batch != phones("BATCH = ([0-9]+)")) ? 0 : 1;
        } finally {
            process.getOutputStream().close();
            process.waitFor(20, TimeUnit.SECONDS);
            process.destroyForcibly();
        }
    }

    private static double processor(ProcessHandle of) { return of.info().totalCpuDuration().orElse(Duration.ZERO).toMillis() / 1e3; }

    private List<Set<String>> phones(String building, int phones, int entries, String name) throws Exception {
        CountDownLatch signal = new CountDownLatch(1), sent = new CountDownLatch(phones);
        List<Future<Set<String>>> all = new ArrayList<>();
        try (var threads = Executors.newVirtualThreadPerTaskExecutor()) {
            for (int i = 0; i < phones; i++) {
                int phone = i;
                all.add(threads.submit(() -> {
                    signal.await();
                    Phone one = new Phone(building, name + "-" + phone, new Random(phone * 31L + name.hashCode()));
                    try {
                        one.send(entries);
                        one.list();
                        one.fetch();
                    } finally {
                        sent.countDown();
                    }
                    sent.await();
                    one.fetch();
                    return one.held;
                }));
            }
            signal.countDown();
            List<Set<String>> held = new ArrayList<>();
            for (Future<Set<String>> each : all) held.add(each.get());
            return held;
        }
    }

    private static boolean told(String what, Collection<Double> times) {
        List<Double> sorted = times.stream().sorted().toList();
        double p99 = sorted.get(Math.min(sorted.size() - 1, (int) (sorted.size() * 0.99)));
        System.out.printf(Locale.ROOT, "  %-5s %6d requests, median %.0f ms, p99 %.0f ms, longest %.0f ms%n", what, sorted.size(), sorted.get(sorted.size() / 2), p99, sorted.getLast());
        return p99 < BOUND_MS;
    }

    private static boolean whole(String where, List<Set<String>> held) {
        try (Book book = Book.open(where)) {
            List<String> ids = book.read(HOUSE).entries().stream().map(Entry::id).toList();
            Set<String> once = new HashSet<>(ids);
            boolean same = held.stream().allMatch(once::equals);
            System.out.printf("  %d entries in the book, %d of them twice; every phone holds %s%n", once.size(), ids.size() - once.size(), same ? "the same" : "SOMETHING ELSE");
            return same && ids.size() == once.size();
        }
    }

    /// One phone, which does as the field page does when a server answers: sends all it has, some at a time and now and then again as if the
    /// answer had been lost, asks which buildings there are, and fetches what others wrote; and once more when all have sent.
    private final class Phone {
        /// What an entry begins with, and how long the id is that follows.
        private static final String BEGINS = "{\"id\":\"";
        private static final int ID = 36;

        private final URI entries;
        private final String device;
        private final Random random;
        private final Set<String> held = new HashSet<>();
        private String mark = "";

        Phone(String building, String device, Random random) {
            this.entries = URI.create(server + "/" + building + "/entries");
            this.device = device;
            this.random = random;
        }

        void send(int entries) throws Exception {
            for (int from = 0; from < entries; from += batch) {
                int count = Math.min(batch, entries - from);
                String body = IntStream.range(from, from + count).mapToObj(this::entry).collect(Collectors.joining(",", "[", "]"));
                taken(body, count);
                if (random.nextInt(10) == 0) taken(body, count);
            }
        }

        void list() throws Exception { timed(lists, HttpRequest.newBuilder(server).build()); }

        private String entry(int i) {
            long at = System.currentTimeMillis();
            UUID id = new UUID(at << 16 | 0x7000 | random.nextInt(0x1000), 0x8000_0000_0000_0000L | random.nextLong() >>> 2);
            return "{\"id\":\"" + id + "\",\"at\":\"" + Instant.ofEpochMilli(at) + "\",\"tick\":" + i + ",\"device\":\"" + device + "\",\"author\":\"Load\",\"kind\":\"probe\",\"says\":{\"member\":\"p-beam\",\"face\":\"front\",\"along\":\""
                    + random.nextInt(4600) + " mm\",\"across\":\"50 mm\",\"depth\":\"" + random.nextInt(60) + " mm\",\"reach\":\"100 mm\"}}";
        }

        private void taken(String body, int count) throws Exception {
            String said = timed(sends, HttpRequest.newBuilder(entries).header("Content-Type", "application/json").POST(HttpRequest.BodyPublishers.ofString(body)).build());
            long durable = said.split("\"fate\":\"(taken|known)\"", -1).length - 1;
            if (durable != count) throw new IllegalStateException(durable + " of " + count + " were taken: " + said);
        }

        void fetch() throws Exception {
            boolean more = true;
            while (more) {
                String said = timed(fetches, HttpRequest.newBuilder(URI.create(entries + "?limit=" + page + (mark.isEmpty() ? "" : "&since=" + mark))).build());
                for (int at = said.indexOf(BEGINS); at >= 0; at = said.indexOf(BEGINS, at + 1)) {
                    int id = at + BEGINS.length();
                    if (said.startsWith("\",\"at\"", id + ID)) held.add(said.substring(id, id + ID));
                }
                int from = said.lastIndexOf("\"mark\":\"") + 8;
                mark = said.substring(from, said.indexOf('"', from));
                more = said.contains("\"more\":true");
            }
        }

        private String timed(Queue<Double> times, HttpRequest request) throws Exception {
            long began = System.nanoTime();
            HttpResponse<String> answer = client.send(request, HttpResponse.BodyHandlers.ofString());
            times.add((System.nanoTime() - began) / 1e6);
            if (answer.statusCode() != 200) throw new IllegalStateException(answer.statusCode() + ": " + answer.body());
            return answer.body();
        }
    }
}
