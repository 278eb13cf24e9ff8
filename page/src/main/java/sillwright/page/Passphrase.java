package sillwright.page;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;

import com.nulabinc.zxcvbn.Zxcvbn;
import org.bouncycastle.crypto.generators.Argon2BytesGenerator;
import org.bouncycastle.crypto.params.Argon2Parameters;
import sillwright.measure.Refused;

/// A passphrase as it is kept: Argon2id (RFC 9106), its settings and salt beside it, in the usual `$argon2id$` form.
///
/// 19 MiB, two passes, one lane. Source: OWASP password storage cheat sheet (from memory).
final class Passphrase {
    /// Own choice; the least that OWASP ASVS 5 asks is 8, and it advises 15 where nothing else guards the door.
    static final int SHORTEST = 12;
    /// Own choice: at forty tries a minute for all, some five hundred years.
    private static final double FEWEST_GUESSES = 1e10;
    /// Words of this program and of what it is for: no passphrase is made of these.
    static final List<String> WORDS = List.of("sillwright", "passphrase", "fieldbook", "book", "house", "building", "wooden", "wood", "timber", "water", "work", "walk", "watch", "owner", "surveyor", "reader",
            "device", "office", "serve", "server", "network", "open");
    private static final int KIB = 19_456, PASSES = 2, BYTES = 32, MOST = 1024;

    private Passphrase() {}

    /// @param near what somebody who guesses would try here first, beside the program's own words
    /// @throws Refused when it is too short, or too soon guessed, to guard anything
    static String kept(String passphrase, String... near) {
        if (passphrase.codePointCount(0, passphrase.length()) < SHORTEST) throw new Refused("passphrase", "has fewer than {} letters", "use four or five words that do not belong together", SHORTEST);
        if (passphrase.length() > MOST) throw new Refused("passphrase", "has more than {} letters", "use four or five words that do not belong together", MOST);
        if (guesses(passphrase, near) < FEWEST_GUESSES) throw new Refused("passphrase", "would soon be guessed", "use four or five words that do not belong together, none of them about the house or this program");
        byte[] salt = new byte[16];
        new SecureRandom().nextBytes(salt);
        Base64.Encoder text = Base64.getEncoder().withoutPadding();
        return "$argon2id$v=19$m=" + KIB + ",t=" + PASSES + ",p=1$" + text.encodeToString(salt) + "$" + text.encodeToString(work(passphrase, salt, KIB, PASSES));
    }

    /// How many tries a guesser needs who knows the passwords and words that people use, rows of keys, repeats and dates; words that are near count for nothing.
    private static double guesses(String passphrase, String... near) {
        List<String> known = new ArrayList<>(WORDS);
        for (String one : near) known.addAll(List.of(one.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+")));
        known.removeIf(word -> word.length() < 3);
        // What is hard to guess by its beginning is hard to guess, and a long one would take the measure long.
        String rest = passphrase.substring(0, Math.min(64, passphrase.length())).toLowerCase(Locale.ROOT);
        for (String word : known) rest = rest.replace(word, "");
        return new Zxcvbn().measure(rest.replaceAll("[\\s_.,-]{2,}", " ").strip()).getGuesses();
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
