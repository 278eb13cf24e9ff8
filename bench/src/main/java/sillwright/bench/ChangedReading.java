package sillwright.bench;

import module java.base;
import module java.net.http;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import sillwright.page.Server;
import sillwright.store.Book;
import sillwright.store.Import;
import sillwright.walk.Entry;
import sillwright.walk.ProbeReading;

/// How long a changed reading takes to be seen, on the invented house: at the API until the answer is whole, and in a browser from the key that sends it to the frame that
/// shows what it touches; and how long until all that rests on it, to the order of work, has followed.
///
/// One probe after another of the house is read anew; the first changes warm the machine and are not counted. Every change works anew the face that was read and the one
/// opposite; the member's other faces are known by then.
public final class ChangedReading {
    private static final String HOUSE = "fallow-brook-house";
    private static final int WARM = 15;

    private final URI server;
    private final HttpClient client = HttpClient.newHttpClient();

    private ChangedReading(int port) { this.server = URI.create("http://127.0.0.1:" + port); }

    /// @param args how many changes, 40 where it is left out
    public static void main(String[] args) throws Exception {
        int changes = args.length > 0 ? Integer.parseInt(args[0]) : 40;
        Path folder = Files.createTempDirectory("changed");
        try (Book book = Book.begin(folder.resolve("a.book").toString())) {
            Import.from(book, Path.of("examples/" + HOUSE + ".survey.json"), Optional.empty());
            try (Server server = Server.start(book, 0)) {
                List<Entry> probes = new ArrayList<>(book.read(HOUSE).entries().stream().filter(entry -> entry.body() instanceof ProbeReading probe && probe.depthMm() > 0).toList());
                Collections.shuffle(probes, new Random(1));
                ChangedReading bench = new ChangedReading(server.port());
                bench.get("/findings");
                bench.api(probes, changes);
                bench.browser(probes, changes);
            }
        }
    }

    private String get(String part) throws Exception { return sent(HttpRequest.newBuilder(server.resolve("/api/buildings/" + HOUSE + part)).build()); }

    private String post(String part, String body) throws Exception {
        return sent(HttpRequest.newBuilder(server.resolve("/api/buildings/" + HOUSE + part)).header("Content-Type", "application/json").POST(HttpRequest.BodyPublishers.ofString(body)).build());
    }

    private String sent(HttpRequest request) throws Exception {
        HttpResponse<String> answer = client.send(request, HttpResponse.BodyHandlers.ofString());
        if (answer.statusCode() >= 300) throw new IllegalStateException(answer.statusCode() + ": " + answer.body());
        return answer.body();
    }

    /// Depths that the probe's own entry did not have, a sixteenth of an inch apart.
    private static String depth(int i, ProbeReading probe) { return Math.round(Math.min(probe.reach().own() - 1, 3 + i % 7 + probe.depthMm() / 2)) + " mm"; }

    private void api(List<Entry> probes, int changes) throws Exception {
        List<Double> soon = new ArrayList<>(), whole = new ArrayList<>();
        for (int i = 0; i < WARM + changes; i++) {
            Entry entry = probes.get(i % probes.size());
            ProbeReading probe = (ProbeReading) entry.body();
            String says = "{\"member\":\"" + probe.spot().member() + "\",\"face\":\"" + probe.spot().face().name().toLowerCase(Locale.ROOT) + "\",\"along\":\"" + probe.spot().along().text().replace("\"", "\\\"") + "\",\"across\":\""
                    + probe.spot().across().text().replace("\"", "\\\"") + "\",\"depth\":\"" + depth(i, probe) + "\",\"reach\":\"" + probe.reach().text().replace("\"", "\\\"") + "\"}";
            long began = System.nanoTime();
            String said = post("/say", "{\"kind\":\"amend\",\"says\":{\"entry\":\"" + entry.id() + "\",\"kind\":\"probe\",\"says\":" + says + "}}");
            double first = (System.nanoTime() - began) / 1e6;
            post("/whole", "{\"since\":\"" + said.replaceFirst("(?s).*\"since\":\"([^\"]*)\".*", "$1") + "\"}");
            if (i < WARM) continue;
            soon.add(first);
            whole.add((System.nanoTime() - began) / 1e6);
        }
        told("at the API, what it touches at once", soon);
        told("at the API, all that rests on it", whole);
    }

    private void browser(List<Entry> probes, int changes) {
        Optional<Path> program = Stream.of("/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome").map(Path::of).filter(Files::isExecutable).findFirst();
        if (program.isEmpty()) {
            System.out.println("no Chromium here: apt-get install chromium");
            return;
        }
        try (Playwright playwright = Playwright.create(new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
             Browser browser = playwright.chromium().launch(new BrowserType.LaunchOptions().setExecutablePath(program.get()).setHeadless(true).setArgs(List.of("--no-sandbox", "--disable-dev-shm-usage")));
             BrowserContext profile = browser.newContext(new Browser.NewContextOptions().setViewportSize(1440, 900))) {
            Page page = profile.newPage();
            page.setDefaultTimeout(120_000);
            page.navigate(server + "/b/" + HOUSE + "/wood");
            page.locator("#parts").waitFor();
            List<Double> seen = new ArrayList<>(), whole = new ArrayList<>();
            for (int i = 0; i < WARM + changes; i++) {
                Entry entry = probes.get((i + 100) % probes.size());
                // From the sending of the form to the end of the second frame after the parts were put in place: by then the first has been painted.
                List<?> took = (List<?>) page.evaluate("""
                        async ([id, depth]) => {
                            const all = document.getElementById('parts');
                            location.hash = 'reading-' + id;
                            while (!document.getElementById('reading-' + id)) await new Promise(requestAnimationFrame);
                            const form = document.getElementById('reading-' + id);
                            form.closest('details').open = true;
                            form.elements.depth.value = depth;
                            // The form is open and painted before it is sent, and what came near with it has come, as it has before whoever types into it.
                            await new Promise(done => setTimeout(done, 700));
                            delete all.dataset.took;
                            const from = performance.now();
                            form.requestSubmit();
                            while (!all.dataset.took) await new Promise(requestAnimationFrame);
                            await new Promise(requestAnimationFrame);
                            const took = performance.now() - from;
                            while (all.dataset.whole === 'false') await new Promise(requestAnimationFrame);
                            await new Promise(requestAnimationFrame);
                            return [took, performance.now() - from];
                        }""", List.of(entry.id(), depth(i, (ProbeReading) entry.body())));
                if (i < WARM) continue;
                seen.add(((Number) took.getFirst()).doubleValue());
                whole.add(((Number) took.getLast()).doubleValue());
            }
            told("in the browser, to the painted frame", seen);
            told("in the browser, all that rests on it", whole);
        }
    }

    private static void told(String what, List<Double> times) {
        List<Double> sorted = times.stream().sorted().toList();
        System.out.printf(Locale.ROOT, "%-40s %4d changes, p50 %.0f ms, p95 %.0f ms, longest %.0f ms%n", what, sorted.size(), sorted.get(sorted.size() / 2), sorted.get(Math.min(sorted.size() - 1, (int) (sorted.size() * 0.95))), sorted.getLast());
    }
}
