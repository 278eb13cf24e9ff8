package sillwright.store;

import module java.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.abort;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import sillwright.measure.Refused;

/// A database server on another machine that can do no TLS: what is said to it before it is let go.
///
/// The other machine is this one by its address in the network; the server answers as PostgreSQL does that has TLS off, and keeps what it hears.
@DisplayNameGeneration(ReplaceUnderscores.class)
class ElsewhereTest {
    /// Source: PostgreSQL documentation, frontend/backend protocol, message formats, SSLRequest (from memory).
    private static final int ASKS_FOR_TLS = 80_877_103;

    private static InetAddress elsewhere() throws IOException {
        for (NetworkInterface each : Collections.list(NetworkInterface.getNetworkInterfaces()))
            if (each.isUp() && !each.isLoopback()) for (InetAddress address : Collections.list(each.getInetAddresses())) if (address instanceof Inet4Address) return address;
        String why = "SKIPPED: this machine has no address in a network";
        System.out.println(why);
        return abort(why);
    }

    /// The first words of each visitor, and all that came behind them once TLS was declined.
    private static Map.Entry<Set<Integer>, byte[]> heard(String host, String options) throws Exception {
        Set<Integer> first = ConcurrentHashMap.newKeySet();
        ByteArrayOutputStream after = new ByteArrayOutputStream();
        try (ServerSocket server = new ServerSocket(0)) {
            Thread.ofVirtual().start(() -> {
                while (!server.isClosed()) try (Socket visitor = server.accept()) {
                    DataInputStream in = new DataInputStream(visitor.getInputStream());
                    in.readInt();
                    int word = in.readInt();
                    first.add(word);
                    if (word != ASKS_FOR_TLS) continue;
                    visitor.getOutputStream().write('N');
                    // One who goes on in the clear says who he is and waits; he is hung up on.
                    visitor.setSoTimeout(2_000);
                    for (int more = in.read(); more >= 0; more = in.read()) synchronized (after) { after.write(more); }
                } catch (IOException _) {
                    // Who goes away without a word has said nothing more.
                }
            });
            assertThrows(Refused.class, () -> Book.begin("postgresql://keeper:word@" + host + ":" + server.getLocalPort() + "/book" + options));
        }
        synchronized (after) { return Map.entry(first, after.toByteArray()); }
    }

    @Test
    @Timeout(120)
    void nothing_goes_to_another_machine_in_the_clear_unless_the_address_says_so() throws Exception {
        String host = elsewhere().getHostAddress();
        var guarded = heard(host, "");
        assertEquals(Set.of(ASKS_FOR_TLS), guarded.getKey());
        assertEquals("", new String(guarded.getValue(), java.nio.charset.StandardCharsets.UTF_8));
        var told = heard(host, "?sslmode=disable");
        assertTrue(!told.getKey().isEmpty() && !told.getKey().contains(ASKS_FOR_TLS), told.toString());
    }
}
