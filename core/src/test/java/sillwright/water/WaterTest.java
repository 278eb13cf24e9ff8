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

@DisplayNameGeneration(ReplaceUnderscores.class)
class WaterTest {
    @Test
    void show() {
        Scene scene = new Scene().rain("4in/h", Scene.months(-7, 90, 4))
                .side("south", "180deg", List.of(Scene.eave("6in", Scene.gutter("5in", Scene.downspout("1ft", "3in", Empties.AT_FOOT)))), Scene.ground(Surface.PAVING, "3in", "-1%"), Scene.window("4ft"), Scene.window("12ft"))
                .side("north", "0deg", List.of(Scene.eave("12in", Optional.empty())), Scene.ground(Surface.GRASS, "10in", "5%"))
                .member("casing-left", "south", MemberKind.CASING, Run.UPRIGHT, "4in", "60in", "43in", "30in", EndGrain.BARE, Contact.NONE)
                .member("window-sill", "south", MemberKind.WINDOW_SILL, Run.LEVEL, "2in", "36in", "46in", "28in", EndGrain.BARE, Contact.NONE)
                .member("lowest-clapboard", "south", MemberKind.CLAPBOARD, Run.LEVEL, "5in", "30ft", "0in", "3in", EndGrain.COATED, Contact.NONE)
                .member("fascia", "south", MemberKind.FASCIA, Run.LEVEL, "6in", "30ft", "0in", "9ft6in", EndGrain.COATED, Contact.NONE)
                .seen("south", Sign.DIRT_BAND, Sign.STAIN_BEHIND_GUTTER, Sign.GUTTER_FULL, Sign.PEELING_AT_BASE).notSeen("south", Sign.SPRINKLER_WETS_WALL, Sign.STREAK_BELOW_GUTTER_JOINT)
                .seenOn("south", "window-sill", Sign.SILL_FLAT).seenOn("south", "casing-left", Sign.END_GRAIN_DARK, Sign.WET_AFTER_RAIN)
                .seen("north", Sign.ALGAE_OR_MOSS);
        long t = System.nanoTime();
        WaterFindings found = Water.find(scene.survey());
        System.out.println((System.nanoTime() - t) / 1e6 + " ms");
        found.gutters().forEach(System.out::println);
        found.splashes().forEach(System.out::println);
        for (RankedSource s : found.sources()) {
            System.out.println(s.id() + " " + s.words() + " p=" + s.probability() + " prior " + s.prior() + " at " + s.leftMm() + "," + s.aboveMm() + " " + s.members());
            s.evidence().forEach(e -> System.out.println("    " + e));
            if (s.probability() > 0.5) s.remedies().forEach(e -> System.out.println("    > " + e));
        }
        System.out.println(found.nextLook());
        found.gaps().forEach(System.out::println);
    }

    @Test
    void heavy() {
        for (int seed = 1; seed <= 6; seed++) {
            Random random = new Random(seed);
            Scene scene = new Scene().rain("4in/h", Scene.months(-7, 90, 4));
            for (String side : List.of("south", "west", "north", "east")) {
                scene.side(side, "180deg", List.of(Scene.eave("6in", Scene.gutter("5in", Scene.downspout("1ft", "3in", Empties.AT_FOOT)))), Scene.ground(Surface.PAVING, "3in", "-1%"), Scene.window("4ft"), Scene.window("12ft"), Scene.window("18ft"), Scene.window("24ft"));
                List<Sign> signs = new ArrayList<>(List.of(Sign.values()));
                Collections.shuffle(signs, random);
                for (int i = 0; i < 16; i++) scene.seen(side, signs.get(i));
                for (int i = 16; i < 36; i++) scene.notSeen(side, signs.get(i));
                for (int i = 0; i < 16; i++) scene.seenAt(side, 4 + random.nextInt(22) + "ft", "30in", signs.get(random.nextInt(74)));
            }
            long t = System.nanoTime();
            WaterFindings found = Water.find(scene.survey());
            System.out.println((System.nanoTime() - t) / 1e6 + " ms, " + found.sources().size() + " " + found.nextLook());
        }
    }
}
