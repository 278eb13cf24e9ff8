package sillwright.page;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.security.cert.X509Certificate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import javax.net.ssl.SSLContext;

import sillwright.Settings;
import sillwright.store.Book;
import sillwright.walk.Survey;

/// A server that is open to the network, over a book of its own, and a client that trusts the certificate it made.
final class OpenHouse implements AutoCloseable {
    static final String WORDS = "barn kettle lantern oak";
    final Path beside;
    final Book book;
    final Server server;
    final HttpClient client;

    OpenHouse(Path folder) throws Exception { this(folder, Server::usual); }

    OpenHouse(Path folder, Function<Survey, Settings> settings) throws Exception {
        beside = folder.resolve("a.book");
        book = Book.begin(beside.toString());
        server = Server.start(book, Opening.network(0, beside, Optional.of(WORDS), Optional.empty(), "", List.of()), settings);
        SSLContext trusting = SSLContext.getInstance("TLS");
        X509Certificate shown = Certificate.own(beside.resolveSibling("a.book.tls.p12"), "beside-the-book").shown();
        java.security.KeyStore known = java.security.KeyStore.getInstance("PKCS12");
        known.load(null, null);
        known.setCertificateEntry("it", shown);
        javax.net.ssl.TrustManagerFactory trust = javax.net.ssl.TrustManagerFactory.getInstance("PKIX");
        trust.init(known);
        trusting.init(null, trust.getTrustManagers(), new SecureRandom());
        client = HttpClient.newBuilder().sslContext(trusting).build();
    }

    HttpRequest.Builder request(String path) { return HttpRequest.newBuilder(URI.create("https://localhost:" + server.port() + path)); }

    HttpResponse<String> ask(String method, String path, String body, String cookie, String... more) throws Exception {
        HttpRequest.Builder request = request(path).method(method, body.isEmpty() ? HttpRequest.BodyPublishers.noBody() : HttpRequest.BodyPublishers.ofString(body));
        if (!body.isEmpty()) request.header("Content-Type", "application/json");
        if (!cookie.isEmpty()) request.header("Cookie", cookie);
        if (more.length > 0) request.headers(more);
        return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    static String cookie(HttpResponse<String> entered) { return entered.headers().firstValue("Set-Cookie").orElseThrow().split(";")[0]; }

    String owner() throws Exception { return cookie(ask("POST", "/api/session", "{\"passphrase\":\"" + WORDS + "\"}", "")); }

    String code(String owner, String role, String name) throws Exception {
        return Wire.JSON.readTree(ask("POST", "/api/pairings", Wire.object().put("role", role).put("name", name).toString(), owner).body()).get("code").asString();
    }

    @Override
    public void close() {
        client.close();
        server.close();
        book.close();
    }
}
