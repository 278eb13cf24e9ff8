package sillwright.watch;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

import sillwright.measure.Basis;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Choice;
import sillwright.walk.Member;
import sillwright.walk.ProbeReading;
import sillwright.walk.Sighting;
import sillwright.walk.Sign;
import sillwright.walk.Spot;
import sillwright.walk.Survey;
import sillwright.walk.WorkDone;
import sillwright.water.WaterFindings;
import sillwright.watch.Trend.Way;
import sillwright.watch.Trend.What;
import sillwright.watch.trend.Break;
import sillwright.watch.trend.Kendall;
import sillwright.watch.trend.Slopes;
import sillwright.wood.Outlook;
import sillwright.wood.WoodFindings;
import sillwright.work.Place;

/// Follows every place that was read on several walks, and says what stands out of the noise.
///
/// Many places are followed at once, so a trend is said only where it stands at a rate of false ones of one in twenty over all of them.
/// Source: Benjamini and Hochberg (1995) (from memory).
final class Trends {
    static final Basis MANY = Basis.memory("Benjamini and Hochberg (1995)", "step-up rule that holds the rate of false discoveries");
    private static final double RATE = 0.05, SHARE = 0.95, YEAR_MS = 365.25 * 86_400_000;
    private static final int LEAST = 4;
    /// So far over dry wood a place is called wet, trend or not. Own choice: four times what one reading varies by.
    private static final double STILL_WET = 0.06;
    /// From so many years on the seasons' covariance is worth reckoning with. Source: Hirsch and Slack (1984) (from memory).
    private static final int LONG = 10;
    private static final List<Sign> PAINT = List.of(Sign.PEELING_AT_BASE, Sign.PEELING_BELOW_EAVE, Sign.PEELING_TO_BARE_WOOD, Sign.PEELING_BETWEEN_COATS, Sign.PEELING_BELOW_WINDOW,
            Sign.BLISTERED_PAINT, Sign.CRAZED_PAINT, Sign.PAINT_GONE_ON_WEATHER_SIDE);

    private final Survey survey;
    private final WoodFindings wood;
    private final Units units;
    private final Past past;
    private final List<Trend> all = new ArrayList<>();

    private Trends(Survey survey, WoodFindings wood, Units units, Past past) {
        this.past = past;
        this.survey = survey;
        this.wood = wood;
        this.units = units;
    }

    static List<Trend> of(Survey survey, WaterFindings water, WoodFindings wood, Units units, Past past) {
        Trends trends = new Trends(survey, wood, units, past);
        Set<String> wetted = new HashSet<>();
        for (WaterFindings.RankedSource source : water.toStop()) wetted.addAll(source.members());
        for (Survey.Noted<WorkDone> work : survey.works()) work.what().member().ifPresent(wetted::add);
        List<Series> series = Series.of(survey);
        Baseline baseline = new Baseline(past, series, wetted);
        for (Series one : series) if (one.points().size() > 1) trends.moisture(one, baseline);
        trends.depths();
        trends.paint();
        return trends.said();
    }

    private static double years(long wallMs) { return wallMs / YEAR_MS; }

    private void moisture(Series one, Baseline baseline) {
        List<Trend.Point> points = new ArrayList<>();
        double[] times = new double[one.points().size()], off = new double[times.length];
        for (int i = 0; i < times.length; i++) {
            Series.Point point = one.points().get(i);
            points.add(new Trend.Point(point.day(), point.moisture(), baseline.dry(one.member(), point.wallMs())));
            times[i] = years(point.wallMs());
            off[i] = baseline.off(one.member(), point);
        }
        String place = one.member().title() + ", " + Place.at(one.member(), one.spot().alongMm(), units);
        List<Basis> basis = List.of(Baseline.BASIS, Past.BASIS, Kendall.BASIS, Slopes.BASIS, Break.BASIS, MANY);
        put(What.MOISTURE, one.member().side(), Optional.of(one.member().id()), place, points, List.of(times), List.of(off), seasons(one, off), basis);
    }

    /// Spring and autumn apart, where both were walked often enough; else one row after another.
    private static Kendall seasons(Series one, double[] off) {
        Map<Integer, double[]> years = new TreeMap<>();
        int[] counts = new int[2];
        boolean once = true;
        for (int i = 0; i < off.length; i++) {
            LocalDate day = one.points().get(i).day();
            int half = day.getMonthValue() <= 7 ? 0 : 1;
            double[] year = years.computeIfAbsent(day.getYear(), _ -> new double[] {Double.NaN, Double.NaN});
            once &= Double.isNaN(year[half]);
            year[half] = off[i];
            counts[half]++;
        }
        return once && counts[0] >= 3 && counts[1] >= 3 ? Kendall.seasonal(years.values().toArray(double[][]::new), years.size() >= LONG) : Kendall.of(off);
    }

    /// The spots of one face probed again, none of them in wood that was mended between: each is compared with itself only.
    private void depths() {
        Map<String, Map<String, List<Survey.Noted<ProbeReading>>>> faces = new LinkedHashMap<>();
        for (Survey.Noted<ProbeReading> noted : survey.probes()) {
            Spot spot = noted.what().spot();
            if (survey.mendedSince(spot, noted.wallMs())) continue;
            faces.computeIfAbsent(spot.member() + "/" + spot.face(), _ -> new LinkedHashMap<>())
                    .computeIfAbsent(Math.round(spot.alongMm() / 5) + "/" + Math.round(spot.acrossMm() / 5), _ -> new ArrayList<>()).add(noted);
        }
        for (var face : faces.values()) {
            List<List<Survey.Noted<ProbeReading>>> again = face.values().stream().filter(spot -> spot.getLast().wallMs() - spot.getFirst().wallMs() > Survey.ONE_WALK_MS
                    && spot.stream().anyMatch(one -> one.what().depthMm() > 0)).toList();
            if (again.isEmpty()) continue;
            Spot spot = again.getFirst().getFirst().what().spot();
            Member member = survey.members().get(spot.member());
            List<double[]> times = new ArrayList<>(), depths = new ArrayList<>();
            Map<Long, double[]> walks = new TreeMap<>();
            for (var one : again) {
                times.add(one.stream().mapToDouble(noted -> years(noted.wallMs())).toArray());
                depths.add(one.stream().mapToDouble(noted -> noted.what().depthMm()).toArray());
                for (var noted : one) walks.merge(noted.wallMs() / Survey.ONE_WALK_MS, new double[] {noted.wallMs(), noted.what().depthMm(), 1}, (a, b) -> new double[] {Math.min(a[0], b[0]), a[1] + b[1], a[2] + 1});
            }
            List<Trend.Point> points = new ArrayList<>();
            double first = 0, start = 0;
            for (double[] walk : walks.values()) {
                if (points.isEmpty()) {
                    first = walk[1] / walk[2];
                    start = walk[0];
                }
                points.add(new Trend.Point(Series.dayOf((long) walk[0]), walk[1] / walk[2], forecast(member, first, (walk[0] - start) / YEAR_MS)));
            }
            put(What.DEPTH, member.side(), Optional.of(member.id()), member.title() + ", " + Choice.said(spot.face()) + " face, " + Words.count(again.size(), "spot") + " probed again", points,
                    times, depths, together(depths), List.of(Kendall.BASIS, Slopes.BASIS, MANY));
        }
    }

    /// Where every spot was probed on every walk, their means walk by walk; else each spot as a season, what they share not counted twice.
    private static Kendall together(List<double[]> depths) {
        int most = depths.stream().mapToInt(one -> one.length).max().orElseThrow();
        if (depths.stream().allMatch(one -> one.length == most)) {
            double[] means = new double[most];
            for (double[] one : depths) for (int r = 0; r < most; r++) means[r] += one[r] / depths.size();
            return Kendall.of(means);
        }
        double[][] rows = new double[most][depths.size()];
        for (int r = 0; r < most; r++) for (int s = 0; s < depths.size(); s++) rows[r][s] = r < depths.get(s).length ? depths.get(s)[r] : Double.NaN;
        return Kendall.seasonal(rows, true);
    }

    /// Depth as the dose-response forecast would have it: grown as the rating grows, from what it was at first; NaN without a forecast.
    private double forecast(Member member, double firstMm, double years) {
        Optional<Outlook> outlook = wood.outlook(member.id());
        if (outlook.isEmpty() || outlook.get().asIs().ratings().isEmpty()) return Double.NaN;
        var ratings = outlook.get().asIs().ratings();
        int below = (int) Math.min(years, ratings.size() - 1), above = Math.min(below + 1, ratings.size() - 1);
        double from = ratings.getFirst().median(), now = ratings.get(below).median() + (years - below) * (ratings.get(above).median() - ratings.get(below).median());
        return from <= 0 ? firstMm : Math.min(member.throughMm(member.faces().getFirst()), firstMm * now / from);
    }

    /// Signs of failing paint that were looked for on a side, walk by walk: of those looked for, how many were there.
    private void paint() {
        for (String side : survey.sides().keySet()) {
            Map<Long, double[]> walks = new TreeMap<>();
            for (Survey.Noted<Sighting> noted : survey.sightings()) {
                Sighting sighting = noted.what();
                if (!sighting.side().equals(side) || !PAINT.contains(sighting.sign())) continue;
                double[] walk = walks.computeIfAbsent(walks.keySet().stream().filter(at -> Math.abs(at - noted.wallMs()) <= Survey.ONE_WALK_MS).findFirst().orElse(noted.wallMs()), _ -> new double[1]);
                if (sighting.seen()) walk[0]++;
            }
            if (walks.size() < 2) continue;
            double[] times = walks.keySet().stream().mapToDouble(Trends::years).toArray(), counts = walks.values().stream().mapToDouble(one -> one[0]).toArray();
            List<Trend.Point> points = walks.entrySet().stream().map(walk -> new Trend.Point(Series.dayOf(walk.getKey()), walk.getValue()[0], Double.NaN)).toList();
            put(What.PAINT, side, Optional.empty(), "paint of the " + side + " side", points, List.of(times), List.of(counts), Kendall.of(counts), List.of(Kendall.BASIS, Slopes.BASIS, MANY));
        }
    }

    private void put(What what, String side, Optional<String> member, String place, List<Trend.Point> points, List<double[]> times, List<double[]> values, Kendall test, List<Basis> basis) {
        Slopes slopes = Slopes.of(times, values, SHARE);
        boolean few = points.size() < LEAST && what != What.DEPTH || points.size() < 2;
        Optional<LocalDate> changed = Optional.empty();
        if (what == What.MOISTURE && !few) {
            Break at = Break.of(values.getFirst());
            if (at.p() <= RATE / 2) changed = Optional.of(points.get(at.before()).day());
        }
        all.add(new Trend(what, side, member, place, points, slopes.slope(), slopes.low(), slopes.high(), few ? 1 : test.p(), few ? Way.TOO_FEW : Way.NO_TREND, changed, "", basis));
    }

    /// Each with its probability stepped up over all that were tested, and said.
    private List<Trend> said() {
        List<Trend> tested = all.stream().filter(one -> one.way() != Way.TOO_FEW).sorted(Comparator.comparingDouble(Trend::p)).toList();
        Map<Trend, Double> adjusted = new java.util.IdentityHashMap<>();
        double least = 1;
        for (int rank = tested.size(); rank >= 1; rank--) {
            least = Math.min(least, tested.get(rank - 1).p() * tested.size() / rank);
            adjusted.put(tested.get(rank - 1), least);
        }
        return all.stream().map(one -> said(one, adjusted.getOrDefault(one, 1.0))).toList();
    }

    private Trend said(Trend one, double p) {
        boolean stands = one.way() != Way.TOO_FEW && p <= RATE && one.low() * one.high() > 0;
        Way way = one.way() == Way.TOO_FEW ? Way.TOO_FEW : !stands ? Way.NO_TREND : one.slope() > 0 ? Way.RISING : Way.FALLING;
        Trend.Point last = one.points().getLast();
        double least = Math.min(Math.abs(one.low()), Math.abs(one.high())), most = Math.max(Math.abs(one.low()), Math.abs(one.high()));
        String rate = amount(one.what(), Math.abs(one.slope())) + " a year (" + (one.what() == What.MOISTURE ? Words.number(100 * least, 1) : amount(one.what(), least)) + " to "
                + (one.what() == What.MOISTURE ? Words.number(100 * most, 1) : amount(one.what(), most)) + ")";
        boolean wet = one.what() == What.MOISTURE && last.value() - last.expected() > STILL_WET;
        String words = Words.sentence(one.place()) + ": " + switch (way) {
            case TOO_FEW -> Words.count(one.points().size(), "walk") + " are too few to tell a trend.";
            case NO_TREND -> (wet ? "stays wet; " : "") + "no trend that stands out of the noise" + (one.what() == What.PAINT ? "." : ", within " + amount(one.what(), most) + " a year.");
            case RISING -> (one.what() == What.MOISTURE ? "grows wetter by " : one.what() == What.DEPTH ? "goes deeper by " : "more signs of failing by ") + rate + ".";
            case FALLING -> (one.what() == What.MOISTURE ? "grows drier by " : one.what() == What.DEPTH ? "reads shallower by " : "fewer signs of failing by ") + rate + ".";
        } + one.changed().map(day -> " Its level changed before " + Words.day(day) + ".").orElse("")
                + (one.what() == What.DEPTH && !Double.isNaN(last.expected()) ? " Now " + Words.length(last.value(), units) + " deep in the mean, " + Words.length(last.expected(), units) + " by the forecast." : "")
                + (one.what() == What.MOISTURE ? " Last " + Words.percent(last.value()) + " where dry wood shows " + Words.percent(last.expected()) + (past.tells(last.day()) ? " in the weather since." : ".") : "");
        return new Trend(one.what(), one.side(), one.member(), one.place(), one.points(), one.slope(), one.low(), one.high(), p, way, one.changed(), words, one.basis());
    }

    private String amount(What what, double value) {
        return switch (what) {
            case MOISTURE -> Words.number(100 * value, 1).equals("1") ? "1 point" : Words.number(100 * value, 1) + " points";
            case DEPTH -> Words.length(value, units);
            case PAINT -> Words.number(value, 1);
        };
    }
}
