package sillwright.store;

import module java.base;

import sillwright.walk.Entry;

/// Kills a [Hammer] again and again at random moments (`SIGKILL`: it cannot say goodbye) and looks each time at what it left.
///
/// What this shows is that a program may die at any moment. It does not show what a power cut does: the system's own
/// memory outlives the program.
final class Kills {
    private final Start start;
    private final Path folder;
    private final SplittableRandom random;
    private final long seed;
    private final Supplier<String> fresh;
    private String where = "";
    private final Set<String> entries = new HashSet<>();
    private final Set<String> photos = new HashSet<>();
    int acknowledged;
    int unborn;

    /// How a hammer is started: with its classes laid out by a run that was let live, which halves the time to its first write.
    record Start(List<String> command) {
        static Start trained(Path folder) throws Exception {
            List<String> jars = new ArrayList<>();
            // Classes can be laid out beforehand from jars only.
            for (String part : System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")).split(File.pathSeparator))
                jars.add(Files.isDirectory(Path.of(part)) ? jar(Path.of(part), folder.resolve("classes-" + jars.size() + ".jar")).toString() : part);
            List<String> command = List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xmx256m", "-XX:-UsePerfData",
                    "--enable-native-access=ALL-UNNAMED", "-cp", String.join(File.pathSeparator, jars));
            Path cache = folder.resolve("hammer.aot");
            List<String> training = new ArrayList<>(command);
            training.add(1, "-XX:AOTCacheOutput=" + cache);
            training.addAll(List.of(Hammer.class.getName(), folder.resolve("training.book").toString(), folder.toString(), "1", "60"));
            Process process = new ProcessBuilder(training).redirectErrorStream(true).redirectOutput(folder.resolve("training.txt").toFile()).start();
            if (process.waitFor() != 0) throw new IllegalStateException(Files.readString(folder.resolve("training.txt")));
            List<String> quick = new ArrayList<>(command);
            if (Files.exists(cache)) quick.addAll(1, List.of("-XX:AOTCache=" + cache, "-Xlog:aot=off", "-Xlog:cds=off"));
            return new Start(quick);
        }

        private static Path jar(Path classes, Path jar) throws IOException {
            try (var out = new java.util.jar.JarOutputStream(Files.newOutputStream(jar)); var files = Files.walk(classes)) {
                for (Path file : files.filter(f -> !f.equals(classes)).toList()) {
                    String name = classes.relativize(file).toString().replace(File.separatorChar, '/');
                    out.putNextEntry(new java.util.zip.ZipEntry(Files.isDirectory(file) ? name + "/" : name));
                    if (!Files.isDirectory(file)) Files.copy(file, out);
                }
            }
            return jar;
        }
    }

    /// @param fresh gives a place where there is no book yet
    Kills(Start start, Path folder, long seed, Supplier<String> fresh) {
        this.start = start;
        this.folder = folder;
        this.seed = seed;
        this.random = new SplittableRandom(seed);
        this.fresh = fresh;
    }

    /// @param each how many kills before a new book is begun
    void run(int kills, int each) throws Exception {
        for (int kill = 0; kill < kills; kill++) {
            if (kill % each == 0) {
                where = fresh.get();
                entries.clear();
                photos.clear();
            }
            // One in four dies while it starts, when the book is made, opened and recovered; the others at work.
            List<String> told = kill(random.nextInt(4) == 0);
            look(told, "seed " + seed + ", kill " + kill + ", book " + where);
        }
    }

    private List<String> kill(boolean young) throws Exception {
        Path room = Files.createDirectories(folder.resolve("room-" + seed));
        Path errors = folder.resolve("errors-" + seed + ".txt");
        List<String> command = new ArrayList<>(start.command());
        command.addAll(List.of("-Dorg.sqlite.tmpdir=" + room, Hammer.class.getName(), where, room.toString(), String.valueOf(random.nextLong())));
        Process hammer = new ProcessBuilder(command).redirectError(errors.toFile()).start();
        List<String> told = new ArrayList<>();
        CompletableFuture<Void> heard = new CompletableFuture<>();
        String first = young ? "begun" : "entry";
        Thread ear = Thread.ofPlatform().start(() -> {
            try (var in = hammer.getInputStream()) {
                StringBuilder line = new StringBuilder();
                // Up to the last whole line: one that was cut off was not heard.
                for (int c = in.read(); c >= 0; c = in.read()) {
                    if (c != '\n') line.append((char) c);
                    else {
                        told.add(line.toString());
                        if (line.toString().startsWith(first)) heard.complete(null);
                        line.setLength(0);
                    }
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            } finally {
                heard.complete(null);
            }
        });
        heard.get(60, TimeUnit.SECONDS);
        Thread.sleep(random.nextInt(young ? 700 : 400));
        // By its handle: the process's own way to die would also close our ear.
        hammer.toHandle().destroyForcibly();
        hammer.waitFor();
        ear.join();
        String wrong = Files.readString(errors);
        if (told.stream().anyMatch(t -> t.startsWith("broken")) || wrong.contains("Exception")) throw new AssertionError("it broke before it was killed: " + told.getLast() + "\n" + wrong);
        return told;
    }

    private void look(List<String> told, String when) throws IOException {
        Path room = folder.resolve("room-" + seed);
        for (String line : told) {
            String[] words = line.split(" ", 2);
            switch (words[0]) {
                case "begun", "open" -> {}
                case "entry" -> entries.add(words[1]);
                case "photo" -> photos.add(words[1]);
                case "backup" -> {
                    Checkup backup = Doctor.examine(room.resolve(words[1]).toString());
                    if (!backup.sound()) throw new AssertionError(when + ": a backup that was acknowledged is not sound: " + backup.faults());
                }
                default -> throw new AssertionError(when + ": " + line);
            }
        }
        acknowledged += told.size();
        if (!told.contains("open ")) unborn++;
        try (Book book = Book.begin(where)) {
            Checkup checkup = Doctor.examine(book);
            if (!checkup.clean()) throw new AssertionError(when + ": " + checkup.faults() + checkup.surveys());
            List<Entry> kept = book.read("shed").entries();
            Set<String> ids = new HashSet<>();
            for (Entry entry : kept) if (!ids.add(entry.id())) throw new AssertionError(when + ": " + entry.id() + " is there twice");
            for (String id : entries) if (!ids.contains(id)) throw new AssertionError(when + ": the acknowledged entry " + id + " is lost");
            for (String photo : photos) if (book.photos().get(photo).filter(Photos.Found::unharmed).isEmpty()) throw new AssertionError(when + ": the acknowledged photo " + photo + " is lost");
            clock(kept, when);
            entries.addAll(ids);
        }
        try (var files = Files.list(room)) { for (Path file : files.toList()) Files.delete(file); }
    }

    /// The clock of a device runs on over every death: what it wrote is stamped in the order it arrived.
    private static void clock(List<Entry> kept, String when) {
        Map<String, Entry.Stamp> last = new HashMap<>();
        for (Entry entry : kept) {
            var before = last.put(entry.device(), entry.stamp());
            if (entry.device().startsWith("desk") && before != null && before.compareTo(entry.stamp()) >= 0)
                throw new AssertionError(when + ": the clock of " + entry.device() + " ran back from " + before + " to " + entry.stamp());
        }
    }
}
