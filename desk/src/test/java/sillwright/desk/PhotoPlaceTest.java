package sillwright.desk;

import module java.base;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.util.zip.ZipFile;
import javax.imageio.ImageIO;

import com.drew.imaging.ImageMetadataReader;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.GpsDirectory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// What leaves the book or goes on paper does not tell where its photos were taken, unless it was asked to: told by a general reader of picture notes.
@DisplayNameGeneration(ReplaceUnderscores.class)
class PhotoPlaceTest {
    @TempDir
    private Path folder;
    private byte[] taken;

    @BeforeEach
    void take_a_picture_and_note_it_in_a_survey() throws Exception {
        taken = camera();
        Files.createDirectories(folder.resolve("photos"));
        Files.write(folder.resolve("photos/a.jpg"), taken);
        String sill = Files.readString(ExamplesTest.FOLDER.resolve("one-sill.survey.json"));
        int end = sill.lastIndexOf(']');
        Matcher side = Pattern.compile("\"side\":\\s*\"([^\"]+)\"").matcher(sill);
        assertTrue(side.find());
        Files.writeString(folder.resolve("sill.survey.json"), sill.substring(0, end).stripTrailing() + ",\n{\"id\":\"0199e3f0-0000-7000-8000-000000000001\",\"at\":\"2025-10-14T15:00:00Z\",\"device\":\"phone-1\",\"author\":\"A. Surveyor\",\"kind\":\"photo\","
                + "\"says\":{\"file\":\"photos/a.jpg\",\"side\":\"" + side.group(1) + "\",\"caption\":\"drawn by program\"}}\n" + sill.substring(end));
    }

    /// A picture with an Exif block (Exif 2.3: orientation, a latitude and a longitude), the same place again in XMP, and something hung on behind.
    private static byte[] camera() throws IOException {
        BufferedImage image = new BufferedImage(80, 40, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < 80; x++) for (int y = 0; y < 40; y++) image.setRGB(x, y, x * 3 << 16 | y * 6 << 8);
        ByteArrayOutputStream jpeg = new ByteArrayOutputStream(), out = new ByteArrayOutputStream();
        ImageIO.write(image, "jpg", jpeg);
        ByteBuffer tiff = ByteBuffer.allocate(140).order(ByteOrder.LITTLE_ENDIAN);
        tiff.put((byte) 'I').put((byte) 'I').putShort((short) 42).putInt(8);
        tiff.putShort((short) 2).putShort((short) 0x0112).putShort((short) 3).putInt(1).putInt(6).putShort((short) 0x8825).putShort((short) 4).putInt(1).putInt(38).putInt(0);
        tiff.putShort((short) 4).putShort((short) 1).putShort((short) 2).putInt(2).putInt('N').putShort((short) 2).putShort((short) 5).putInt(3).putInt(92).putShort((short) 3).putShort((short) 2).putInt(2).putInt('W')
                .putShort((short) 4).putShort((short) 5).putInt(3).putInt(116).putInt(0);
        for (int part : new int[] {44, 1, 15, 1, 36, 1, 72, 1, 34, 1, 48, 1}) tiff.putInt(part);
        out.write(jpeg.toByteArray(), 0, 2);
        segment(out, "Exif\0\0".getBytes(StandardCharsets.US_ASCII), tiff.array());
        segment(out, "http://ns.adobe.com/xap/1.0/\0".getBytes(StandardCharsets.US_ASCII), "<x:xmpmeta xmlns:x='adobe:ns:meta/' note='GPSLatitude 44,15.6N'/>".getBytes(StandardCharsets.US_ASCII));
        out.write(jpeg.toByteArray(), 2, jpeg.size() - 2);
        out.writeBytes("a film with its own GPSLatitude".getBytes(StandardCharsets.US_ASCII));
        return out.toByteArray();
    }

    private static void segment(ByteArrayOutputStream out, byte[] name, byte[] said) {
        int size = 2 + name.length + said.length;
        out.writeBytes(new byte[] {(byte) 0xff, (byte) 0xe1, (byte) (size >> 8), (byte) size});
        out.writeBytes(name);
        out.writeBytes(said);
    }

    private static Metadata notes(byte[] picture) throws Exception { return ImageMetadataReader.readMetadata(new ByteArrayInputStream(picture)); }

    private byte[] exported(String... more) throws Exception {
        String book = folder.resolve("a" + more.length + ".book").toString(), zip = folder.resolve("out" + more.length + ".zip").toString();
        Said in = Said.by("book", "import", folder.resolve("sill.survey.json").toString(), "--book", book);
        assertEquals(0, in.code(), in.out() + in.err());
        List<String> words = new ArrayList<>(List.of("book", "export", "-o", zip, "--book", book));
        words.addAll(List.of(more));
        Said out = Said.by(words.toArray(String[]::new));
        assertEquals(0, out.code(), out.out() + out.err());
        try (ZipFile file = new ZipFile(zip)) {
            return file.getInputStream(file.stream().filter(entry -> entry.getName().endsWith(".jpg")).findFirst().orElseThrow()).readAllBytes();
        }
    }

    @Test
    void an_exported_photo_keeps_its_points_and_how_it_was_held_and_forgets_its_place() throws Exception {
        assertNotNull(notes(taken).getFirstDirectoryOfType(GpsDirectory.class).getGeoLocation(), "the picture to be freed has a place");
        byte[] bare = exported();
        GpsDirectory left = notes(bare).getFirstDirectoryOfType(GpsDirectory.class);
        assertTrue(left == null || left.getGeoLocation() == null && left.getTagCount() == 0, String.valueOf(left));
        assertFalse(new String(bare, StandardCharsets.ISO_8859_1).contains("GPSLatitude"));
        assertEquals(6, notes(bare).getFirstDirectoryOfType(ExifIFD0Directory.class).getInt(ExifIFD0Directory.TAG_ORIENTATION));
        BufferedImage before = ImageIO.read(new ByteArrayInputStream(taken)), after = ImageIO.read(new ByteArrayInputStream(bare));
        for (int x = 0; x < 80; x++) for (int y = 0; y < 40; y++) assertEquals(before.getRGB(x, y), after.getRGB(x, y));
    }

    @Test
    void it_tells_its_place_where_that_was_asked_for() throws Exception { assertArrayEquals(taken, exported("--with-places")); }

    @Test
    void a_photo_in_the_dossier_is_turned_and_has_no_notes_at_all() throws Exception {
        Said said = Said.by("dossier", folder.resolve("sill.survey.json").toString(), "-o", folder.resolve("out").toString(), "--start", "2026-06-01");
        assertEquals(0, said.code(), said.out() + said.err());
        int found = 0;
        try (PDDocument pdf = Loader.loadPDF(folder.resolve("out/dossier.pdf").toFile())) {
            for (PDPage page : pdf.getPages())
                for (COSName name : page.getResources().getXObjectNames())
                    if (page.getResources().getXObject(name) instanceof PDImageXObject image) {
                        found++;
                        assertTrue(image.getHeight() > image.getWidth(), "orientation 6 stands");
                        byte[] held = image.getCOSObject().createRawInputStream().readAllBytes();
                        assertNull(notes(held).getFirstDirectoryOfType(GpsDirectory.class));
                        assertNull(notes(held).getFirstDirectoryOfType(ExifIFD0Directory.class));
                    }
        }
        assertEquals(1, found);
    }
}
