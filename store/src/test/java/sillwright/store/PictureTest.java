package sillwright.store;

import module java.base;
import java.awt.image.BufferedImage;
import javax.imageio.ImageIO;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import sillwright.measure.Refused;

@DisplayNameGeneration(ReplaceUnderscores.class)
class PictureTest {
    static byte[] jpeg(int width, int height) { return written("jpg", width, height); }

    private static byte[] written(String format, int width, int height) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int i = 0; i < width * height; i++) image.setRGB(i % width, i / width, i * 7919);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            if (!ImageIO.write(image, format, out)) throw new IllegalStateException(format);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    @Test
    void its_head_says_what_the_platform_reads_there() {
        for (String format : List.of("jpg", "png"))
            for (int[] size : new int[][] {{1, 1}, {40, 30}, {300, 7}}) {
                Picture seen = Picture.of(written(format, size[0], size[1]));
                assertEquals(new Picture(format.equals("jpg") ? "image/jpeg" : "image/png", size[0], size[1]), seen);
            }
    }

    @Test
    void a_webp_of_each_kind_tells_its_size() {
        // Heads alone, laid out by hand after RFC 9649: a frame of 176 by 144, a lossless one of 176 by 144, and a canvas of 4000 by 3000.
        assertEquals(new Picture("image/webp", 176, 144), Picture.of(webp("VP8 ", "000000009d012ab0009000")));
        assertEquals(new Picture("image/webp", 176, 144), Picture.of(webp("VP8L", "000000002f" + little((176 - 1) | (144 - 1) << 14, 4))));
        assertEquals(new Picture("image/webp", 4000, 3000), Picture.of(webp("VP8X", "0a00000000000000" + little(3999, 3) + little(2999, 3))));
    }

    private static String little(int value, int bytes) {
        StringBuilder hex = new StringBuilder();
        for (int i = 0; i < bytes; i++) hex.append(HexFormat.of().toHexDigits((byte) (value >> 8 * i)));
        return hex.toString();
    }

    private static byte[] webp(String kind, String rest) {
        byte[] tail = HexFormat.of().parseHex(kind.equals("VP8 ") ? "00000000" + rest.substring(0, 2) + "0000" + rest.substring(8) : rest);
        byte[] head = ("RIFF\0\0\0\0WEBP" + kind).getBytes(java.nio.charset.StandardCharsets.US_ASCII);
        byte[] all = Arrays.copyOf(head, head.length + tail.length);
        System.arraycopy(tail, 0, all, head.length, tail.length);
        return all;
    }

    @Test
    void a_small_file_that_unpacks_to_more_than_memory_holds_is_refused() {
        byte[] png = written("png", 10, 10);
        java.nio.ByteBuffer.wrap(png).putInt(16, 50_000).putInt(20, 50_000);
        assertTrue(assertThrows(Refused.class, () -> Picture.of(png)).getMessage().contains("50000 by 50000"));
        java.nio.ByteBuffer.wrap(png).putInt(16, -1).putInt(20, -1);
        assertThrows(Refused.class, () -> Picture.of(png));
        assertThrows(Refused.class, () -> Picture.of(new byte[Picture.LARGEST + 1]));
    }

    @Test
    void what_is_no_picture_or_cut_short_is_refused_and_never_thrown_otherwise() {
        for (byte[] whole : List.of(jpeg(20, 20), written("png", 20, 20), webp("VP8X", "0a00000000000000" + little(9, 3) + little(9, 3)))) {
            Random random = new Random(7);
            for (int cut = 0; cut < Math.min(whole.length, 200); cut++) {
                byte[] torn = Arrays.copyOf(whole, cut);
                try {
                    Picture.of(torn);
                } catch (Refused refused) {
                    assertTrue(!refused.mend().isEmpty());
                }
                byte[] changed = whole.clone();
                for (int i = 0; i < 3; i++) changed[random.nextInt(changed.length)] = (byte) random.nextInt();
                try {
                    Picture.of(changed);
                } catch (Refused refused) {
                    assertTrue(!refused.mend().isEmpty());
                }
            }
        }
        for (String text : List.of("", "x", "<svg onload='x'/>", "GIF89a......", "%PDF-1.7 and more")) assertThrows(Refused.class, () -> Picture.of(text.getBytes()), text);
    }
}
