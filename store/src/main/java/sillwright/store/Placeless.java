package sillwright.store;

import java.io.ByteArrayOutputStream;
import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.CRC32;

/// A picture without what tells where it was taken: every point of it, and how the camera was held, stay as they are.
///
/// The place stands in a directory of its own in the Exif block, and may stand again in XMP, IPTC or text, which go whole. What a maker of cameras writes in a block of its own form is not looked into.
/// Source: Exif 2.3, tag 0x8825 (GPS); TIFF 6.0, section 2; ITU-T T.81, annex B; ISO/IEC 15948, section 11.3; RFC 9649, section 2.7 (all from memory).
final class Placeless {
    private static final int GPS = 0x8825;
    private static final byte[] EXIF = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);
    /// Bytes of a value by its TIFF type, 1 to 12.
    private static final int[] SIZE = {0, 1, 1, 2, 4, 8, 1, 1, 2, 4, 8, 4, 8};

    private Placeless() {}

    /// @return the same array where it tells no place
    static byte[] of(byte[] picture, String media) {
        byte[] bare = switch (media) {
            case "image/png" -> png(picture);
            case "image/webp" -> webp(picture);
            default -> jpeg(picture);
        };
        return Arrays.equals(bare, picture) ? picture : bare;
    }

    private static byte[] jpeg(byte[] in) {
        ByteArrayOutputStream out = new ByteArrayOutputStream(in.length);
        out.write(in, 0, 2);
        int at = 2;
        while (at + 4 <= in.length && (in[at] & 0xff) == 0xff) {
            int marker = in[at + 1] & 0xff;
            if (marker == 0xff || marker == 0x01 || marker >= 0xd0 && marker <= 0xd7) {
                out.write(in, at, marker == 0xff ? 1 : 2);
                at += marker == 0xff ? 1 : 2;
                continue;
            }
            if (marker == 0xd9) break;
            int end = Math.min(in.length, at + 2 + ((in[at + 2] & 0xff) << 8 | in[at + 3] & 0xff));
            byte[] segment = Arrays.copyOfRange(in, at, end);
            boolean exif = marker == 0xe1 && begins(segment, 4, EXIF);
            if (exif && emptied(segment, 4 + EXIF.length) || !exif && marker != 0xe1 && marker != 0xed && marker != 0xfe) out.writeBytes(segment);
            at = end;
            if (marker != 0xda) continue;
            while (at + 1 < in.length && ((in[at] & 0xff) != 0xff || in[at + 1] == 0 || (in[at + 1] & 0xf8) == 0xd0)) at++;
            out.write(in, end, at - end);
        }
        // What a phone hangs on behind the picture, a second one or a film, has notes of its own and stays behind.
        out.write(in, at, Math.min(2, in.length - at));
        return out.toByteArray();
    }

    private static byte[] png(byte[] in) {
        ByteArrayOutputStream out = new ByteArrayOutputStream(in.length);
        out.write(in, 0, 8);
        int at = 8;
        while (at + 12 <= in.length) {
            int end = Math.clamp(12L + ByteBuffer.wrap(in).getInt(at) + at, at + 12, in.length);
            byte[] chunk = Arrays.copyOfRange(in, at, end);
            String kind = new String(chunk, 4, 4, StandardCharsets.US_ASCII);
            boolean exif = kind.equals("eXIf");
            if (exif && emptied(chunk, 8)) {
                CRC32 sum = new CRC32();
                sum.update(chunk, 4, chunk.length - 8);
                ByteBuffer.wrap(chunk).putInt(chunk.length - 4, (int) sum.getValue());
                out.writeBytes(chunk);
            } else if (!exif && !kind.equals("tEXt") && !kind.equals("iTXt") && !kind.equals("zTXt")) out.writeBytes(chunk);
            at = end;
        }
        return out.toByteArray();
    }

    private static byte[] webp(byte[] in) {
        ByteArrayOutputStream out = new ByteArrayOutputStream(in.length);
        out.write(in, 0, 12);
        int at = 12;
        while (at + 8 <= in.length) {
            long size = ByteBuffer.wrap(in).order(ByteOrder.LITTLE_ENDIAN).getInt(at + 4) & 0xffffffffL;
            int end = (int) Math.min(in.length, at + 8 + size + (size & 1));
            byte[] chunk = Arrays.copyOfRange(in, at, end);
            String kind = new String(chunk, 0, 4, StandardCharsets.US_ASCII);
            if (kind.equals("VP8X") && chunk.length > 8) chunk[8] &= ~0x04;
            boolean exif = kind.equals("EXIF");
            if (exif && emptied(chunk, begins(chunk, 8, EXIF) ? 14 : 8) || !exif && !kind.equals("XMP ")) out.writeBytes(chunk);
            at = end;
        }
        byte[] bare = out.toByteArray();
        ByteBuffer.wrap(bare).order(ByteOrder.LITTLE_ENDIAN).putInt(4, bare.length - 8);
        return bare;
    }

    private static boolean begins(byte[] in, int at, byte[] with) { return in.length >= at + with.length && Arrays.equals(in, at, at + with.length, with, 0, with.length); }

    /// Empties the GPS directory of an Exif block in place, its values too.
    ///
    /// @param at where the TIFF header begins
    /// @return false where the block cannot be read, and must go whole
    private static boolean emptied(byte[] block, int at) {
        try {
            ByteBuffer tiff = ByteBuffer.wrap(block, at, block.length - at).slice();
            short order = tiff.getShort(0);
            if (order != 0x4949 && order != 0x4d4d) return false;
            tiff.order(order == 0x4949 ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
            int first = tiff.getInt(4);
            for (int i = 0, count = tiff.getShort(first) & 0xffff; i < count; i++) {
                int entry = first + 2 + 12 * i;
                if ((tiff.getShort(entry) & 0xffff) == GPS) emptyDirectory(tiff, tiff.getInt(entry + 8));
            }
            return true;
        } catch (IndexOutOfBoundsException | BufferUnderflowException | IllegalArgumentException broken) {
            return false;
        }
    }

    private static void emptyDirectory(ByteBuffer tiff, int directory) {
        int count = tiff.getShort(directory) & 0xffff;
        for (int i = 0; i < count; i++) {
            int entry = directory + 2 + 12 * i, type = tiff.getShort(entry + 2) & 0xffff;
            long bytes = (type < SIZE.length ? SIZE[type] : 1) * (tiff.getInt(entry + 4) & 0xffffffffL);
            if (bytes > 4) zero(tiff, tiff.getInt(entry + 8), bytes);
        }
        zero(tiff, directory, 2 + 12L * count);
    }

    private static void zero(ByteBuffer tiff, int from, long bytes) { for (long i = 0; i < bytes; i++) tiff.put(Math.toIntExact(from + i), (byte) 0); }
}
