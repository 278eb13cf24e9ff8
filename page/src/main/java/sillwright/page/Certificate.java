package sillwright.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.math.BigInteger;
import java.net.InetAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.KeyStore;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.security.cert.X509Certificate;
import java.security.spec.ECGenParameterSpec;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Date;
import java.util.HexFormat;
import java.util.List;

import org.bouncycastle.asn1.x500.X500Name;
import org.bouncycastle.asn1.x509.BasicConstraints;
import org.bouncycastle.asn1.x509.ExtendedKeyUsage;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.GeneralName;
import org.bouncycastle.asn1.x509.GeneralNames;
import org.bouncycastle.asn1.x509.KeyPurposeId;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;
import sillwright.measure.Refused;

/// The certificate that the server shows: one's own from a PKCS #12 file, or one made here for this machine's names.
record Certificate(KeyStore store, char[] secret, X509Certificate shown) {
    private static final String ALIAS = "sillwright";
    private static final Duration LASTS = Duration.ofDays(397), BEFORE_ITS_END = Duration.ofDays(30);
    /// A key beside the book is guarded by the file's permissions; the word only satisfies the format.
    private static final String WORD = "beside-the-book";

    static Certificate own(Path file, String secret) {
        try (InputStream in = Files.newInputStream(file)) {
            return of(in, secret);
        } catch (IOException | GeneralSecurityException e) {
            throw new Refused(file.toString(), "is no certificate with its key that can be opened: {}", "give a PKCS #12 file, and its secret in the environment's SILLWRIGHT_CERT_SECRET", String.valueOf(e.getMessage()));
        }
    }

    private static Certificate of(InputStream in, String secret) throws IOException, GeneralSecurityException {
        KeyStore store = KeyStore.getInstance("PKCS12");
        store.load(in, secret.toCharArray());
        for (String alias : java.util.Collections.list(store.aliases()))
            if (store.isKeyEntry(alias) && store.getCertificate(alias) instanceof X509Certificate shown) return new Certificate(store, secret.toCharArray(), shown);
        throw new GeneralSecurityException("it holds no key");
    }

    /// The one made here before, or a new one where there is none, it soon ends, or the machine has other names now.
    static Certificate made(Path file, Collection<String> names) {
        try {
            if (Files.exists(file)) {
                Certificate kept = own(file, WORD);
                boolean lasts = kept.shown.getNotAfter().toInstant().isAfter(Instant.now().plus(BEFORE_ITS_END));
                List<String> said = new ArrayList<>();
                for (List<?> one : kept.shown.getSubjectAlternativeNames()) said.add(String.valueOf(one.get(1)));
                if (lasts && said.containsAll(names)) return kept;
            }
            return make(file, names);
        } catch (IOException | GeneralSecurityException | OperatorCreationException e) {
            throw new Refused(file.toString(), "no certificate could be made: {}", "give one of your own: --cert FILE.p12", String.valueOf(e.getMessage()));
        }
    }

    private static Certificate make(Path file, Collection<String> names) throws IOException, GeneralSecurityException, OperatorCreationException {
        KeyPairGenerator keys = KeyPairGenerator.getInstance("EC");
        keys.initialize(new ECGenParameterSpec("secp256r1"));
        KeyPair pair = keys.generateKeyPair();
        X500Name name = new X500Name("CN=Sillwright on this machine");
        Instant now = Instant.now();
        List<GeneralName> all = new ArrayList<>();
        for (String one : names) all.add(new GeneralName(one.matches("[0-9.]+|.*:.*") ? GeneralName.iPAddress : GeneralName.dNSName, one));
        JcaX509v3CertificateBuilder builder = new JcaX509v3CertificateBuilder(name, new BigInteger(120, new SecureRandom()), Date.from(now.minusSeconds(3600)), Date.from(now.plus(LASTS)), name, pair.getPublic());
        builder.addExtension(Extension.subjectAlternativeName, false, new GeneralNames(all.toArray(GeneralName[]::new)));
        builder.addExtension(Extension.basicConstraints, true, new BasicConstraints(0));
        builder.addExtension(Extension.extendedKeyUsage, false, new ExtendedKeyUsage(KeyPurposeId.id_kp_serverAuth));
        X509Certificate made = new JcaX509CertificateConverter().getCertificate(builder.build(new JcaContentSignerBuilder("SHA256withECDSA").build(pair.getPrivate())));
        KeyStore store = KeyStore.getInstance("PKCS12");
        store.load(null, WORD.toCharArray());
        store.setKeyEntry(ALIAS, pair.getPrivate(), WORD.toCharArray(), new X509Certificate[] {made});
        Files.deleteIfExists(file);
        if (file.getFileSystem().supportedFileAttributeViews().contains("posix")) Files.createFile(file, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
        try (OutputStream out = Files.newOutputStream(file)) {
            store.store(out, WORD.toCharArray());
        }
        return new Certificate(store, WORD.toCharArray(), made);
    }

    /// What a careful visitor compares with what the browser shows: SHA-256 of the certificate.
    String fingerprint() {
        try {
            return HexFormat.ofDelimiter(":").withUpperCase().formatHex(MessageDigest.getInstance("SHA-256").digest(shown.getEncoded()));
        } catch (GeneralSecurityException impossible) {
            throw new IllegalStateException("a certificate that was read can be written", impossible);
        }
    }

    /// The names this machine goes by in its network.
    static List<String> machineNames() {
        List<String> names = new ArrayList<>(List.of("localhost", "127.0.0.1"));
        try {
            names.add(InetAddress.getLocalHost().getHostName());
            for (java.net.NetworkInterface each : java.util.Collections.list(java.net.NetworkInterface.getNetworkInterfaces()))
                if (each.isUp() && !each.isLoopback()) for (InetAddress address : java.util.Collections.list(each.getInetAddresses())) if (address instanceof java.net.Inet4Address) names.add(address.getHostAddress());
        } catch (IOException _) {
            // A machine without a network has no other name; whoever opens the book to one is told the names there are.
        }
        return names.stream().distinct().toList();
    }
}
