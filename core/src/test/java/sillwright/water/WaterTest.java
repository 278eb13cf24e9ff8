package sillwright.water;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import sillwright.measure.Units;
import sillwright.walk.Member.Contact;
import sillwright.walk.Member.EndGrain;
import sillwright.walk.Member.Run;
import sillwright.walk.MemberKind;
import sillwright.walk.Side.*;
import sillwright.walk.Sign;
import sillwright.walk.Survey;
import sillwright.water.WaterFindings.*;

import static org.junit.jupiter.api.Assertions.*;

/// Scenes that a practitioner would recognise, on invented houses.
@DisplayNameGeneration(ReplaceUnderscores.class)
class WaterTest {
    /// A south side with a gutter over paving, a window, and wood 3 in above the ground; a north side with a bare eave.
    private static Scene house() {
        return new Scene().rain("4in/h", Scene.months(-7, 90, 4))
                .side("south", "180deg", List.of(Scene.eave("6in", Scene.gutter("5in", Scene.downspout("1ft", "3in", Empties.AT_FOOT)))),
                        Scene.ground(Surface.PAVING, "3in", "-1%"), Scene.window("4ft"), Scene.window("12ft"))
                .side("north", "0deg", List.of(Scene.eave("12in", Optional.empty())), Scene.ground(Surface.GRASS, "10in", "5%"))
                .member("casing-left", "south", MemberKind.CASING, Run.UPRIGHT, "4in", "60in", "43in", "30in", EndGrain.BARE, Contact.NONE)
                .member("window-sill", "south", MemberKind.WINDOW_SILL, Run.LEVEL, "2in", "36in", "46in", "28in", EndGrain.BARE, Contact.NONE)
                .member("lowest-clapboard", "south", MemberKind.CLAPBOARD, Run.LEVEL, "5in", "30ft", "0in", "3in", EndGrain.COATED, Contact.NONE)
                .member("high-clapboard", "south", MemberKind.CLAPBOARD, Run.LEVEL, "5in", "30ft", "0in", "7ft", EndGrain.COATED, Contact.NONE)
                .member("fascia", "south", MemberKind.FASCIA, Run.LEVEL, "6in", "30ft", "0in", "9ft6in", EndGrain.COATED, Contact.NONE);
    }

    private static RankedSource of(WaterFindings found, Source source, String side) {
        return found.sources().stream().filter(one -> one.source() == source && one.side().equals(side)).findFirst().orElseThrow(() -> new AssertionError("no " + source + " on " + side));
    }

    private static double odds(Scene scene, Source source, String side) {
        return Water.find(scene.survey()).sources().stream().filter(one -> one.source() == source && one.side().equals(side)).mapToDouble(RankedSource::probability).max().orElse(0);
    }

    @Test
    void a_full_gutter_with_a_stained_fascia_is_clogged_and_to_be_cleared() {
        WaterFindings found = Water.find(house().seen("south", Sign.GUTTER_FULL, Sign.STAIN_BEHIND_GUTTER).survey());
        RankedSource clogged = of(found, Source.GUTTER_CLOGGED, "south");
        assertEquals("a clogged gutter, south side, main eave", clogged.words());
        assertTrue(clogged.probability() > 0.9 && clogged.prior() == 0.25);
        assertTrue(clogged.evidence().getFirst().words().contains("gutter full of leaves") && clogged.evidence().getFirst().words().endsWith(": speaks for it"));
        assertTrue(clogged.remedies().getFirst().words().startsWith("clear the gutter of the main eave"));
        assertTrue(clogged.remedies().getFirst().words().contains("work at height"));
        assertTrue(clogged.members().containsAll(List.of("fascia", "lowest-clapboard")));
        assertTrue(found.wetting("fascia").contains(clogged));
    }

    @Test
    void looking_for_leaves_and_finding_none_speaks_against_a_clogged_gutter() {
        RankedSource clogged = of(Water.find(house().seen("south", Sign.STAIN_BEHIND_GUTTER).notSeen("south", Sign.GUTTER_FULL).survey()), Source.GUTTER_CLOGGED, "south");
        assertTrue(clogged.probability() < odds(house().seen("south", Sign.STAIN_BEHIND_GUTTER), Source.GUTTER_CLOGGED, "south"));
        assertTrue(clogged.evidence().stream().anyMatch(one -> one.weight() < 0 && one.words().startsWith("looked for and not there") && one.words().endsWith("speaks against it")));
    }

    @Test
    void one_source_found_explains_a_stain_away_from_the_others() {
        double stain = odds(house().seen("south", Sign.STAIN_BEHIND_GUTTER), Source.ROOF_EDGE_DRIPS_BEHIND, "south");
        double full = odds(house().seen("south", Sign.STAIN_BEHIND_GUTTER, Sign.GUTTER_FULL), Source.ROOF_EDGE_DRIPS_BEHIND, "south");
        assertTrue(full < stain);
    }

    @Test
    void weight_of_a_sighting_is_the_change_of_the_odds_when_it_is_left_out() {
        RankedSource with = of(Water.find(house().seen("south", Sign.DIRT_BAND, Sign.GUTTER_FULL).survey()), Source.SPLASH_FROM_GROUND, "south");
        RankedSource without = of(Water.find(house().seen("south", Sign.GUTTER_FULL).survey()), Source.SPLASH_FROM_GROUND, "south");
        double change = Math.log(with.probability() / (1 - with.probability()) / (without.probability() / (1 - without.probability()))) / Math.log(2);
        double told = with.evidence().stream().filter(one -> one.words().contains("dirt")).mapToDouble(Evidence::weight).sum();
        assertEquals(change, told, 1e-9);
    }

    @Test
    void weight_of_a_measure_is_the_change_of_the_odds_when_it_is_left_out() {
        Scene low = new Scene().side("east", "90deg", List.of(), Scene.ground(Surface.SOIL, "2in", "")).seen("east", Sign.DIRT_BAND);
        Scene unknown = new Scene().side("east", "90deg", List.of(), Scene.ground(Surface.SOIL, "", "")).seen("east", Sign.DIRT_BAND);
        RankedSource with = of(Water.find(low.survey()), Source.SPLASH_FROM_GROUND, "east");
        double prior = of(Water.find(unknown.survey()), Source.SPLASH_FROM_GROUND, "east").prior();
        double bits = with.evidence().stream().filter(one -> one.words().contains("above the ground")).mapToDouble(Evidence::weight).sum();
        assertEquals(Math.log(with.prior() / (1 - with.prior()) / (prior / (1 - prior))) / Math.log(2), bits, 1e-9);
    }

    @Test
    void wood_low_over_paving_that_falls_to_the_wall_is_splashed_and_the_ground_is_lowered_by_what_is_wanting() {
        RankedSource splash = of(Water.find(house().seen("south", Sign.DIRT_BAND, Sign.PEELING_AT_BASE).survey()), Source.SPLASH_FROM_GROUND, "south");
        assertTrue(splash.probability() > 0.8);
        assertTrue(splash.remedies().getFirst().words().contains("by 5 in so that 8 in stay open"), splash.remedies().getFirst().words());
        assertTrue(splash.members().contains("lowest-clapboard") && !splash.members().contains("high-clapboard") && !splash.members().contains("fascia"));
    }

    @Test
    void an_eave_without_a_gutter_drips_and_has_no_gutter_that_could_fail() {
        WaterFindings found = Water.find(house().seen("north", Sign.ALGAE_OR_MOSS, Sign.DIRT_BAND).survey());
        assertTrue(of(found, Source.ROOF_DRIP, "north").probability() > 0.7);
        assertTrue(of(found, Source.ROOF_DRIP, "north").remedies().getFirst().words().contains("half-round gutter of at least 5 in"));
        assertTrue(found.sources().stream().noneMatch(one -> one.side().equals("north") && one.source().name().startsWith("GUTTER")));
        assertTrue(found.sources().stream().noneMatch(one -> one.side().equals("south") && one.source() == Source.ROOF_DRIP));
        GutterCheck bare = found.gutters().get(1);
        assertEquals(0, bare.capacityLs());
        assertTrue(bare.overflows() && bare.words().contains("no gutter"));
    }

    /// The check's inflow is the worked one of the figure: 450 ft², factor 1.1, 4 in/h give 20.571 gpm (computed).
    @Test
    void a_gutter_too_small_by_the_figures_is_a_source_before_anything_is_seen() {
        Scene small = new Scene().rain("4in/h", List.of())
                .side("west", "270deg", List.of(Scene.eave("12in", Scene.gutter("4in", Scene.downspout("0ft", "3in", Empties.DRAIN)))), Scene.ground(Surface.GRASS, "12in", "5%"));
        WaterFindings found = Water.find(small.survey());
        GutterCheck check = found.gutters().getFirst();
        assertEquals(20.571, check.inflowLs() / 3.785411784 * 60, 0.0005);
        assertTrue(check.overflows() && check.capacityLs() < check.inflowLs() && check.downspoutLs() > check.inflowLs());
        RankedSource tooSmall = of(found, Source.GUTTER_TOO_SMALL, "west");
        assertTrue(tooSmall.probability() > WaterFindings.LIKELY);
        assertTrue(tooSmall.remedies().stream().anyMatch(one -> one.words().contains("half-round gutter of at least 5 in")), tooSmall.remedies().toString());
        assertTrue(tooSmall.remedies().stream().noneMatch(one -> one.words().contains("{")));
    }

    @Test
    void a_second_downspout_doubles_what_a_gutter_carries() {
        Scene one = new Scene().rain("4in/h", List.of()).side("west", "270deg", List.of(Scene.eave("12in", Scene.gutter("5in", Scene.downspout("0ft", "3in", Empties.DRAIN)))), Scene.ground(Surface.GRASS, "", ""));
        Scene two = new Scene().rain("4in/h", List.of()).side("west", "270deg", List.of(Scene.eave("12in", Scene.gutter("5in", Scene.downspout("0ft", "3in", Empties.DRAIN), Scene.downspout("30ft", "3in", Empties.DRAIN)))), Scene.ground(Surface.GRASS, "", ""));
        GutterCheck single = Water.find(one.survey()).gutters().getFirst(), pair = Water.find(two.survey()).gutters().getFirst();
        assertEquals(2, pair.capacityLs() / single.capacityLs(), 1e-9);
        assertEquals(2, pair.downspoutLs() / single.downspoutLs(), 1e-9);
        assertEquals(single.cloggedMinutes(), pair.cloggedMinutes(), 1e-9);
    }

    @Test
    void a_flat_sill_wets_its_own_window_and_not_the_next() {
        WaterFindings found = Water.find(house().seenOn("south", "window-sill", Sign.SILL_FLAT, Sign.SILL_CHECKS).survey());
        RankedSource sill = of(found, Source.SILL_HOLDS_WATER, "south");
        assertEquals("window 1 from the left", sill.place());
        assertTrue(sill.probability() > 0.8);
        assertTrue(sill.members().containsAll(List.of("window-sill", "casing-left")) && !sill.members().contains("fascia"));
        assertTrue(sill.remedies().getFirst().words().contains("the sill of window 1 from the left to a fall of 2 in 12"));
    }

    @Test
    void bare_end_grain_is_tied_to_the_member_that_drinks() {
        RankedSource drinks = of(Water.find(house().seenOn("south", "casing-left", Sign.END_GRAIN_BARE, Sign.END_GRAIN_DARK).survey()), Source.END_GRAIN_DRINKS, "south");
        assertEquals("casing left", drinks.place());
        assertEquals(List.of("casing-left"), drinks.members());
        assertTrue(drinks.evidence().stream().noneMatch(one -> one.words().contains("recorded bare")), "the same thing counted twice");
    }

    @Test
    void a_sighting_high_on_the_wall_says_nothing_of_splash() {
        double before = odds(house(), Source.SPLASH_FROM_GROUND, "south");
        double after = odds(house().seenAt("south", "10ft", "8ft", Sign.PEELING_TO_BARE_WOOD), Source.SPLASH_FROM_GROUND, "south");
        assertEquals(before, after, 1e-12);
        assertTrue(odds(house().seenAt("south", "10ft", "6in", Sign.PEELING_TO_BARE_WOOD), Source.SPLASH_FROM_GROUND, "south") > before);
    }

    @Test
    void sources_are_numbered_in_the_order_of_their_odds_and_the_hardly_likely_left_out() {
        List<RankedSource> sources = Water.find(house().seen("south", Sign.DIRT_BAND, Sign.STAIN_ON_SOFFIT).seen("north", Sign.MILDEW_LOW).survey()).sources();
        for (int i = 0; i < sources.size(); i++) {
            assertEquals("W" + (i + 1), sources.get(i).id());
            assertTrue(sources.get(i).probability() >= Water.NEGLIGIBLE && !sources.get(i).evidence().isEmpty() && !sources.get(i).remedies().isEmpty());
            if (i > 0) assertTrue(sources.get(i).probability() <= sources.get(i - 1).probability());
        }
    }

    @Test
    void next_look_is_one_not_taken_yet_and_not_measured_and_its_worth_is_told() {
        Scene scene = house().seen("south", Sign.STAIN_BEHIND_GUTTER);
        NextLook look = Water.find(scene.survey()).nextLook().orElseThrow();
        assertTrue(look.bits() > 0 && look.minutes() >= 1 && !look.words().isEmpty());
        for (int taken = 0; taken < 8; taken++) {
            NextLook now = Water.find(scene.survey()).nextLook().orElseThrow();
            assertFalse(now.words().contains("where the downspout lets its water go"), "that was measured");
            Sign sign = Arrays.stream(Sign.values()).filter(one -> Judgement.sign(one).filter(row -> !row.look().isEmpty() && now.words().endsWith(row.look())).isPresent()).findFirst().orElseThrow();
            scene.notSeen(now.side(), sign);
            assertNotEquals(Optional.of(now.words()), Water.find(scene.survey()).nextLook().map(NextLook::words));
        }
    }

    @Test
    void a_later_walk_that_finds_it_gone_stands_instead_of_the_earlier() {
        double gone = odds(house().seen("south", Sign.GUTTER_FULL).notSeen("south", Sign.GUTTER_FULL), Source.GUTTER_CLOGGED, "south");
        assertEquals(odds(house().notSeen("south", Sign.GUTTER_FULL), Source.GUTTER_CLOGGED, "south"), gone, 1e-12);
    }

    @Test
    void an_empty_book_gives_no_finding_and_says_what_is_wanting() {
        WaterFindings found = Water.find(new Scene().survey());
        assertTrue(found.sources().isEmpty() && found.gutters().isEmpty() && found.splashes().isEmpty() && found.nextLook().isEmpty());
        assertTrue(found.gaps().stream().anyMatch(gap -> gap.contains("No side")));
    }

    @Test
    void a_side_without_roof_ground_or_climate_still_tells_its_sources_and_its_gaps() {
        WaterFindings found = Water.find(new Scene().side("east", "90deg", List.of(), Scene.ground(Surface.SOIL, "", "")).seen("east", Sign.SOIL_TOUCHES_WOOD, Sign.GUTTER_FULL).survey());
        assertTrue(of(found, Source.SOIL_AGAINST_WOOD, "east").probability() > 0.8);
        assertTrue(of(found, Source.GUTTER_CLOGGED, "east").probability() > 0.8);
        for (String wanting : List.of("design rain", "monthly weather", "no roof edge", "lowest wood", "fall of the ground", "a gutter was sighted"))
            assertTrue(found.gaps().stream().anyMatch(gap -> gap.contains(wanting)), wanting + " in " + found.gaps());
    }

    @Test
    void mild_winters_and_a_sheltered_place_make_ice_and_driven_rain_unlikely() {
        Scene mild = new Scene().rain("4in/h", Scene.months(8, 40, 2)).side("south", "180deg", List.of(Scene.eave("24in", Optional.empty())), Scene.ground(Surface.SOIL, "", "")).seen("south", Sign.STAIN_ON_SOFFIT, Sign.RUST_STREAKS);
        Scene harsh = new Scene().rain("4in/h", Scene.months(-8, 150, 6)).side("south", "180deg", List.of(Scene.eave("6in", Optional.empty())), Scene.ground(Surface.SOIL, "", "")).seen("south", Sign.STAIN_ON_SOFFIT, Sign.RUST_STREAKS);
        assertTrue(odds(mild, Source.ICE_DAM, "south") < odds(harsh, Source.ICE_DAM, "south") / 2);
        assertTrue(odds(mild, Source.WIND_DRIVEN_RAIN, "south") < odds(harsh, Source.WIND_DRIVEN_RAIN, "south") / 2);
    }

    @Test
    void every_source_can_be_found_by_its_own_sign_and_every_remedy_is_filled_in() {
        Map<Source, Sign> tells = new EnumMap<>(Source.class);
        for (Source source : Source.values())
            tells.put(source, Arrays.stream(Sign.values()).filter(sign -> Judgement.sign(sign).isPresent())
                    .max(Comparator.comparingDouble(sign -> Judgement.links(sign).stream().filter(link -> link.source() == source).mapToDouble(Judgement.Link::strength).sum() / Judgement.sign(sign).get().leak())).orElseThrow());
        for (Source source : EnumSet.complementOf(EnumSet.of(Source.GUTTER_TOO_SMALL))) {     // this house's gutter is large enough
            String side = source == Source.ROOF_DRIP ? "north" : "south";
            WaterFindings found = Water.find(house().seen(side, tells.get(source)).survey());
            RankedSource one = of(found, source, side);
            assertTrue(one.probability() > one.prior(), source + " by " + tells.get(source));
            for (Remedy remedy : one.remedies()) assertFalse(remedy.words().contains("{") || remedy.hours() < 0.5, remedy.words());
            for (Evidence evidence : one.evidence()) assertFalse(evidence.words().contains("{"), evidence.words());
        }
    }

    @Test
    void thirty_six_signs_seen_on_one_side_are_weighed_in_time_and_whole() {
        WaterFindings found = assertTimeout(Duration.ofSeconds(60), () -> Water.find(thorough(24, 12)));
        assertTrue(found.sources().stream().allMatch(one -> one.probability() >= 0 && one.probability() <= 1));
        assertTrue(found.gaps().stream().noneMatch(gap -> gap.contains("so much was seen here")), found.gaps().toString());
    }

    @Test
    void where_more_is_seen_than_can_be_weighed_in_time_the_weak_links_left_out_are_told() {
        WaterFindings found = assertTimeout(Duration.ofSeconds(120), () -> Water.find(thorough(60, 60)));
        assertTrue(found.sources().stream().allMatch(one -> one.probability() >= 0 && one.probability() <= 1));
        assertTrue(found.gaps().stream().anyMatch(gap -> gap.startsWith("South side: so much was seen here")), found.gaps().toString());
    }

    /// So many signs drawn for the south side as a whole, and so many at places on it; half as many looked for in vain.
    private static Survey thorough(int onSide, int atPlaces) {
        Random random = new Random(1);
        Scene scene = house();
        List<Sign> signs = new ArrayList<>(List.of(Sign.values()));
        Collections.shuffle(signs, random);
        for (int i = 0; i < onSide; i++) scene.seen("south", signs.get(i));
        for (int i = onSide; i < Math.min(signs.size(), onSide + 26); i++) scene.notSeen("south", signs.get(i));
        for (int i = 0; i < atPlaces; i++) scene.seenAt("south", 4 + random.nextInt(22) + "ft", "30in", signs.get(random.nextInt(signs.size())));
        return scene.survey();
    }

    @Test
    void the_same_survey_is_said_in_either_units_with_the_same_odds() {
        Survey survey = house().seen("south", Sign.DIRT_BAND).survey();
        WaterFindings us = Water.find(survey), si = Water.find(survey, Units.SI);
        assertEquals(us.sources().stream().map(RankedSource::probability).toList(), si.sources().stream().map(RankedSource::probability).toList());
        assertTrue(us.splashes().getFirst().words().contains("3 in above the paving") && si.splashes().getFirst().words().contains("76 mm above the paving"));
    }

    @Test
    void what_a_metric_reader_is_told_of_water_names_neither_inch_nor_foot() {
        Survey survey = house().seenAt("south", "15ft", "30in", Sign.DIRT_BAND, Sign.PEELING_AT_BASE).seen("south", Sign.GUTTER_FULL, Sign.STAIN_BEHIND_GUTTER).survey();
        WaterFindings si = Water.find(survey, List.of(), Units.SI);
        List<String> said = new ArrayList<>();
        for (RankedSource source : si.sources()) {
            source.evidence().forEach(one -> said.add(one.words()));
            source.remedies().forEach(one -> said.add(one.words()));
        }
        si.gutters().forEach(one -> said.add(one.words()));
        si.rounds().forEach(round -> round.steps().forEach(step -> said.add(step.words())));
        assertTrue(said.stream().anyMatch(words -> words.contains("4572 mm from the left")), said.toString());
        Pattern customary = Pattern.compile("\\d (in|ft|gpm)\\b|\\din/h|\\d['\"]");
        assertEquals(List.of(), said.stream().filter(words -> customary.matcher(words.replaceAll(" \\(\\d+ in\\)", "")).find()).toList());
    }
}
