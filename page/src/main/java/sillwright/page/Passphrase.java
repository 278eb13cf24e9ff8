package sillwright.page;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;

import org.bouncycastle.crypto.generators.Argon2BytesGenerator;
import org.bouncycastle.crypto.params.Argon2Parameters;
import sillwright.measure.Refused;

/// A passphrase as it is kept: Argon2id (RFC 9106), its settings and salt beside it, in the usual `$argon2id$` form.
///
/// 19 MiB, two passes, one lane. Source: OWASP password storage cheat sheet (from memory).
final class Passphrase {
    /// Own choice; the least that OWASP ASVS 5 asks is 8, and it advises 15 where nothing else guards the door.
    static final int SHORTEST = 12;
    private static final int KIB = 19_456, PASSES = 2, BYTES = 32, MOST = 1024;

    private Passphrase() {}

    /// @throws Refused when it is too short to guard anything
    static String kept(String passphrase) {
        if (passphrase.codePointCount(0, passphrase.length()) < SHORTEST) throw new Refused("passphrase", "has fewer than {} letters", "use four or five words that do not belong together", SHORTEST);
        if (passphrase.length() > MOST) throw new Refused("passphrase", "has more than {} letters", "use four or five words that do not belong together", MOST);
        byte[] salt = new byte[16];
        new SecureRandom().nextBytes(salt);
        Base64.Encoder text = Base64.getEncoder().withoutPadding();
        return "$argon2id$v=19$m=" + KIB + ",t=" + PASSES + ",p=1$" + text.encodeToString(salt) + "$" + text.encodeToString(work(passphrase, salt, KIB, PASSES));
    }

    static boolean fits(String passphrase, String kept) {
        if (passphrase.length() > MOST) return false;
        String[] parts = kept.split("[$]");
        String[] settings = parts[3].split("[=,]");
        byte[] worked = work(passphrase, Base64.getDecoder().decode(parts[4]), Integer.parseInt(settings[1]), Integer.parseInt(settings[3]));
        return MessageDigest.isEqual(worked, Base64.getDecoder().decode(parts[5]));
    }

    private static byte[] work(String passphrase, byte[] salt, int kib, int passes) {
        Argon2BytesGenerator argon = new Argon2BytesGenerator();
        argon.init(new Argon2Parameters.Builder(Argon2Parameters.ARGON2_id).withVersion(Argon2Parameters.ARGON2_VERSION_13).withMemoryAsKB(kib).withIterations(passes).withParallelism(1).withSalt(salt).build());
        byte[] out = new byte[BYTES];
        argon.generateBytes(passphrase.getBytes(StandardCharsets.UTF_8), out);
        return out;
    }
}
