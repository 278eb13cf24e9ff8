package sillwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import sillwright.measure.Units;
import sillwright.work.Repair;
import sillwright.work.Treatment;

/// The files were also opened and audited without a finding by ezdxf 0.18 while this was written; here they are read as the group codes of release 12 have them.
@DisplayNameGeneration(ReplaceUnderscores.class)
class DxfTest {
    private record Code(int code, String value) {}

    private static List<Code> read(String dxf) {
        String[] lines = dxf.split("\r\n");
        assertEquals(0, lines.length % 2, "codes and values come in pairs");
        List<Code> all = new ArrayList<>();
        for (int i = 0; i < lines.length; i += 2) all.add(new Code(Integer.parseInt(lines[i].strip()), lines[i + 1]));
        return all;
    }

    private static List<List<Code>> entities(String dxf) {
        List<List<Code>> all = new ArrayList<>();
        boolean within = false;
        for (Code code : read(dxf)) {
            if (code.code == 2 && code.value.equals("ENTITIES")) within = true;
            else if (within && code.code == 0) all.add(new ArrayList<>(List.of(code)));
            else if (within) all.getLast().add(code);
        }
        return all;
    }

    private static String value(List<Code> entity, int code) { return entity.stream().filter(one -> one.code == code).map(Code::value).findFirst().orElse(""); }

    @Test
    void the_side_is_as_long_in_the_file_as_it_is_on_the_ground() {
        String dxf = Dxf.of(Elevation.draw(Porch.assessment(Units.SI), "west"));
        double longest = 0;
        List<List<Code>> all = entities(dxf);
        for (List<Code> entity : all)
            if (entity.getFirst().value.equals("LINE") && value(entity, 8).equals("THIN") && value(entity, 20).equals(value(entity, 21)))
                longest = Math.max(longest, Math.abs(Double.parseDouble(value(entity, 11)) - Double.parseDouble(value(entity, 10))));
        assertEquals(7925, longest, 0.01 * 100 * 2 + 1);        // the dimension line; paper is written to a hundredth of a mm, at 1:100 at the smallest
    }

    /// Its section stands at another scale on paper than its views.
    @Test
    void a_patch_has_its_true_size_in_every_view_of_the_file() {
        Repair repair = Porch.assessment(Units.SI).work().repairs().get(3);
        Treatment.Dutchman patch = (Treatment.Dutchman) repair.treatment();
        List<double[]> sizes = new ArrayList<>();
        double[] box = {};
        for (List<Code> entity : entities(Dxf.of(RepairDrawing.draw(repair, Units.SI)))) {
            String kind = entity.getFirst().value;
            if (kind.equals("POLYLINE")) box = new double[] {1e9, -1e9, 1e9, -1e9};
            else if (kind.equals("VERTEX")) {
                double x = Double.parseDouble(value(entity, 10)), y = Double.parseDouble(value(entity, 20));
                box = new double[] {Math.min(box[0], x), Math.max(box[1], x), Math.min(box[2], y), Math.max(box[3], y)};
            } else if (kind.equals("SEQEND") && value(entity, 8).equals("NEW-WOOD")) sizes.add(new double[] {box[1] - box[0], box[3] - box[2]});
        }
        assertTrue(sizes.stream().anyMatch(size -> alike(size, patch.lengthMm(), patch.widthMm())), "in the face");
        assertTrue(sizes.stream().anyMatch(size -> alike(size, patch.widthMm(), patch.depthMm())), "in the section");
    }

    private static boolean alike(double[] size, double one, double other) {
        return Math.abs(Math.max(size[0], size[1]) - Math.max(one, other)) < 0.6 && Math.abs(Math.min(size[0], size[1]) - Math.min(one, other)) < 0.6;
    }

    @Test
    void every_layer_that_is_drawn_on_is_declared_and_the_file_ends_as_it_should() {
        for (Repair repair : Porch.assessment(Units.US).work().repairs()) {
            String dxf = Dxf.of(RepairDrawing.draw(repair, Units.US));
            List<Code> codes = read(dxf);
            assertEquals(new Code(0, "EOF"), codes.getLast());
            assertTrue(dxf.chars().allMatch(c -> c < 0x7F), "ASCII alone");
            Set<String> declared = new HashSet<>(), used = new HashSet<>();
            for (int i = 1; i < codes.size(); i++) if (codes.get(i - 1).equals(new Code(0, "LAYER"))) declared.add(codes.get(i).value);
            for (List<Code> entity : entities(dxf)) if (!value(entity, 8).isEmpty()) used.add(value(entity, 8));
            assertEquals(declared, used, repair.id());
        }
    }

    @Test
    void every_word_of_the_drawing_is_in_the_file() {
        Drawing drawing = Elevation.draw(Porch.assessment(Units.US), "south");
        List<String> words = entities(Dxf.of(drawing)).stream().filter(entity -> entity.getFirst().value.equals("TEXT")).map(entity -> value(entity, 1)).toList();
        assertEquals(drawing.labels().size(), words.size());
        assertTrue(words.contains("W1"), words.toString());
    }
}
