package sillwright.work;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/// Repairs of one side that are worked together, because they are dry at about the same time: what is dry, or soon is, need not lie until the wettest piece of its side is.
///
/// @param side    id
/// @param title   of the side, and which of its lots
/// @param dryDays to wait once their water is stopped
/// @param waits   those that must wait so
record Lot(String side, String title, List<Repair> repairs, int dryDays, List<Repair> waits) {
    /// To a month, to four months, longer: own choice.
    private static final int SOON_DAYS = 30, SEASON_DAYS = 120;
    private static final String[] NAMES = {"", ", what dries in a season", ", what dries last"};

    /// @param titles of the sides
    static List<Lot> of(List<Repair> repairs, Map<String, Job> jobs, java.util.function.UnaryOperator<String> titles) {
        Map<String, List<List<Repair>>> sides = new LinkedHashMap<>();
        for (Repair repair : repairs) {
            if (repair.treatment() instanceof Treatment.Watch) continue;
            int days = days(repair, jobs);
            sides.computeIfAbsent(repair.damage().member().side(), _ -> List.of(new ArrayList<>(), new ArrayList<>(), new ArrayList<>())).get(days <= SOON_DAYS ? 0 : days <= SEASON_DAYS ? 1 : 2).add(repair);
        }
        List<Lot> lots = new ArrayList<>();
        sides.forEach((side, three) -> {
            for (int k = 0; k < 3; k++) if (!three.get(k).isEmpty()) lots.add(new Lot(side, titles.apply(side) + NAMES[k], List.copyOf(three.get(k)),
                    three.get(k).stream().mapToInt(repair -> days(repair, jobs)).max().orElseThrow(), three.get(k).stream().filter(repair -> days(repair, jobs) > 0).toList()));
        });
        return lots;
    }

    private static int days(Repair repair, Map<String, Job> jobs) { return DryingTime.days(jobs.get(repair.damage().id()), repair.treatment()); }
}
