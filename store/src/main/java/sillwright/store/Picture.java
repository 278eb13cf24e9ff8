package sillwright.store;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

import sillwright.measure.Refused;

/// What a picture's head says it is, told without unpacking it: a small file can unpack to more than memory holds.
///
/// @param media `image/jpeg`, `image/png` or `image/webp`
record Picture(String media, int width, int height) {
    /// The largest picture that is kept, in bytes. This program's own choice.
    static final int LARGEST = 32 << 20;
    /// The most picture points: twice what a phone's camera gives. This program's own choice.
    static final long MOST_POINTS = 100_000_000;

    /// @throws Refused when the bytes are no such picture, or too many, or would unpack to too many points
    static Picture of(byte[] bytes) {
        if (bytes.length > LARGEST) throw new Refused("", "the picture has {} MB, where {} MB are taken", "send it smaller", bytes.length >> 20, LARGEST >> 20);
        Picture seen;
        try {
            seen = head(ByteBuffer.wrap(bytes));
        } catch (IndexOutOfBoundsException | java.nio.BufferUnderflowException _) {
            throw new Refused("", "the picture is cut short", "send it again whole");
        }
        if (seen.width < 1 || seen.height < 1) throw new Refused("", "the picture has no points", "take it again");
        if ((long) seen.width * seen.height > MOST_POINTS)
            throw new Refused("", "the picture is {} by {} points, where {} in all are taken", "send it smaller", seen.width, seen.height, MOST_POINTS);
        return seen;
    }

    private static Picture head(ByteBuffer in) {
        if (in.limit() > 2 && (in.getShort(0) & 0xffff) == 0xffd8) return jpeg(in);
        if (in.limit() > 8 && in.getLong(0) == 0x8950_4e47_0d0a_1a0aL) return png(in);
        if (in.limit() > 12 && word(in, 0).equals("RIFF") && word(in, 8).equals("WEBP")) return webp(in);
        throw new Refused("", "this is no JPEG, PNG or WebP picture", "send the photo as the camera made it, as JPEG");
    }

    private static String word(ByteBuffer in, int at) {
        byte[] four = new byte[4];
        in.get(at, four);
        return new String(four, StandardCharsets.US_ASCII);
    }

    /// Goes from segment to segment until one tells the frame's size. Source: ITU-T T.81, annex B (from memory).
    private static Picture jpeg(ByteBuffer in) {
        int at = 2;
        while (true) {
            if ((in.get(at) & 0xff) != 0xff) throw new Refused("", "the picture's head is broken", "take it again");
            int marker = in.get(at + 1) & 0xff;
            if (marker == 0xff) {
                at++;
                continue;
            }
            boolean bare = marker == 0x01 || marker >= 0xd0 && marker <= 0xd7;
            if (bare) {
                at += 2;
                continue;
            }
            if (marker == 0xd9 || marker == 0xda) throw new Refused("", "the picture does not tell its size", "take it again");
            boolean frame = marker >= 0xc0 && marker <= 0xcf && marker != 0xc4 && marker != 0xc8 && marker != 0xcc;
            if (frame) return new Picture("image/jpeg", in.getShort(at + 7) & 0xffff, in.getShort(at + 5) & 0xffff);
            at += 2 + Math.max(2, in.getShort(at + 2) & 0xffff);
        }
    }

    /// The first chunk tells the size. Source: ISO/IEC 15948, section 11.2.2 (from memory).
    private static Picture png(ByteBuffer in) {
        if (!word(in, 12).equals("IHDR")) throw new Refused("", "the picture's head is broken", "take it again");
        return new Picture("image/png", in.getInt(16), in.getInt(20));
    }

    /// Source: RFC 9649, sections 2.5 to 2.7 (from memory).
    private static Picture webp(ByteBuffer in) {
        return switch (word(in, 12)) {
            case "VP8 " -> new Picture("image/webp", little(in, 26, 2) & 0x3fff, little(in, 28, 2) & 0x3fff);
            case "VP8L" -> new Picture("image/webp", (little(in, 21, 4) & 0x3fff) + 1, (little(in, 21, 4) >>> 14 & 0x3fff) + 1);
            case "VP8X" -> new Picture("image/webp", little(in, 24, 3) + 1, little(in, 27, 3) + 1);
            default -> throw new Refused("", "the picture's head is broken", "take it again");
        };
    }

    private static int little(ByteBuffer in, int at, int bytes) {
        int value = 0;
        for (int i = bytes - 1; i >= 0; i--) value = value << 8 | in.get(at + i) & 0xff;
        return value;
    }
}
