package sillwright.water;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.walk.Choice;
import sillwright.walk.Member;
import sillwright.walk.Member.Contact;
import sillwright.walk.Member.EndGrain;
import sillwright.walk.Member.Run;
import sillwright.walk.MemberKind;
import sillwright.walk.MoistureReading;
import sillwright.walk.Side.Surface;
import sillwright.walk.Sign;
import sillwright.walk.Spot;
import sillwright.walk.Survey;
import sillwright.walk.Survey.Noted;
import sillwright.water.WaterFindings.AtIt;
import sillwright.water.WaterFindings.InTheWood;

import static org.junit.jupiter.api.Assertions.*;

@DisplayNameGeneration(ReplaceUnderscores.class)
class LivesTest {
    private static Scene house() {
        return new Scene().side("south", "180deg", List.of(Scene.eave("12in", Scene.gutter("5in"))), Scene.ground(Surface.SOIL, "4in", ""))
                .member("post", "south", MemberKind.POST, Run.UPRIGHT, "5in", "7ft", "10ft", "1ft", EndGrain.BARE, Contact.PORCH_FLOOR);
    }

    /// The trade's first answer to each set of signs: Wood Handbook, FPL-GTR-282, ch. 14 (from memory), and common practice.
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"cubes-across-grain, BROWN_ROT", "bleached-strings, WHITE_ROT", "shallow-soft-skin, SOFT_ROT", "stain-only, STAIN_OR_MOULD", "crust-and-cords;cubes-across-grain, WATER_CARRYING_ROT",
        "crust-and-cords, WATER_CARRYING_ROT", "mud-tubes, SUBTERRANEAN_TERMITES", "mud-tubes;hollow-sound;insects-seen, SUBTERRANEAN_TERMITES", "pellets, DRYWOOD_TERMITES",
        "coarse-frass, CARPENTER_ANTS", "coarse-frass;insects-seen;hollow-sound, CARPENTER_ANTS", "round-holes, CARPENTER_BEES", "oval-holes;fine-powder, OLD_HOUSE_BORER", "oval-holes, OLD_HOUSE_BORER",
        "small-round-holes, FURNITURE_BEETLES", "small-round-holes;fine-powder, FURNITURE_BEETLES", "pecked-holes, WOODPECKERS", "bleached-strings;fungus, WHITE_ROT", "cubes-across-grain;fungus, BROWN_ROT"})
    void the_signs_name_what_lives_there(String signs, Life expected) {
        Scene scene = house();
        for (String sign : signs.split(";")) scene.seenOn("south", "post", Choice.of(Sign.class, sign));
        List<InTheWood> found = Water.find(scene.survey()).lives();
        assertFalse(found.isEmpty());
        assertEquals(expected, found.getFirst().life(), found.toString());
        assertTrue(found.getFirst().probability() > 0.5 && !found.getFirst().active().isEmpty() && !found.getFirst().needs().isEmpty() && !found.getFirst().water().isEmpty());
    }

    @Test
    void in_hardwood_small_holes_with_powder_may_as_well_be_powderpost_beetles_and_oval_holes_are_no_old_house_borer() {
        Scene scene = house().member("oak-sill", "south", MemberKind.SILL, Run.LEVEL, "8in", "12ft", "0ft", "4in", EndGrain.COVERED, Contact.MASONRY);
        scene.seenOn("south", "oak-sill", Sign.SMALL_ROUND_HOLES, Sign.FINE_POWDER);
        Survey survey = scene.survey();
        Map<String, Member> members = new LinkedHashMap<>(survey.members());
        Member m = members.get("oak-sill");
        members.put("oak-sill", new Member(m.id(), m.side(), m.kind(), m.title(), m.role(), "oak-white", m.run(), m.width(), m.depth(), m.length(), m.left(), m.above(), m.slant(), m.startEnd(), m.farEnd(), m.coat(), m.contact()));
        Survey oak = new Survey(survey.building(), survey.sides(), members, survey.probes(), survey.moistures(), survey.sightings(), survey.photos(), survey.works(), survey.faults(), survey.entries());
        Set<Life> in = Water.find(oak).lives().stream().map(InTheWood::life).collect(Collectors.toSet());
        assertTrue(in.contains(Life.POWDERPOST_BEETLES), in.toString());
        assertFalse(Water.find(survey).lives().stream().map(InTheWood::life).toList().contains(Life.POWDERPOST_BEETLES));
    }

    @ParameterizedTest(name = "{0} %: {1}")
    @CsvSource({"32, ACTIVE", "24, CAN_GO_ON", "14, AT_REST"})
    void the_meter_tells_whether_rot_is_at_it(double percent, AtIt state) {
        Scene scene = house().seenOn("south", "post", Sign.CUBES_ACROSS_GRAIN);
        Survey survey = scene.survey();
        MoistureReading reading = new MoistureReading(new Spot("post", Member.Face.FRONT, Scene.mm("4in"), Scene.mm("2in")), Quantity.read(percent + "%", Kind.PERCENT), Optional.empty(), Optional.empty());
        Survey metered = new Survey(survey.building(), survey.sides(), survey.members(), survey.probes(), List.of(new Noted<>("m", 0, reading)), survey.sightings(), survey.photos(), survey.works(), survey.faults(), survey.entries());
        assertEquals(state, Water.find(metered).lives().getFirst().state());
        assertEquals(AtIt.NOT_KNOWN, Water.find(survey).lives().getFirst().state());
        assertEquals(Water.find(metered), Water.lived(metered, Water.find(metered.unread())), "found without readings, and told by them after");
    }

    @Test
    void termites_always_ask_for_a_licensed_specialist_and_point_back_to_the_soil_that_feeds_them() {
        WaterFindings found = Water.find(house().seenOn("south", "post", Sign.MUD_TUBES).seen("south", Sign.SOIL_TOUCHES_WOOD, Sign.DIRT_BAND).survey());
        InTheWood termites = found.lives().getFirst();
        assertTrue(termites.call().startsWith("A licensed pest specialist") && termites.water().contains("soil"), termites.toString());
        assertTrue(termites.active().contains("break a tube"));
    }

    @Test
    void wood_that_was_looked_at_and_shows_nothing_names_nothing() {
        assertTrue(Water.find(house().notSeen("south", Sign.CUBES_ACROSS_GRAIN, Sign.MUD_TUBES).survey()).lives().isEmpty());
        assertTrue(Water.find(house().seen("south", Sign.MILDEW_LOW).survey()).lives().isEmpty());
    }

    @Test
    void every_life_has_a_row_and_a_sign_of_its_own() {
        for (Life life : Life.values()) {
            assertTrue(LifeTable.row(life).prior() > 0 && !LifeTable.row(life).needs().isEmpty() && !LifeTable.row(life).water().isEmpty(), life.name());
            assertTrue(Arrays.stream(Sign.values()).anyMatch(sign -> LifeTable.of(sign).getOrDefault(life, 0.0) >= 0.6), life.name());
        }
    }
}
