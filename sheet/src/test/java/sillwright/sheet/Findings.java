package sillwright.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import sillwright.measure.Basis;
import sillwright.walk.Member;
import sillwright.water.Source;
import sillwright.water.WaterFindings;
import sillwright.water.WaterFindings.Evidence;
import sillwright.water.WaterFindings.RankedSource;
import sillwright.water.WaterFindings.Remedy;
import sillwright.watch.WatchFindings;
import sillwright.work.Repair;
import sillwright.work.WorkFindings;
import sillwright.work.WorkFindings.OrderLine;
import sillwright.work.WorkFindings.Task;
import sillwright.work.WorkFindings.TaskKind;

/// What the other stages might have found on the invented porch.
final class Findings {
    private Findings() {}

    static WaterFindings water() {
        Basis basis = Basis.practice("clear gutters spring and autumn");
        return new WaterFindings(
                List.of(new WaterFindings.GutterCheck("south", "porch", 0.92, 0.71, 1.9, true, 3,
                        "The porch gutter takes 0.71 L/s of the 0.92 L/s that its roof sends it, and overflows.",
                        List.of(Basis.memory("International Plumbing Code", "table 1106.6"))),
                        new WaterFindings.GutterCheck("south", "main", 1.6, 2.4, 3.0, false, 9,
                                "The main gutter carries its roof with a third to spare.", List.of())),
                List.of(new WaterFindings.SplashCheck("west", 25, 300, 0.93,
                        "The lowest wood stands 1 in over mulch: nearly all of the splash reaches it.", List.of())),
                List.of(source("W1", Source.GUTTER_CLOGGED, "south", "porch edge", 1100, 2844, 0.93, List.of("s-post-1", "s-post-3")),
                        source("W2", Source.END_GRAIN_DRINKS, "south", "s-post-3", 4190, 640, 0.84, List.of("s-post-3", "s-post-5")),
                        source("W3", Source.SOIL_AGAINST_WOOD, "west", "", 1800, 60, 0.81, List.of("w-skirt", "w-corner-l")),
                        source("W4", Source.SILL_HOLDS_WATER, "south", "s-wsill-1", 2000, 1350, 0.66, List.of("s-wsill-1")),
                        source("W5", Source.ICE_DAM, "south", "main edge", 4000, 5180, 0.11, List.of())),
                Optional.of(new WaterFindings.NextLook("south", "Pour a bucket into the porch gutter at its high end and watch where it comes over.",
                        10, 0.61)),
                List.of("west: the fall of the ground was not measured; lay a level 4 ft out from the wall"));
    }

    private static RankedSource source(String id, Source what, String side, String place, double left, double above, double probability,
            List<String> members) {
        return new RankedSource(id, what, side, place, left, above, probability, 0.2,
                List.of(new Evidence("a gutter full of leaves was seen", 2.1), new Evidence("paint peels on the wall below the eave", 0.8),
                        new Evidence("no icicles were seen in winter", -0.4)),
                List.of(new Remedy("Clear the gutter and its outlet, and screen the outlet.", 1.5, Basis.practice("cleared twice a year")),
                        new Remedy("Hang a 6 in gutter at 1/16 in to the foot.", 6, Basis.memory("a gutter table", "6 in half round"))), members);
    }

    static WorkFindings work(List<Repair> repairs, Map<String, Member> members) {
        List<OrderLine> order = List.of(new OrderLine("pine-eastern-white, 5-1/2 in × 5-1/2 in", OrderLine.Measure.LENGTH, 1600, 2438.4, 1,
                List.of("R1", "R2")),
                new OrderLine("pine-eastern-white, 9-1/4 in × 7/8 in", OrderLine.Measure.LENGTH, 7696, 8534.4, 2, List.of("R6")),
                new OrderLine("structural gap-filling adhesive, two parts", OrderLine.Measure.VOLUME, 440, 473, 1, List.of("R1", "R2", "R4")),
                new OrderLine("stainless screw, sized on the repair's sheet", OrderLine.Measure.COUNT, 12, 25, 1, List.of("R1", "R2")),
                new OrderLine("sheet lead, copper or dense plastic pad for a capillary break", OrderLine.Measure.AREA, 34_000, 92_903, 1,
                        List.of("R3")));
        List<WorkFindings.CutPlan> cuts = List.of(
                new WorkFindings.CutPlan("pine-eastern-white", 139.7, 139.7,
                        List.of(new WorkFindings.Bar(2438.4, List.of(repairs.get(0).pieces().getFirst(), repairs.get(1).pieces().getFirst()), 831.9)),
                        3.2, true, 0),
                new WorkFindings.CutPlan("pine-eastern-white", 234.95, 22.2,
                        List.of(new WorkFindings.Bar(4267.2, List.of(repairs.get(5).pieces().get(0)), 304.8), new WorkFindings.Bar(4267.2,
                        List.of(repairs.get(5).pieces().get(1)), 533.4)), 3.2, false, 0.143));
        LocalDate day = Porch.START;
        List<Task> tasks = new ArrayList<>();
        tasks.add(new Task("T1", TaskKind.STOP_WATER, "Clear and screen the porch gutter", "Clear the gutter and its outlet, and screen the outlet.",
                day, day, List.of(), List.of("W1")));
        tasks.add(new Task("T2", TaskKind.STOP_WATER, "Draw the mulch back from the west wall", "Bare ground 6 in below the wood, falling away.",
                day.plusDays(1), day.plusDays(1), List.of(), List.of("W3")));
        tasks.add(new Task("T3", TaskKind.SHORE, "Shore the porch beam at posts 3 and 5", "Two shores each side.", day.plusDays(2), day.plusDays(2),
                List.of(), List.of("R1", "R2")));
        tasks.add(new Task("T4", TaskKind.DRY, "Let the posts dry", "Until the meter shows 15 % or less.", day.plusDays(3), day.plusDays(24),
                List.of("T1"), List.of("R1", "R2")));
        tasks.add(new Task("T5", TaskKind.JOIN, "Splice post 3 and post 5", "As drawn.", day.plusDays(25), day.plusDays(27), List.of("T3", "T4"),
                List.of("R1", "R2")));
        tasks.add(new Task("T6", TaskKind.PRIME, "Prime the new wood", "All faces and the end grain.", day.plusDays(28), day.plusDays(28),
                List.of("T5"), List.of("R1", "R2")));
        tasks.add(new Task("T7", TaskKind.COAT, "Two coats", "At 50 to 90 °F, dry overnight.", day.plusDays(30), day.plusDays(32), List.of("T6"),
                List.of("R1", "R2")));
        List<WorkFindings.SafeSide> safety = List.of(new WorkFindings.SafeSide("south", 410_000, true, 3048, false,
                List.of("Post signs; keep others out of the work area (40 CFR 745.85(a)(1))."),
                List.of("Work above 6 ft from a level scaffold, not a ladder."), List.of(Basis.read("40 CFR 745", "745.85"))));
        return new WorkFindings(repairs, order, cuts, tasks, safety,
                List.of("the load on the porch beam was not given; the posts are checked without it"));
    }

    static WatchFindings watch() {
        WatchFindings.Check meter = new WatchFindings.Check("south", Optional.of("s-post-3"), "Meter the foot of porch post 3, 6 in up.", "27 %",
                "below 16 %", "R1");
        WatchFindings.Check gutter = new WatchFindings.Check("south", Optional.empty(), "Look into the porch gutter.", "full of leaves",
                "clear to the outlet", "W1");
        WatchFindings.Check common = new WatchFindings.Check("", Optional.empty(), "Walk round in rain once and look for drips.", "",
                "no drip on wood", "");
        return new WatchFindings(List.of(
                new WatchFindings.Round("spring", "Spring round", LocalDate.of(2027, 4, 15), "Winter's ice and thaw have shown what they do.",
                        List.of(gutter, meter, common), List.of(Basis.practice("two rounds a year"))),
                new WatchFindings.Round("autumn", "Autumn round", LocalDate.of(2026, 10, 20), "After leaf fall, before frost.",
                        List.of(gutter, meter), List.of())));
    }
}
