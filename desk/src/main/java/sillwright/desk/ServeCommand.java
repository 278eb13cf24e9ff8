package sillwright.desk;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import sillwright.measure.Refused;
import sillwright.page.Opening;
import sillwright.page.Server;
import sillwright.store.Book;

/// `sillwright serve`: office pages, field page and API over one book.
@Command(name = "serve", description = "Serve the office pages, the field page and the API from one book, on this machine.", mixinStandardHelpOptions = true, sortOptions = false)
final class ServeCommand implements Callable<Integer> {
    @Option(names = {"-b", "--book"}, paramLabel = "WHERE", defaultValue = "${env:SILLWRIGHT_BOOK:-house.book}", description = "the book: a file, or a database's URL (default house.book here); begun where there is none")
    private String where;

    @Option(names = "--port", paramLabel = "N", defaultValue = "8321", description = "the port to listen on (default 8321; 0 for any that is free)")
    private int port;

    @Option(names = "--open", description = "open it to the network too, behind a passphrase and TLS")
    private boolean open;

    @Option(names = "--passphrase-file", paramLabel = "FILE", description = "with --open: a file whose first line is the book's new passphrase; kept as a digest, and needed once")
    private Optional<Path> passphrase;

    @Option(names = "--cert", paramLabel = "FILE", description = "with --open: a certificate of your own with its key, PKCS #12; its secret in the environment's SILLWRIGHT_CERT_SECRET (default: one is made)")
    private Optional<Path> certificate;

    @Option(names = "--name", paramLabel = "NAME", description = "with --open: a further name this machine goes by in the network")
    private List<String> names = List.of();

    @Mixin
    private Terms terms = new Terms();

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() throws InterruptedException {
        PrintWriter out = spec.commandLine().getOut();
        Terms.Settled settled = terms.settled();
        CountDownLatch end = new CountDownLatch(1), ended = new CountDownLatch(1);
        try (Book book = Book.begin(where); Server server = Server.start(book, opening(), settled.daily())) {
            out.println("The book " + book.name() + " is open at " + server.address() + (open ? "" : " (on this machine alone)") + ". Ctrl-C ends it.");
            if (open) {
                out.println("In the network: " + String.join(" ", server.addresses()));
                out.println("The certificate's fingerprint, to compare with what a browser shows: " + server.fingerprint());
                server.log().ifPresent(log -> out.println("Who comes to the door is written down in " + log + "."));
            }
            out.flush();
            Runtime.getRuntime().addShutdownHook(new Thread(() -> leave(end, ended)));
            end.await();
        } finally {
            ended.countDown();
        }
        return 0;
    }

    private Opening opening() {
        if (!open) {
            if (passphrase.isPresent() || certificate.isPresent() || !names.isEmpty()) throw new Refused("--open", "is missing, and nothing else opens the book to the network", "add --open, or leave the other options out");
            return Opening.here(port);
        }
        Path beside = where.contains("://") ? Path.of("sillwright-server") : Path.of(where);
        return Opening.network(port, beside.toAbsolutePath(), passphrase.map(ServeCommand::firstLine), certificate, System.getenv().getOrDefault("SILLWRIGHT_CERT_SECRET", ""), names);
    }

    private static String firstLine(Path file) {
        try {
            return Files.readString(file).lines().findFirst().orElse("").strip();
        } catch (IOException e) {
            throw new Refused(file.toString(), "the file cannot be read", "name a file whose first line is the passphrase");
        }
    }

    /// The program ends only when the book is closed.
    private static void leave(CountDownLatch end, CountDownLatch ended) {
        end.countDown();
        try {
            ended.await();
        } catch (InterruptedException _) {
            Thread.currentThread().interrupt();
        }
    }
}
