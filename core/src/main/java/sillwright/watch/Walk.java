package sillwright.watch;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import sillwright.measure.Words;
import sillwright.walk.Side;
import sillwright.walk.Survey;
import sillwright.watch.WatchFindings.Ask;
import sillwright.watch.WatchFindings.Check;

/// One round laid out so that it can be walked: what is asked at one place made one stop, the weightiest stops kept, and the
/// rest in the order of one's feet.
final class Walk {
    /// More stops or minutes than these are not walked in a morning: this program's own choice. What matters most is kept.
    static final int MOST_STOPS = 24;
    static final double MOST_MINUTES = 120;
    /// What one round left out goes before other things of its kind in the next.
    private static final double OWED = 15;

    private final List<String> sides;

    Walk(Survey survey) { sides = round(survey); }

    /// What came of it: the checks in order, and the stops that did not fit.
    record Laid(List<Check> checks, Set<String> left) {}

    /// @param owed stops that the round before left out
    Laid lay(List<Draft> drafts, Set<String> owed) {
        Map<String, List<Draft>> stops = new LinkedHashMap<>();
        for (Draft draft : drafts) stops.computeIfAbsent(draft.stop(), _ -> new ArrayList<>()).add(draft);
        List<Map.Entry<String, List<Draft>>> ranked = new ArrayList<>(stops.entrySet());
        ranked.sort(Comparator.comparingDouble(stop -> -weight(stop, owed)));
        List<List<Draft>> kept = new ArrayList<>();
        Set<String> left = new LinkedHashSet<>();
        double minutes = 0;
        for (var stop : ranked) {
            double here = minutes(stop.getValue());
            boolean fits = kept.size() < MOST_STOPS && minutes + here <= MOST_MINUTES;
            if (fits || stop.getValue().stream().anyMatch(draft -> draft.weight() >= Draft.DANGER - 5)) {
                kept.add(stop.getValue());
                minutes += here;
            } else left.add(stop.getKey());
        }
        kept.sort(Comparator.comparingInt((List<Draft> stop) -> place(stop.getFirst().side())).thenComparing(stop -> !stop.getFirst().back())
                .thenComparingDouble(stop -> stop.getFirst().back() ? -high(stop) : stop.getFirst().leftMm()).thenComparingDouble(stop -> -high(stop)));
        return new Laid(kept.stream().map(Walk::check).toList(), left);
    }

    private static double weight(Map.Entry<String, List<Draft>> stop, Set<String> owed) {
        return stop.getValue().stream().mapToDouble(Draft::weight).max().orElseThrow() + (owed.contains(stop.getKey()) ? OWED : 0) + 0.01 * stop.getValue().size();
    }

    private static double high(List<Draft> stop) { return stop.stream().mapToDouble(Draft::aboveMm).max().orElseThrow(); }

    private static double minutes(List<Draft> stop) { return asked(stop).stream().mapToDouble(Draft::minutes).sum(); }

    /// The asks of one stop, from the top down, the same words once.
    private static List<Draft> asked(List<Draft> stop) {
        Map<String, Draft> once = new LinkedHashMap<>();
        stop.stream().sorted(Comparator.comparingDouble((Draft draft) -> -draft.aboveMm()).thenComparing(draft -> -draft.weight())).forEach(draft -> once.putIfAbsent(draft.ask().words(), draft));
        return List.copyOf(once.values());
    }

    private static Check check(List<Draft> stop) {
        List<Draft> asked = asked(stop);
        Draft first = stop.getFirst();
        List<Ask> asks = asked.stream().map(Draft::ask).toList();
        Set<String> because = new LinkedHashSet<>(stop.stream().map(Draft::because).filter(one -> !one.isEmpty()).toList());
        return new Check(first.side(), first.member(), first.title() + ": " + joined(asks.stream().map(Ask::words).toList()), joined(asks.stream().map(Ask::last).toList()),
                joined(asks.stream().map(Ask::expected).toList()), because.isEmpty() ? "" : Words.list(List.copyOf(because)), asks, minutes(stop));
    }

    private static String joined(List<String> all) { return String.join("; ", new LinkedHashSet<>(all.stream().filter(one -> !one.isEmpty()).toList())); }

    private int place(String side) { return sides.contains(side) ? sides.indexOf(side) : sides.size(); }

    /// The sides as one comes to them going round from the first described, the way that the second described lies.
    static List<String> round(Survey survey) {
        List<Side> all = List.copyOf(survey.sides().values());
        if (all.size() < 3) return all.stream().map(Side::id).toList();
        double from = all.getFirst().bearing().own();
        boolean clockwise = turn(from, all.get(1)) <= 180;
        return all.stream().sorted(Comparator.comparingDouble(side -> side == all.getFirst() ? -1 : clockwise ? turn(from, side) : (360 - turn(from, side)) % 360)).map(Side::id).toList();
    }

    private static double turn(double from, Side side) { return ((side.bearing().own() - from) % 360 + 360) % 360; }
}
