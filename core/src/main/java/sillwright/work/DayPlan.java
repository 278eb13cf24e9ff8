package sillwright.work;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import sillwright.measure.Words;
import sillwright.work.WorkFindings.SafeSide;
import sillwright.work.WorkFindings.Task;
import sillwright.work.WorkFindings.TaskKind;
import sillwright.work.schedule.Timetable.Stint;

/// One day of the order of work: what is done, what weather it wants, what to have at hand and what to mind.
///
/// The days are those of the year whose end is the one at the confidence: weather moves them, their order stays.
///
/// @param number   of the day among those worked, from 1
/// @param of       how many are worked
/// @param items    what is done, in order
/// @param weather  what the day must be, from the job that asks most
/// @param bring    tools and gear; `needs` are the materials, of the repairs worked on
/// @param cautions of the sides worked on, for what is done there
/// @param then     what the next worked day begins with; empty on the last
/// @param rests    what must be left to cure or dry after today
public record DayPlan(LocalDate day, int number, int of, List<Item> items, List<String> weather, List<String> bring, List<Repair.Need> needs, List<Repair.Piece> pieces, List<String> cautions,
                      String then, List<String> rests) {
    /// A task, or a part of it, of one crew.
    ///
    /// @param crew  1 for the first
    /// @param ends  whether the task is done by the evening
    /// @param begun whether it was begun on an earlier day
    public record Item(Task task, int crew, int minutes, boolean begun, boolean ends, List<Repair> repairs) {}

    static final String OUTDOORS = "dry enough to work outdoors: under 0.2 in (5 mm) of rain in the hours of work, no storm, wind under 20 mph (9 m/s) while paint is taken off";
    static final String DRY = "no rain in the hours of work: wood lies open";
    static final String WARM = "no rain in the hours of work; 50 °F (10 °C) or more in the mean of them, for resin and glue";
    static final String PAINT = "for paint: four hours together at 50 to 90 °F (10 to 32 °C), humidity to 85 %, the face 5 °F (3 °C) over the dew point, no rain in them nor in the four hours after, under 0.08 in (2 mm) the day before,"
            + " a night of 35 °F (2 °C) or more; wood at 15 % or less";

    /// Every day on which somebody works, in order.
    public static List<DayPlan> of(WorkFindings work) {
        Map<LocalDate, List<Stint>> days = new LinkedHashMap<>();
        work.plan().timetable().ifPresent(known -> known.stints().forEach(stint -> days.computeIfAbsent(stint.day(), _ -> new ArrayList<>()).add(stint)));
        List<DayPlan> plans = new ArrayList<>();
        List<LocalDate> order = List.copyOf(days.keySet());
        Map<Integer, Integer> done = new LinkedHashMap<>();
        for (int i = 0; i < order.size(); i++) {
            List<Item> items = new ArrayList<>();
            for (Stint stint : days.get(order.get(i))) {
                Task task = work.tasks().get(stint.activity());
                int before = done.getOrDefault(stint.activity(), 0), now = done.merge(stint.activity(), stint.minutes(), Integer::sum);
                items.add(new Item(task, stint.crew() + 1, stint.minutes(), before > 0, now >= Math.round(60 * task.hours()), work.repairs().stream().filter(repair -> task.refs().contains(repair.id())).toList()));
            }
            String then = i + 1 == order.size() ? "" : Words.day(order.get(i + 1)) + ": " + work.tasks().get(days.get(order.get(i + 1)).getFirst().activity()).title();
            plans.add(day(work, order.get(i), i + 1, order.size(), items, then));
        }
        return List.copyOf(plans);
    }

    private static DayPlan day(WorkFindings work, LocalDate day, int number, int of, List<Item> items, String then) {
        Set<TaskKind> kinds = EnumSet.noneOf(TaskKind.class);
        items.forEach(item -> kinds.add(item.task().kind()));
        Set<String> bring = new LinkedHashSet<>(), cautions = new LinkedHashSet<>(), rests = new LinkedHashSet<>();
        List<Repair.Need> needs = new ArrayList<>();
        List<Repair.Piece> pieces = new ArrayList<>();
        for (Item item : items) {
            TaskKind kind = item.task().kind();
            bring.addAll(bring(kind));
            for (Repair repair : item.repairs()) {
                for (Repair.Need need : repair.needs()) if (!item.begun() && kind == used(need.material())) needs.add(need);
                if (kind == TaskKind.JOIN && !item.begun()) pieces.addAll(repair.pieces());
                work.safety().stream().filter(side -> side.side().equals(repair.damage().member().side())).forEach(side -> cautions.addAll(cautions(side, kind)));
            }
            if (item.ends() && Dating.nights(kind) > 1) rests.add(item.task().title() + ": nothing on it for " + (Dating.nights(kind) - 1) + (Dating.nights(kind) == 2 ? " whole day" : " whole days") + ", longer where the maker's sheet says so");
        }
        return new DayPlan(day, number, of, List.copyOf(items), weather(kinds), List.copyOf(bring), sum(needs), List.copyOf(pieces), List.copyOf(cautions), then, List.copyOf(rests));
    }

    private static List<Repair.Need> sum(List<Repair.Need> needs) {
        Map<String, Repair.Need> sums = new LinkedHashMap<>();
        for (Repair.Need need : needs) sums.merge(need.item(), need, Repair.Need::with);
        return List.copyOf(sums.values());
    }

    private static List<String> weather(Set<TaskKind> kinds) {
        Set<String> all = new LinkedHashSet<>();
        for (TaskKind kind : kinds) switch (Dating.needs(kind)) {
            case ANY -> {}
            case OUTDOORS -> all.add(OUTDOORS);
            case DRY -> all.add(DRY);
            case WARM, OPENING -> all.add(WARM);
            case PAINT -> all.add(PAINT);
        }
        if (all.size() > 1) all.remove(OUTDOORS);
        return List.copyOf(all);
    }

    private static TaskKind used(Material material) {
        return switch (material) {
            case CONSOLIDANT -> TaskKind.CONSOLIDATE;
            case FILLER, SKIM_FILLER -> TaskKind.FILL;
            case ADHESIVE, BORATE, SCREW, BOLT, DOWEL, CAPILLARY_BREAK -> TaskKind.JOIN;
            case ABRASIVE, PRIMER -> TaskKind.PRIME;
            case PAINT -> TaskKind.COAT;
            case SHEETING, WASTE_BAG -> TaskKind.OPEN_AND_CUT;
        };
    }

    private static List<String> bring(TaskKind kind) {
        return switch (kind) {
            case SET_UP -> List.of("order list and cut list", "meter, awl and tape", "tape or chalk to mark");
            case SHORE -> List.of("posts, jacks and wedges", "pads for the footings", "level and line");
            case STOP_WATER -> List.of("ladder", "gutter scoop, caulking gun, snips", "hose to try it with");
            case DRY -> List.of("meter");
            case OPEN_TO_DRY -> List.of("ground sheeting, tape, signs and bags", "scraper and spray bottle", "flat bar, raking tools", "a sheet and battens to hang before it", "mask, gloves, glasses");
            case OPEN_AND_CUT -> List.of("ground sheeting, tape, signs and bags", "scraper and spray bottle", "saws, chisels, flat bar", "mask, gloves, glasses");
            case CONSOLIDATE -> List.of("meter: 15 % or less before it goes in", "drill and bits, syringes or bottles", "mixing cups, scale, timer", "nitrile gloves");
            case JOIN -> List.of("planes, chisels, clamps", "mixing cups, timer", "meter: 15 % or less before glue");
            case FILL -> List.of("mixing board and knives", "rasp and paper", "gloves, mask");
            case PRIME, COAT -> List.of("meter, thermometer and hygrometer", "brushes, drop cloth, damp cloth", "brush work sheet: record film, coats, moisture, air");
            case CLEAN_UP -> List.of("bags and tape", "HEPA vacuum, wet cloths", "lamp to look by");
        };
    }

    private static List<String> cautions(SafeSide side, TaskKind kind) {
        Set<String> topics = switch (kind) {
            case SET_UP -> Set.of("wires", "birds", "people");
            case SHORE -> Set.of("shore", "people");
            case STOP_WATER, DRY -> Set.of("ladder", "wires");
            case OPEN_TO_DRY, OPEN_AND_CUT -> Set.of("breath", "electricity", "asbestos", "droppings", "insects", "mould", "birds", "debris", "scaffold");
            case CONSOLIDATE, FILL -> Set.of("resin", "fire");
            case JOIN -> Set.of("resin", "breath", "scaffold");
            case PRIME, COAT -> Set.of("ladder", "edge");
            case CLEAN_UP -> Set.of("people");
        };
        List<String> all = new ArrayList<>();
        for (SafePlan.Line line : side.plan().lines()) if (topics.contains(line.topic())) all.add(line.said());
        if (side.leadApplies() && (kind == TaskKind.OPEN_TO_DRY || kind == TaskKind.OPEN_AND_CUT)) all.addFirst("lead rule: sheet down, signs up, doors and windows closed within 20 ft (6.1 m); no flame, no uncontained power tool, no gun over 1100 °F (40 CFR 745.85(a))");
        if (side.leadApplies() && kind == TaskKind.CLEAN_UP) all.addFirst("every chip picked up, sheeting folded dirty side in and sealed, looked over until none is seen, the record kept three years (40 CFR 745.85(a)(5), 745.85(b), 745.86)");
        return all;
    }
}
