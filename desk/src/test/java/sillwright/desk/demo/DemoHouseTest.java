package sillwright.desk.demo;

import module java.base;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import sillwright.walk.Body;
import sillwright.walk.Entry;
import sillwright.walk.FieldBook;
import sillwright.walk.Member;
import sillwright.walk.MoistureReading;
import sillwright.walk.ProbeReading;
import sillwright.walk.Sign;
import sillwright.walk.Survey;

import static org.junit.jupiter.api.Assertions.*;

@DisplayNameGeneration(ReplaceUnderscores.class)
class DemoHouseTest {
    private static List<Entry> entries;
    private static Survey survey;

    @BeforeAll
    static void fold() {
        entries = DemoHouse.entries();
        survey = FieldBook.fold("", entries);
    }

    @Test
    void the_house_holds_what_it_is_said_to_hold() {
        assertEquals("67 members, 883 probes, 132 moistures, 57 seen, 56 not", DemoSurveysTest.count("fallow-brook-house.survey.json"));
        assertEquals(List.of("south", "west", "east", "north"), List.copyOf(survey.sides().keySet()));
    }

    @Test
    void slips_were_put_right_by_amending_and_striking() {
        assertEquals(7, entries.stream().filter(entry -> entry.body() instanceof Body.Amended).count());
        assertEquals(5, entries.stream().filter(entry -> entry.body() instanceof Body.Struck).count());
        assertEquals("6' 8\"", survey.members().get("s-post-4").length().text());
        assertTrue(survey.sightings().stream().filter(noted -> noted.what().sign() == Sign.GUTTER_JOINT_DRIPS).noneMatch(noted -> noted.what().seen()));
    }

    @Test
    void two_phones_wrote_at_the_same_time_one_in_inches_and_one_in_millimetres() {
        assertEquals(Set.of("phone-1", "phone-2"), entries.stream().map(Entry::device).collect(Collectors.toSet()));
        var first = times("phone-1");
        var second = times("phone-2");
        assertTrue(second.getMin() < first.getMax() && first.getMin() < second.getMax());
        for (Entry entry : entries)
            if (entry.body() instanceof ProbeReading probe)
                assertTrue(probe.depth().text().endsWith(entry.device().equals("phone-1") ? " in" : " mm"), probe.depth().text());
    }

    private static LongSummaryStatistics times(String device) {
        return entries.stream().filter(e -> e.device().equals(device) && !(e.body() instanceof Member)).mapToLong(e -> e.stamp().wallMs()).summaryStatistics();
    }

    @Test
    void what_was_felt_is_within_a_mark_and_a_fifth_of_what_is_true() {
        for (var noted : survey.probes()) {
            ProbeReading probe = noted.what();
            double truth = DemoHouse.truthMm(probe.spot().member(), probe.spot().face(), probe.spot().alongMm(), probe.spot().acrossMm());
            double seen = Math.min(truth, probe.reach().own());
            assertEquals(seen, probe.depthMm(), 0.2 * truth + 1.6, probe.spot().words());
            if (truth == 0) assertEquals(0, probe.depthMm(), probe.spot().words());
        }
    }

    @Test
    void rot_from_one_face_never_meets_more_rot_than_there_is_wood_from_the_other() {
        for (SideNotes side : DemoHouse.SIDES)
            for (Rot rot : side.rotList()) {
                Member member = survey.members().get(rot.member());
                double behind = side.rotList().stream().filter(other -> other.member().equals(rot.member()) && other.face() == Member.opposite(rot.face()))
                        .mapToDouble(Rot::deepestMm).max().orElse(0);
                assertTrue(rot.deepestMm() + behind <= member.throughMm(rot.face()) + 1e-9, rot.member() + " " + rot.face());
            }
    }

    @Test
    void each_damaged_member_was_probed_densely_and_on_more_than_one_face_or_row() {
        for (String member : DemoHouse.damaged()) {
            List<ProbeReading> all = probesOn(member);
            assertTrue(all.size() >= 12 && all.size() <= 40, member + " has " + all.size());
            assertTrue(all.stream().anyMatch(probe -> probe.depthMm() > 5), member);
            assertTrue(all.stream().map(probe -> probe.spot().face() + " " + probe.spot().acrossMm()).distinct().count() >= 2, member);
        }
    }

    @Test
    void sound_members_that_were_probed_show_nothing() {
        var sound = survey.members().keySet().stream().filter(member -> !DemoHouse.damaged().contains(member)).toList();
        assertTrue(sound.size() >= 25);
        for (String member : sound) assertTrue(probesOn(member).stream().allMatch(probe -> probe.depthMm() == 0), member);
    }

    @Test
    void a_probe_that_ran_out_stopped_at_its_reach_with_wood_behind_it() {
        List<ProbeReading> ranOut = survey.probes().stream().map(Survey.Noted::what).filter(ProbeReading::ranOut).toList();
        assertTrue(ranOut.size() >= 5, ranOut.size() + " ran out");
        for (ProbeReading probe : ranOut) {
            assertEquals(probe.reach().own(), probe.depthMm(), 1e-9);
            assertTrue(survey.members().get(probe.spot().member()).throughMm(probe.spot().face()) > probe.depthMm());
        }
    }

    @Test
    void the_west_skirt_looks_dreadful_and_is_sound_and_dry() {
        assertEquals(Member.Coat.NONE, survey.members().get("w-skirt").coat());
        assertTrue(seen(Sign.LOOKS_WEATHERED_ONLY, "w-skirt"));
        assertEquals(35, probesOn("w-skirt").size());
        assertTrue(probesOn("w-skirt").stream().allMatch(probe -> probe.depthMm() == 0));
        assertTrue(moistures("w-skirt").allMatch(moisture -> moisture <= 0.14));
    }

    @Test
    void the_right_porch_beam_looks_well_and_is_hollow() {
        Member beam = survey.members().get("s-beam-3");
        assertEquals(Member.Coat.SOUND, beam.coat());
        assertTrue(beam.bearsLoad());
        assertTrue(seen(Sign.HOLLOW_SOUND, "s-beam-3"));
        assertTrue(seen(Sign.FLASHING_LIFTED, ""));
        assertTrue(survey.probesOn("s-beam-3", Member.Face.FRONT).stream().allMatch(probe -> probe.depthMm() < 8));
        assertTrue(survey.probesOn("s-beam-3", Member.Face.TOP).stream().filter(ProbeReading::ranOut).count() >= 4);
    }

    @Test
    void moisture_is_high_where_water_comes_and_low_elsewhere() {
        for (String wet : List.of("s-plinth-3", "w-soffit-2", "e-skirt-1", "n-sill-2", "s-beam-3"))
            assertTrue(moistures(wet).anyMatch(moisture -> moisture >= 0.27), wet);
        for (String dry : List.of("s-beam-1", "s-post-4", "w-corner-n", "e-frieze", "n-corner-w"))
            assertTrue(moistures(dry).allMatch(moisture -> moisture <= 0.14), dry);
        assertTrue(survey.moistures().stream().map(Survey.Noted::what).allMatch(m -> m.reading().own() <= 0.35 && m.wood().isPresent()));
    }

    @Test
    void each_of_the_four_waters_leaves_signs_on_its_own_side_and_not_on_another() {
        only(Sign.GUTTER_FULL, "west");
        only(Sign.BASE_TIGHT_ON_FLOOR, "south");
        only(Sign.WATER_STANDS_ON_FLOOR, "south");
        only(Sign.SPLASH_SEEN, "east");
        only(Sign.GROUND_FALLS_TO_WALL, "east");
        only(Sign.SILL_FLAT, "north");
        only(Sign.PUTTY_FAILED, "north");
    }

    private static void only(Sign sign, String side) {
        var sides = survey.sightings().stream().map(Survey.Noted::what).filter(s -> s.sign() == sign && s.seen()).map(s -> s.side()).collect(Collectors.toSet());
        assertEquals(Set.of(side), sides, sign.words());
    }

    private static boolean seen(Sign sign, String member) {
        return survey.sightings().stream().map(Survey.Noted::what).anyMatch(s -> s.sign() == sign && s.seen() && s.member().orElse("").equals(member));
    }

    private static List<ProbeReading> probesOn(String member) {
        return survey.probes().stream().map(Survey.Noted::what).filter(probe -> probe.spot().member().equals(member)).toList();
    }

    private static DoubleStream moistures(String member) { return survey.moisturesOn(member).stream().map(MoistureReading::reading).mapToDouble(q -> q.own()); }
}
