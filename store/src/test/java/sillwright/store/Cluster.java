package sillwright.store;

import module java.base;
import module java.sql;

import static org.junit.jupiter.api.Assumptions.abort;

/// A PostgreSQL server of the tests' own: in a folder for the time being, on loopback, with a password. It is there once
/// for all tests, where Debian's `postgresql` is installed; where it is not, a test says so and is skipped.
final class Cluster {
    private static final String PASSWORD = "not a secret: %/+";
    private static Cluster one;

    private final Path bin;
    private final Path folder;
    final int port;
    private int made;

    /// The server, started at the first call.
    static synchronized Cluster get() {
        if (one == null) one = own();
        return one;
    }

    /// Another server, for a test that kills it: recovery looks at every database there is.
    static Cluster own() {
        return new Cluster(binaries().orElseGet(() -> {
            String why = "SKIPPED: there is no PostgreSQL here, so nothing was tried on it; to have it: apt-get install postgresql";
            System.out.println(why);
            return abort(why);
        }));
    }

    private static Optional<Path> binaries() {
        Path home = Path.of("/usr/lib/postgresql");
        if (!Files.isDirectory(home)) return Optional.empty();
        try (var versions = Files.list(home)) {
            return versions.map(v -> v.resolve("bin")).filter(b -> Files.isExecutable(b.resolve("initdb"))).max(Comparator.comparing(b -> b.getParent().getFileName().toString()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Cluster(Path bin) {
        this.bin = bin;
        try {
            folder = Files.createTempDirectory("sillwright-pg");
            if (isRoot()) Files.setOwner(folder, FileSystems.getDefault().getUserPrincipalLookupService().lookupPrincipalByName("postgres"));
            Path password = Files.writeString(folder.resolve("password"), PASSWORD);
            if (isRoot()) Files.setOwner(password, FileSystems.getDefault().getUserPrincipalLookupService().lookupPrincipalByName("postgres"));
            try (var socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) { port = socket.getLocalPort(); }
            run("initdb", "-D", folder.resolve("data").toString(), "-U", "keeper", "-A", "scram-sha-256", "--pwfile", password.toString(), "-E", "UTF8", "--locale=C");
            start();
            Runtime.getRuntime().addShutdownHook(new Thread(this::end));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean isRoot() { return System.getProperty("user.name").equals("root"); }

    void start() {
        run("pg_ctl", "-D", folder.resolve("data").toString(), "-l", folder.resolve("log").toString(), "-w", "-t", "300", "-o",
                "-p " + port + " -c listen_addresses=127.0.0.1 -c unix_socket_directories=" + folder, "start");
    }

    /// Ends the server as a power cut would end it for the programs: no process of it says goodbye.
    void kill() throws IOException {
        long postmaster = Long.parseLong(Files.readAllLines(folder.resolve("data/postmaster.pid")).getFirst());
        ProcessHandle server = ProcessHandle.of(postmaster).orElseThrow();
        List<ProcessHandle> all = new ArrayList<>(server.descendants().toList());
        all.addFirst(server);
        all.forEach(ProcessHandle::destroyForcibly);
        for (ProcessHandle process : all) process.onExit().join();
        Files.deleteIfExists(folder.resolve("data/postmaster.pid"));
    }

    private void end() {
        run("pg_ctl", "-D", folder.resolve("data").toString(), "-m", "immediate", "stop");
        try (var files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) Files.delete(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void run(String program, String... arguments) {
        List<String> command = new ArrayList<>();
        // initdb and the server refuse to be root.
        if (isRoot()) command.addAll(List.of("setpriv", "--reuid=postgres", "--regid=postgres", "--clear-groups", "--"));
        command.add(bin.resolve(program).toString());
        command.addAll(List.of(arguments));
        try {
            Path told = Files.createTempFile("sillwright-pg", ".txt");
            Process process = new ProcessBuilder(command).directory(new File("/")).redirectErrorStream(true).redirectOutput(told.toFile()).start();
            int code = process.waitFor();
            String said = Files.readString(told);
            Files.delete(told);
            if (code != 0) throw new IllegalStateException(command + " ended with " + code + ": " + said);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    /// The address of a new, empty database.
    String freshDatabase() { return made("create database ", "/"); }

    /// The address of a new, empty schema, which is there at once where a database takes its time.
    String fresh() { return made("create schema ", "/postgres?currentSchema="); }

    private synchronized String made(String sql, String path) {
        String name = "book" + ++made;
        try (var connection = connect("/postgres"); var statement = connection.createStatement()) {
            statement.execute(sql + name);
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
        return "postgresql://keeper:" + URLEncoder.encode(PASSWORD, java.nio.charset.StandardCharsets.UTF_8).replace("+", "%20") + "@127.0.0.1:" + port + path + name;
    }

    Connection connect(String address) throws SQLException {
        return DriverManager.getConnection("jdbc:postgresql://127.0.0.1:" + port + address.substring(address.lastIndexOf('/')), "keeper", PASSWORD);
    }
}
