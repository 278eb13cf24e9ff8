package sillwright.page;

import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.util.JavalinBindException;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.SslConnectionFactory;
import org.eclipse.jetty.util.ssl.SslContextFactory;
import sillwright.Settings;
import sillwright.measure.Refused;
import sillwright.store.Book;
import sillwright.walk.Survey;
import sillwright.work.FirstFit;

/// The web server over one book. It listens on this machine alone, unless it is opened to the network.
public final class Server implements AutoCloseable {
    private final Javalin javalin;
    private final Opening opening;

    private Server(Javalin javalin, Opening opening) {
        this.javalin = javalin;
        this.opening = opening;
    }

    /// Begins to answer.
    ///
    /// @param settings what the road is told of each building
    /// @throws Refused when the port is taken
    public static Server start(Book book, Opening opening, Function<Survey, Settings> settings) { return start(book, opening, settings, new StaticFiles()); }

    /// On this machine alone, with the usual settings: work begins the Monday after next, in the units that most was measured in.
    public static Server start(Book book, int port) { return start(book, Opening.here(port), Server::usual); }

    static Settings usual(Survey survey) { return Settings.usual(survey, java.time.LocalDate.now(), new FirstFit()); }

    static Server start(Book book, int port, StaticFiles files) { return start(book, Opening.here(port), Server::usual, files); }

    private static Server start(Book book, Opening opening, Function<Survey, Settings> settings, StaticFiles files) {
        int port = opening.port();
        if (port < 0 || port > 65_535) throw new Refused("--port", "{} is not a port", "use 1 to 65535, such as 8321", port);
        Names names = new Names(opening);
        Javalin javalin = Javalin.create(config -> set(config, new Desks(book, settings), names, files));
        try {
            if (opening.open()) javalin.start();
            else javalin.start("127.0.0.1", port);
        } catch (JavalinBindException _) {
            javalin.stop();
            throw new Refused("--port", "{} cannot be listened on", "another program may have it: name another, such as --port 8322", port);
        }
        names.port = javalin.port();
        return new Server(javalin, opening);
    }

    /// The port is known only once it is listened on.
    private static final class Names {
        private final Opening opening;
        private volatile int port;

        Names(Opening opening) { this.opening = opening; }

        Set<String> all() {
            Set<String> all = new LinkedHashSet<>();
            for (String name : opening.names()) {
                all.add(name + ":" + port);
                if (port == 443) all.add(name);
            }
            return all;
        }
    }

    private static void set(JavalinConfig config, Desks desks, Names names, StaticFiles files) {
        Access access = names.opening.access();
        config.startup.showJavalinBanner = false;
        config.http.defaultContentType = "text/plain; charset=utf-8";
        config.jetty.modifyServer(server -> server.setErrorHandler(Guard::bare));
        config.concurrency.useVirtualThreads = true;
        config.http.prefer405over404 = true;
        config.router.ignoreTrailingSlashes = false;
        names.opening.certificate().ifPresent(certificate -> config.jetty.addConnector((server, http) -> secure(server, http, certificate, names.opening.port())));
        InHand inHand = new InHand();
        config.router.handlerWrapper(inHand::over);
        new Guard(names::all, access).on(config.routes);
        new BookApi(desks.book()).on(config.routes);
        new PhotoApi(desks.book()).on(config.routes);
        new FieldApi(desks).on(config.routes);
        new FigureApi().on(config.routes);
        new DeskApi(desks, inHand).on(config.routes);
        new AccessApi(access, names.opening.log()).on(config.routes);
        new OfficePages(desks).on(config.routes);
        new RankPage(desks).on(config.routes);
        new FigurePages().on(config.routes);
        new FieldPage(files).on(config.routes);
        files.on(config.routes);
        new Thrown(names.opening.log()).on(config);
    }

    /// TLS 1.2 and 1.3, and of the Java platform's suites those that encrypt and authenticate in one.
    private static ServerConnector secure(org.eclipse.jetty.server.Server server, HttpConfiguration http, Certificate certificate, int port) {
        HttpConfiguration over = new HttpConfiguration(http);
        // The names that the server goes by are held by the guard; a machine may be called by its bare address.
        SecureRequestCustomizer customizer = new SecureRequestCustomizer(false);
        over.addCustomizer(customizer);
        SslContextFactory.Server keys = new SslContextFactory.Server();
        keys.setKeyStore(certificate.store());
        keys.setKeyStorePassword(new String(certificate.secret()));
        keys.setIncludeProtocols("TLSv1.3", "TLSv1.2");
        keys.setIncludeCipherSuites("TLS_AES_.*_GCM_.*", "TLS_CHACHA20_POLY1305_.*", "TLS_ECDHE_.*_GCM_.*", "TLS_ECDHE_.*_CHACHA20_POLY1305_.*");
        ServerConnector connector = new ServerConnector(server, new SslConnectionFactory(keys, "http/1.1"), new HttpConnectionFactory(over));
        connector.setPort(port);
        return connector;
    }

    public int port() { return javalin.port(); }

    /// Where a browser on this machine finds it.
    public String address() { return opening.open() ? "https://localhost:" + port() + "/" : "http://127.0.0.1:" + port() + "/"; }

    /// Where browsers of the network find it; none where it listens on this machine alone.
    public List<String> addresses() {
        return opening.open() ? opening.names().stream().filter(name -> !name.equals("localhost") && !name.startsWith("127.")).sorted().map(name -> "https://" + name + ":" + port() + "/").toList() : List.of();
    }

    /// What a careful visitor compares with what the browser shows.
    public String fingerprint() { return opening.certificate().map(Certificate::fingerprint).orElse(""); }

    /// Where it is written down who came to the door; nowhere where it listens on this machine alone.
    public Optional<Path> log() { return opening.log().place(); }

    /// Every route, as `get /api/buildings`.
    List<String> routes() {
        return javalin.unsafe.internalRouter.allHttpHandlers().stream().map(one -> one.endpoint).filter(one -> !one.method.name().startsWith("BEFORE") && !one.method.name().startsWith("AFTER"))
                .map(one -> one.method.name().toLowerCase(Locale.ROOT) + " " + one.path).toList();
    }

    @Override
    public void close() { javalin.stop(); }
}
