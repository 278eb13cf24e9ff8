package sillwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.util.List;
import java.util.Optional;

import javax.imageio.ImageIO;

import com.drew.imaging.ImageMetadataReader;
import com.drew.metadata.exif.ExifDirectoryBase;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import sillwright.Assessment;
import sillwright.measure.Refused;
import sillwright.measure.Units;
import sillwright.work.WorkFindings.OrderLine;

@DisplayNameGeneration(ReplaceUnderscores.class)
class ExportsTest {
    @Test
    void another_reader_finds_every_table_of_the_workbook_with_its_numbers() throws Exception {
        Assessment porch = Porch.assessment(Units.US);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Workbook.write(porch, out);
        try (ReadableWorkbook book = new ReadableWorkbook(new ByteArrayInputStream(out.toByteArray()))) {
            assertEquals(List.of("Members", "Damages", "Water", "Repairs", "Order", "Tools", "Cuts", "Left over", "Work", "Watch"), book.getSheets().map(sheet -> sheet.getName()).toList());
            List<Row> members = book.findSheet("Members").orElseThrow().read(), order = book.findSheet("Order").orElseThrow().read();
            assertEquals(porch.survey().members().size() + 1, members.size());
            for (int i = 0; i < porch.work().order().size(); i++) {
                OrderLine line = porch.work().order().get(i);
                assertEquals(line.item(), order.get(i + 1).getCellText(0));
                assertEquals(OrderSheet.unit(line.measure(), Units.US).fromOwn(line.buy()), order.get(i + 1).getCellAsNumber(2).orElseThrow().doubleValue(), 0.0006);
            }
        }
    }

    @Test
    void a_map_says_where_a_building_stands_only_where_it_was_asked_to() {
        Assessment porch = Porch.assessment(Units.US);
        String bare = GroupMap.geojson(List.of(new GroupMap.Placed(porch, Optional.empty()), new GroupMap.Placed(porch, Optional.empty())));
        assertTrue(bare.contains("\"geometry\":null") && !bare.contains("coordinates"), bare);
        String placed = GroupMap.geojson(List.of(new GroupMap.Placed(porch, Optional.of(new GroupMap.Position(44.25, -72.5)))));
        assertTrue(placed.contains("\"coordinates\":[-72.5,44.25]"), "RFC 7946, 3.1.1: longitude first. " + placed);
        assertThrows(Refused.class, () -> new GroupMap.Position(144, 0));
    }

    /// A picture, wide, its left half black, with a camera's note of how it was held and of where: Exif 2.3, tags 0x0112 and 0x8825.
    private static byte[] camera(int orientation) throws Exception {
        BufferedImage image = new BufferedImage(80, 40, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < 80; x++) for (int y = 0; y < 40; y++) image.setRGB(x, y, x < 40 ? 0x000000 : 0xFFFFFF);
        ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
        ImageIO.write(image, "jpg", jpeg);
        byte[] plain = jpeg.toByteArray();
        byte[] note = {'E', 'x', 'i', 'f', 0, 0, 'M', 'M', 0, 42, 0, 0, 0, 8, 0, 2, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, (byte) orientation, 0, 0, (byte) 0x88, 0x25, 0, 4, 0, 0, 0, 1, 0, 0, 0, 38,
            0, 0, 0, 0, 0, 1, 0, 1, 0, 2, 0, 0, 0, 2, 'N', 0, 0, 0, 0, 0, 0, 0};
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(plain, 0, 2);
        out.write(new byte[] {(byte) 0xFF, (byte) 0xE1, 0, (byte) (note.length + 2)});
        out.write(note);
        out.write(plain, 2, plain.length - 2);
        return out.toByteArray();
    }

    /// Where the black half comes to lie. Source: Exif 2.3, 4.6.4, orientation: which side of the scene the first row and the first column are.
    @ParameterizedTest(name = "orientation {0}")
    @CsvSource({"1, 80, left", "2, 80, right", "3, 80, right", "4, 80, left", "5, 40, top", "6, 40, top", "7, 40, bottom", "8, 40, bottom"})
    void a_photo_is_turned_as_the_camera_was_held_and_forgets_where_it_was_taken(int orientation, int wide, String black) throws Exception {
        byte[] taken = camera(orientation);
        assertTrue(ImageMetadataReader.readMetadata(new ByteArrayInputStream(taken)).containsDirectoryOfType(com.drew.metadata.exif.GpsDirectory.class), "the picture to be freed has a place");
        byte[] small = Photograph.small(taken, "photos/a.jpg");
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(small));
        assertEquals(wide, image.getWidth());
        int x = switch (black) {
            case "left" -> image.getWidth() / 4;
            case "right" -> image.getWidth() * 3 / 4;
            default -> image.getWidth() / 2;
        }, y = switch (black) {
            case "top" -> image.getHeight() / 4;
            case "bottom" -> image.getHeight() * 3 / 4;
            default -> image.getHeight() / 2;
        };
        assertTrue((image.getRGB(x, y) & 0xFF) < 60, black);
        assertTrue((image.getRGB(image.getWidth() - 1 - x, image.getHeight() - 1 - y) & 0xFF) > 200 || x == image.getWidth() / 2 && y == image.getHeight() / 2, "the other half is white");
        assertFalse(ImageMetadataReader.readMetadata(new ByteArrayInputStream(small)).containsDirectoryOfType(ExifDirectoryBase.class));
        assertThrows(Refused.class, () -> Photograph.small(new byte[] {1, 2, 3}, "photos/none.jpg"));
    }
}
