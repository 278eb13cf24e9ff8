package sillwright.watch;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Building;
import sillwright.walk.Choice;
import sillwright.walk.Survey;
import sillwright.walk.WorkDone;
import sillwright.water.Source;
import sillwright.water.Tested;
import sillwright.water.WaterFindings;
import sillwright.water.WaterFindings.RankedSource;
import sillwright.watch.Verdict.State;
import sillwright.wood.drying.Skin;
import sillwright.wood.drying.Timber;
import sillwright.work.Place;

/// Judges every remedy of the book by the readings since.
public final class Verdicts {
    /// Above this a place was wet before; the limit that decay stops at leaves the meter's doubt.
    private static final double WAS_WET = 0.18, STANDS_OFF = 0.03, DRY_NOW = 0.025;
    /// Readings of so long before the work tell how wet it was.
    private static final long BEFORE_MS = 3 * 365 * 86_400_000L;
    private static final double LIKELIER = 0.2;

    private final Survey survey;
    private final WaterFindings water;
    private final Units units;
    private final List<Series> series;
    private final List<Judged> judged = new ArrayList<>();
    private final Baseline baseline;
    private final List<Long> coming;
    private final Map<String, Double> halfDays = new HashMap<>();

    /// A work and the places that it should have dried.
    private record Judged(WorkDone work, long doneMs, long untilMs, Set<String> members) {}

    private Verdicts(Survey survey, WaterFindings water, LocalDate today, Units units, Past past) {
        this.survey = survey;
        this.water = water;
        this.units = units;
        series = Series.of(survey);
        Set<String> wetted = new HashSet<>();
        for (RankedSource source : water.sources()) if (source.probability() >= WaterFindings.LIKELY) wetted.addAll(source.members());
        for (Survey.Noted<WorkDone> noted : survey.works()) if (judges(noted.what())) {
            Set<String> members = reached(noted.what());
            wetted.addAll(members);
            judged.add(new Judged(noted.what(), noted.dayMs(), until(noted), members));
        }
        judged.sort(Comparator.comparingLong(Judged::doneMs));
        baseline = new Baseline(past, series, wetted);
        coming = coming(survey.building(), today);
    }

    /// @param water the sources by the sightings alone
    /// @param today the day that rounds to come are counted from
    public static List<Verdict> of(Survey survey, WaterFindings water, LocalDate today, Units units) { return of(survey, water, today, units, Past.of(survey)); }

    /// @param past what dry wood would have shown on each walk
    public static List<Verdict> of(Survey survey, WaterFindings water, LocalDate today, Units units, Past past) {
        if (survey.works().isEmpty()) return List.of();
        Verdicts verdicts = new Verdicts(survey, water, today, units, past);
        List<Verdict> all = new ArrayList<>();
        for (Judged one : verdicts.judged) all.add(verdicts.verdict("V" + (all.size() + 1), one));
        return List.copyOf(all);
    }

    /// What the verdicts tell the diagnosis: where wood stays wet though a source was stopped, and where it dried.
    public static List<Tested> told(List<Verdict> verdicts) {
        List<Tested> told = new ArrayList<>();
        for (Verdict verdict : verdicts)
            for (Verdict.Place place : verdict.places()) {
                boolean wet = place.failing() >= Holding.FAILED, dry = place.failing() <= 1 - Holding.HELD;
                if (wet || dry) told.add(new Tested(verdict.work().side(), place.member(), verdict.work().on(), wet, place.words() + (wet ? " is still wet, " : " dried, ")
                        + Words.percent(place.last()) + " after " + named(verdict.work())));
            }
        return List.copyOf(told);
    }

    /// The verdicts with the source that each failed one leaves likelier.
    ///
    /// @param before the sources by the sightings alone
    /// @param after  with the verdicts weighed in
    static List<Verdict> likelier(List<Verdict> verdicts, WaterFindings before, WaterFindings after) {
        return verdicts.stream().map(verdict -> {
            if (verdict.state() != State.NOT_DRYING && verdict.state() != State.WET_AGAIN) return verdict;
            Set<String> wet = new HashSet<>();
            for (Verdict.Place place : verdict.places()) if (place.failing() >= Holding.FAILED) wet.add(place.member());
            Optional<RankedSource> best = after.sources().stream().filter(source -> source.probability() >= LIKELIER && source.members().stream().anyMatch(wet::contains)).findFirst();
            if (best.isEmpty()) return new Verdict(verdict.id(), verdict.work(), verdict.state(), verdict.failing(), verdict.asOf(), verdict.told(), verdict.places(), Optional.empty(),
                    verdict.words() + " No other source is described that could wet it: look again in rain, inside and out.", verdict.basis());
            RankedSource source = best.get();
            double was = before.sources().stream().filter(other -> other.source() == source.source() && other.side().equals(source.side()) && other.place().equals(source.place()))
                    .mapToDouble(RankedSource::probability).findFirst().orElse(0);
            boolean same = verdict.work().against().filter(Choice.word(source.source())::equals).isPresent() && verdict.work().side().equals(source.side());
            String said = source.id() + " " + source.words() + ", " + Words.percent(source.probability()) + (was > 0 && Math.abs(was - source.probability()) > 0.02 ? " (" + Words.percent(was) + " by the sightings alone)" : "");
            return new Verdict(verdict.id(), verdict.work(), verdict.state(), verdict.failing(), verdict.asOf(), verdict.told(), verdict.places(), Optional.of(said),
                    verdict.words() + (same ? " Likeliest now: the same water, not stopped: " : " Likelier now: ") + said + ".", verdict.basis());
        }).toList();
    }

    /// Whatever was done against a source, and any repair of wood that says what it was against.
    private static boolean judges(WorkDone work) { return work.against().isPresent(); }

    private Set<String> reached(WorkDone work) {
        if (work.member().isPresent()) return Set.of(work.member().get());
        Set<String> members = new LinkedHashSet<>();
        for (WaterFindings.SeenTo source : water.seenTo()) if (Choice.word(source.source()).equals(work.against().orElse("")) && source.side().equals(work.side())
                && (work.place().isEmpty() || work.place().equals(source.place()))) members.addAll(source.members());
        if (members.isEmpty()) survey.membersOn(work.side()).forEach(member -> members.add(member.id()));
        return members;
    }

    /// A later work against the same water at the same place takes the judgement over.
    private long until(Survey.Noted<WorkDone> noted) {
        WorkDone work = noted.what();
        return survey.works().stream().filter(other -> other.dayMs() > noted.dayMs() && other.what().against().equals(work.against()) && other.what().side().equals(work.side())
                && other.what().member().equals(work.member()) && other.what().place().equals(work.place())).mapToLong(Survey.Noted::dayMs).min().orElse(Long.MAX_VALUE);
    }

    private static List<Long> coming(Optional<Building> building, LocalDate today) {
        Seasons seasons = Seasons.of(building.map(Building::months).orElse(List.of()));
        List<Long> days = new ArrayList<>();
        for (int year = 0; year < 4; year++)
            for (var day : List.of(seasons.spring(), seasons.autumn())) days.add(Seasons.first(day, today).plusYears(year).atStartOfDay(ZoneOffset.UTC).toInstant().toEpochMilli());
        days.sort(null);
        return days;
    }

    /// A place that was wet before, and what was read there since.
    private record Watched(Series series, List<Series.Point> since, double was, Holding.Start start) {}

    private List<Watched> watched(Judged one) {
        List<Watched> watched = new ArrayList<>();
        for (Series place : series) {
            if (!one.members.contains(place.member().id())) continue;
            List<Series.Point> before = place.points().stream().filter(point -> point.wallMs() <= one.doneMs && point.wallMs() >= one.doneMs - BEFORE_MS).toList();
            List<Series.Point> wet = before.stream().filter(point -> point.moisture() >= WAS_WET && baseline.off(place.member(), point) >= STANDS_OFF).toList();
            if (wet.isEmpty() && (!before.isEmpty() || one.work.member().isEmpty())) continue;
            List<Series.Point> since = place.points().stream().filter(point -> point.wallMs() > one.doneMs && point.wallMs() <= one.untilMs).toList();
            double start = wet.isEmpty() ? 0.25 : wet.stream().mapToDouble(Series.Point::moisture).max().orElseThrow();
            double half = halfDays.computeIfAbsent(place.member().id() + Math.round(50 * start), _ -> Drying.halfDays(place.member(), Math.round(50 * start) / 50.0, survey.building()));
            watched.add(new Watched(place, since, wet.isEmpty() ? Double.NaN : wet.getLast().moisture(), wet.isEmpty() ? new Holding.Start(0.12, 0.05, half)
                    : new Holding.Start(wet.stream().mapToDouble(point -> baseline.off(place.member(), point)).average().orElseThrow(), 0.01, half)));
        }
        return watched;
    }

    /// Weighs some places together, walk by walk.
    private Weighed weigh(Judged one, List<Watched> places) {
        Holding holding = new Holding(places.stream().map(Watched::start).toList());
        List<Long> walks = new ArrayList<>();
        places.stream().flatMap(place -> place.since.stream()).map(Series.Point::wallMs).sorted().forEach(at -> {
            if (walks.isEmpty() || at - walks.getLast() > Survey.ONE_WALK_MS) walks.add(at);
        });
        boolean held = false;
        for (long walk : walks) {
            double[] excess = places.stream().mapToDouble(place -> place.since.stream().filter(point -> point.wallMs() >= walk && point.wallMs() - walk <= Survey.ONE_WALK_MS).findFirst()
                    .map(point -> baseline.off(place.series.member(), point)).orElse(Double.NaN)).toArray();
            holding.read(days(one.doneMs, walk), excess, baseline.shift(walk).doubt());
            held |= holding.failing() <= 1 - Holding.HELD;
        }
        return new Weighed(holding, held, walks.isEmpty() ? one.doneMs : walks.getLast());
    }

    private record Weighed(Holding holding, boolean held, long lastMs) {
        double failing() { return holding.failing(); }
    }

    private Verdict verdict(String id, Judged one) {
        List<Watched> watched = watched(one);
        List<Verdict.Place> places = new ArrayList<>();
        Weighed together = weigh(one, watched);
        boolean everHeld = together.held, allDry = true, read = watched.stream().anyMatch(place -> !place.since.isEmpty());
        double failing = watched.isEmpty() ? Holding.AT_ONCE : together.failing();
        for (Watched place : watched) {
            Weighed alone = watched.size() == 1 ? together : weigh(one, List.of(place));
            everHeld |= alone.held;
            // One place may stay wet where others dry, and several together may tell what none does alone.
            double here = together.failing() >= Holding.FAILED && alone.failing() > 1 - Holding.HELD ? Math.max(alone.failing(), Math.min(together.failing(), 0.5 + alone.failing() / 2)) : alone.failing();
            if (alone.failing() >= Holding.FAILED) failing = Math.max(failing, alone.failing());
            places.add(place(place.series, one, place.since, place.was, place.start, here));
            if (place.since.isEmpty() || baseline.off(place.series.member(), place.since.getLast()) > DRY_NOW) allDry = false;
        }
        // Water against a whole side reaches places that other water reaches too: where some have dried, it holds, and the rest is told.
        boolean elsewhere = one.work.member().isEmpty() && places.stream().anyMatch(place -> place.failing() <= 1 - Holding.HELD) && failing >= Holding.FAILED;
        if (elsewhere) {
            failing = places.stream().mapToDouble(Verdict.Place::failing).min().orElseThrow();
            allDry = watched.stream().filter(place -> !place.since.isEmpty()).anyMatch(place -> baseline.off(place.series.member(), place.since.getLast()) <= DRY_NOW);
        }
        State state = watched.isEmpty() ? State.NO_PLACE : failing >= Holding.FAILED ? everHeld ? State.WET_AGAIN : State.NOT_DRYING
                : !read || failing > 1 - Holding.HELD ? State.TOO_EARLY : allDry ? State.DRY : State.DRYING;
        Optional<LocalDate> told = Optional.empty();
        if (state == State.TOO_EARLY) {
            int in = together.holding.toldIn(Holding.after(one.doneMs, coming.stream().filter(day -> day > together.lastMs).toList()));
            if (in > 0) told = nth(together.lastMs, in);
        }
        List<sillwright.measure.Basis> basis = new ArrayList<>(List.of(Baseline.BASIS, Past.BASIS, Holding.BASIS));
        basis.addAll(Timber.BASIS);
        basis.addAll(Skin.BASIS);
        return new Verdict(id, one.work, state, failing, read ? Series.dayOf(together.lastMs) : one.work.on(), told, places, Optional.empty(), words(one.work, state, failing, places, told, read), basis);
    }

    private static double days(long fromMs, long toMs) { return (toMs - fromMs) / 86_400_000.0; }

    private Optional<LocalDate> nth(long afterMs, int count) { return coming.stream().filter(day -> day > afterMs).skip(count - 1L).findFirst().map(Series::dayOf); }

    private Verdict.Place place(Series place, Judged one, List<Series.Point> since, double was, Holding.Start start, double failing) {
        double low = Double.NaN, high = Double.NaN, last = Double.NaN;
        if (!since.isEmpty()) {
            Series.Point point = since.getLast();
            double days = days(one.doneMs, point.wallMs()), dry = baseline.dry(place.member(), point.wallMs()), doubt = 1.645 * Math.hypot(Baseline.REPEAT, baseline.shift(point.wallMs()).doubt());
            last = point.moisture();
            low = Math.max(0, dry + start.expected(days, 0) - doubt);
            high = dry + start.expected(days, Drying.SPEEDS.length - 1) + doubt;
        }
        return new Verdict.Place(place.member().id(), place.member().title() + ", " + Place.at(place.member(), place.spot().alongMm(), units), was, last, low, high, failing);
    }

    static String named(WorkDone work) {
        return work.against().map(source -> Source.valueOf(source.toUpperCase(java.util.Locale.ROOT).replace('-', '_')).words() + " was seen to").orElse(work.said()) + " on " + Words.day(work.on());
    }

    private String words(WorkDone work, State state, double failing, List<Verdict.Place> places, Optional<LocalDate> told, boolean read) {
        String name = Words.sentence(named(work)) + ": ";
        List<Verdict.Place> wet = places.stream().filter(place -> place.failing() >= Holding.FAILED).toList();
        return name + switch (state) {
            case NO_PLACE -> "no place that was wet before is metered, so nothing can be said; meter where it wetted wood.";
            case TOO_EARLY -> (read ? "too early to tell, " + Words.percent(failing) + " that water still comes" : "not metered since") + told.map(day -> "; it should be told by the round of " + day).orElse(
                    places.isEmpty() ? "" : "; readings that differ so little from dry wood will not tell it: watch it in rain") + ".";
            case DRY -> "it is dry, as predicted: " + held(places) + others(wet);
            case DRYING -> "it dries as predicted: " + held(places) + others(wet);
            case NOT_DRYING -> "it does not dry: " + Words.list(wet.stream().limit(3).map(this::lastAndPredicted).toList()) + ". The source was another, or it was not stopped.";
            case WET_AGAIN -> "it had dried and is wet again: " + Words.list(wet.stream().limit(3).map(this::lastAndPredicted).toList()) + ". What was done has failed since, or other water comes.";
        };
    }

    private String held(List<Verdict.Place> places) {
        return Words.list(places.stream().filter(place -> place.failing() <= 1 - Holding.HELD).limit(3).map(this::lastAndBefore).toList()) + ".";
    }

    private String others(List<Verdict.Place> wet) {
        return wet.isEmpty() ? "" : " Other water comes to " + Words.list(wet.stream().limit(3).map(this::lastAndPredicted).toList()) + ".";
    }

    private String lastAndBefore(Verdict.Place place) {
        return place.words() + " " + (Double.isNaN(place.last()) ? "not read since" : Words.percent(place.last()) + " now") + (Double.isNaN(place.before()) ? "" : ", " + Words.percent(place.before()) + " before");
    }

    private String lastAndPredicted(Verdict.Place place) {
        return place.words() + " is at " + Words.percent(place.last()) + " where " + Words.percent(place.predictedLow()) + " to " + Words.percent(place.predictedHigh()) + " was predicted";
    }
}
