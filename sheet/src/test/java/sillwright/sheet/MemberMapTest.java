package sillwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import sillwright.measure.Units;
import sillwright.walk.ProbeReading;
import sillwright.wood.Condition;

@DisplayNameGeneration(ReplaceUnderscores.class)
class MemberMapTest {
    private static final Condition POST = Porch.assessment(Units.SI).wood().of("s-post-3");

    @Test
    void every_probe_of_every_face_is_marked_and_lettered_with_its_depth_where_it_found_any() {
        Drawing drawing = MemberMap.draw(POST, Units.SI);
        List<String> words = drawing.labels().stream().map(Drawing.Label::words).toList();
        long deep = POST.maps().stream().mapToLong(map -> map.probes().stream().filter(probe -> probe.depthMm() > 0).count()).sum();
        long probes = POST.maps().stream().mapToLong(map -> map.probes().size()).sum();
        assertEquals(16, probes);
        assertTrue(deep > 0 && deep < probes, deep + " of " + probes);
        assertEquals(deep, words.stream().filter(word -> word.matches("[0-9.]+\\+?")).count(), words.toString());
        assertEquals(probes, drawing.svg().all("line").stream().filter(one -> one.get("y1").equals(one.get("y2")) && Math.abs(Double.parseDouble(one.get("x2")) - Double.parseDouble(one.get("x1")) - 1.6) < 0.03).count());
        assertTrue(words.stream().anyMatch(word -> word.endsWith("+")), "a probe that ran out is marked");
    }

    @Test
    void the_sound_wood_line_stands_at_its_place_to_scale() {
        Drawing drawing = MemberMap.draw(POST, Units.SI);
        double ratio = ratio(drawing);
        double line = drawing.svg().all("line").stream().filter(one -> one.get("stroke").equals(Ink.ACT)
                && one.get("stroke-dasharray").equals(Ink.CUT.dashes())).mapToDouble(one -> Double.parseDouble(one.get("x1"))).min().orElseThrow();
        double start = drawing.svg().all("rect").stream().filter(one -> one.get("fill").contains("hatch-decayed")).mapToDouble(one ->
                Double.parseDouble(one.get("x"))).filter(x -> x > 10 && x < 100).min().orElseThrow();
        assertEquals(360 / ratio, line - start, 0.02);
    }

    private static double ratio(Drawing drawing) {
        String words = drawing.labels().stream().map(Drawing.Label::words).filter(word -> word.startsWith("faces at 1:")).findFirst().orElseThrow();
        return Double.parseDouble(words.substring(11, words.indexOf(';')));
    }

    @Test
    void a_face_much_longer_than_wide_says_both_its_scales() {
        Condition board = Porch.assessment(Units.US).wood().of("w-skirt");
        String words = MemberMap.draw(board, Units.US).labels().stream().map(Drawing.Label::words)
                .filter(word -> word.contains("across")).findFirst().orElse("");
        assertTrue(words.startsWith("along ") && words.contains(", across "), words);
    }

    /// Of a long board only the soft part may be drawn; what is left out was sound, and is counted.
    @Test
    void a_probe_that_is_not_drawn_was_sound_and_is_counted() {
        int beyond = 0;
        for (long seed = 1; seed <= 12; seed++)
            for (Condition one : DrawnHouses.assessment(seed, Units.SI).wood().all()) {
                if (one.maps().isEmpty()) continue;
                Drawing drawing = MemberMap.draw(one, Units.SI);
                List<ProbeReading> probes = one.maps().stream().flatMap(map -> map.probes().stream()).toList();
                long left = drawing.labels().stream().map(Drawing.Label::words).filter(word -> word.matches("sound at \\d+ probes? beyond")).mapToLong(word -> Long.parseLong(word.replaceAll("\\D", ""))).sum();
                long crosses = drawing.svg().all("line").stream().filter(line -> line.get("y1").equals(line.get("y2")) && Math.abs(Double.parseDouble(line.get("x2")) - Double.parseDouble(line.get("x1")) - 1.6) < 0.03).count();
                long deep = probes.stream().filter(probe -> probe.depthMm() > 0 || probe.ranOut()).count();
                String where = "seed " + seed + ", " + one.member().id();
                assertEquals(probes.size(), crosses + left, where);
                assertEquals(deep, drawing.labels().stream().filter(label -> label.words().matches("[0-9.]+\\+?")).count(), where);
                beyond += left;
            }
        assertTrue(beyond > 0, "a long board that is soft in a small part");
    }

    @Test
    void the_section_that_is_left_is_drawn_with_its_share() {
        List<String> words = MemberMap.draw(POST, Units.SI).labels().stream().map(Drawing.Label::words).toList();
        assertTrue(words.contains("31 % of area left, at worst 24 %"), words.toString());
    }

    @Test
    void a_member_that_bears_load_has_its_section_drawn_where_its_load_uses_most() {
        int told = 0;
        var porch = Porch.assessment(Units.US);
        for (Condition one : sillwright.wood.Wood.find(porch.survey(), porch.water(), 100, 1, _ -> {}).all()) {
            var left = one.governing().flatMap(governing -> governing.left());
            if (left.isEmpty()) continue;
            assertEquals(one.governing().orElseThrow().stationMm(), left.get().stationMm(), 1e-9);
            List<String> words = MemberMap.draw(one, Units.US).labels().stream().map(Drawing.Label::words).toList();
            assertTrue(String.join(" ", words).contains(Section.station(one.member(), left.get(), Units.US)), one.member().id() + ": " + words);
            told++;
        }
        assertTrue(told > 0, "members that bear load and are soft");
    }
}
