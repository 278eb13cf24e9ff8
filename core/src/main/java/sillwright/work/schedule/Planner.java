package sillwright.work.schedule;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/// Finds the order of work that ends earliest at a confidence, and a day that no way to work ends before.
///
/// An order is a list of precedence: whoever is free takes the first job on it that may begin and has its weather. A crew stays with a job while its weather lasts, or asks the list anew each morning, or does first what wants the rarest
/// weather, or keeps to the list to the letter, whichever ends earlier; nobody knows the weather to come. The bound holds for any way to work, even one that knows each year's weather.
/// Source: priority rules and iterated local search, standards of scheduling texts (from memory); the bound: see [Bound].
public final class Planner {
    private final Jobs jobs;
    private final Crew crew;
    private final Season season;
    private final double confidence;
    private final Search search;
    private final int[] rank;

    private Planner(List<Activity> all, Crew crew, Season season, double confidence) {
        this.jobs = new Jobs(all);
        this.crew = crew;
        this.season = season;
        this.confidence = confidence;
        this.search = new Search(jobs, season, crew.crews(), confidence);
        this.rank = new int[jobs.n];
    }

    /// @param all each after those that it comes after
    public static Timetable plan(List<Activity> all, Crew crew, Season season, double confidence, long seed) {
        if (all.isEmpty()) throw new IllegalArgumentException("nothing to plan");
        Planner planner = new Planner(all, crew, season, confidence);
        planner.search.run(seed);
        return planner.timetable();
    }

    private int[] ends(Season weather) {
        Walk walk = new Walk(jobs, weather, crew.crews());
        int[] ends = new int[weather.years()];
        for (int y = 0; y < ends.length; y++) ends[y] = walk.run(search.best, rank, search.manner, y, weather.days());
        return ends;
    }

    private static int at(int[] ends, double share) {
        int[] sorted = ends.clone();
        Arrays.sort(sorted);
        return sorted[Search.place(sorted.length, share)];
    }

    private Timetable timetable() {
        for (int k = 0; k < jobs.n; k++) rank[search.best[k]] = k;
        int[] ends = ends(season);
        int year = 0;
        while (ends[year] != search.end) year++;
        List<Timetable.Stint> stints = new ArrayList<>();
        Walk walk = new Walk(jobs, season, crew.crews()).telling((day, who, job, minutes) -> stints.add(new Timetable.Stint(day(day), who, job, minutes)));
        walk.run(search.best, rank, search.manner, year, season.days());
        return new Timetable(slots(walk), stints, confidence, day(search.end), day(at(ends, 0.5)), day(search.least), season.years(), wettest(stints));
    }

    private List<Timetable.Slot> slots(Walk walk) {
        int[] latest = new int[jobs.n];
        Arrays.fill(latest, search.end);
        for (int i = jobs.n - 1; i >= 0; i--)
            for (int k = jobs.from[i]; k < jobs.from[i + 1]; k++)
                latest[jobs.before[k]] = Math.min(latest[jobs.before[k]], latest[i] - (walk.last[i] - walk.first[i]) - Math.max(jobs.nights[k], jobs.itself[i] ? 1 : 0));
        List<Timetable.Slot> slots = new ArrayList<>();
        for (int i = 0; i < jobs.n; i++) slots.add(new Timetable.Slot(day(walk.first[i]), day(walk.last[i]), Math.max(0, latest[i] - walk.last[i])));
        return slots;
    }

    /// Of the months in which somebody works.
    private Optional<Timetable.Wet> wettest(List<Timetable.Stint> stints) {
        Optional<Timetable.Wet> wet = Optional.empty();
        if (season.years() > 1)
            for (int month : stints.stream().mapToInt(stint -> stint.day().getMonthValue()).distinct().sorted().toArray()) {
                LocalDate end = day(at(ends(season.wetMonth(month)), confidence));
                if (end.isAfter(wet.map(Timetable.Wet::finish).orElse(day(search.end)))) wet = Optional.of(new Timetable.Wet(month, end));
            }
        return wet;
    }

    private LocalDate day(int day) { return season.day(day); }
}
