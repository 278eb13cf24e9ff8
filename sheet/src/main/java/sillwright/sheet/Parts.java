package sillwright.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

import sillwright.Assessment;

/// Which parts a print has, in the order they are read, each with its name for the one who waits for it.
final class Parts {
    private Parts() {}

    static Map<String, Supplier<List<Markup>>> of(Assessment assessment, Print print) {
        Map<String, Supplier<List<Markup>>> parts = new LinkedHashMap<>();
        switch (print.reader()) {
            case EVERYBODY -> {
                begin(parts, assessment, print);
                parts.put("wood", () -> List.of(WoodSheet.page(assessment, print.paper())));
                parts.put("repairs", () -> List.of(WorkSheet.repairs(assessment, print.paper())));
                parts.put("order, plan and safety", () -> List.of(WorkSheet.orders(assessment), WorkSheet.plan(assessment), SafeSheet.page(assessment)));
                parts.put("watch", () -> List.of(YearSheet.page(assessment)));
                end(parts, assessment);
            }
            case OWNER -> {
                begin(parts, assessment, print);
                parts.put("wood", () -> List.of(WoodSheet.page(assessment, print.paper())));
                parts.put("repairs", () -> List.of(ChoiceSheet.owners(assessment)));
                parts.put("order, plan and safety", () -> List.of(WorkSheet.orders(assessment), WorkSheet.plan(assessment), SafeSheet.page(assessment)));
                parts.put("watch", () -> List.of(WatchSheet.page(assessment)));
                end(parts, assessment);
            }
            case CREW -> {
                parts.put("day by day", () -> List.of(WorkSheet.tasks(assessment), SafeSheet.page(assessment)));
                parts.put("days", () -> DaySheet.pages(assessment));
                parts.put("sides", () -> WalkSheet.drawings(assessment));
                parts.put("repairs", () -> CrewSheet.pages(assessment));
                parts.put("order and cut list", () -> List.of(WorkSheet.orders(assessment)));
            }
            case BOARD -> {
                parts.put("what is kept, and why", () -> List.of(BoardSheet.page(assessment)));
                parts.put("sides", () -> WalkSheet.pages(assessment));
                parts.put("photos", () -> PhotoSheet.pages(assessment, print));
                parts.put("wood", () -> List.of(WoodSheet.page(assessment, print.paper())));
                parts.put("repairs", () -> List.of(BoardSheet.repairs(assessment)));
                end(parts, assessment);
            }
        }
        return parts;
    }

    private static void begin(Map<String, Supplier<List<Markup>>> parts, Assessment assessment, Print print) {
        parts.put("the answer", () -> List.of(AnswerSheet.page(assessment)));
        parts.put("water", () -> List.of(WaterSheet.page(assessment)));
        parts.put("sides", () -> WalkSheet.pages(assessment));
        parts.put("photos", () -> PhotoSheet.pages(assessment, print));
    }

    private static void end(Map<String, Supplier<List<Markup>>> parts, Assessment assessment) {
        parts.put("method and sources", () -> List.of(GapSheet.page(assessment), SourceSheet.page(assessment)));
    }
}
