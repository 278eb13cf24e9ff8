package sillwright.watch;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;

import sillwright.measure.Basis;
import sillwright.walk.Member;
import sillwright.walk.Survey;

/// What sound wood that no water reaches would show on a walk: season and meter, to be taken out of every reading.
///
/// The season is what dry wood would hold by [Past]: in the weather since, where that is told, else by the normals of the month before. What the meter and that year's weather add is the middle of
/// how far the places that were always dry stand off it on that walk; where fewer than three such places were read, nothing is taken out and the doubt is the greater.
/// Source: own method; the sweep by medians is that of Tukey's median polish (1977, from memory).
final class Baseline {
    static final Basis BASIS = Basis.own("season by the resting moisture of the month before, meter and weather by the middle of the always-dry places of the same walk");
    /// A meter put twice to one place: within about this, one standard deviation. Own choice, of common practice.
    static final double REPEAT = 0.015;
    private static final double ALWAYS_DRY = 0.18, MIDDLE_OF_NORMAL = 1.2533;
    private static final int ENOUGH = 3;

    private final Past past;
    private final List<Series> dry;
    private final double level;
    private final List<Double> own = new ArrayList<>();

    /// @param wetted members that some water under judgement reached: never taken for dry ones
    Baseline(Past past, List<Series> all, Set<String> wetted) {
        this.past = past;
        dry = all.stream().filter(one -> one.points().size() >= 2 && !wetted.contains(one.member().id()) && one.points().stream().allMatch(point -> point.moisture() < ALWAYS_DRY + 0.02)
                && middle(one.points().stream().map(Series.Point::moisture).toList()) < ALWAYS_DRY).toList();
        for (Series one : dry) own.add(middle(one.points().stream().map(point -> point.moisture() - past.rest(one.member(), point.day())).toList()));
        level = own.size() >= ENOUGH ? middle(own) : 0;
    }

    static double middle(List<Double> values) {
        List<Double> sorted = new ArrayList<>(values);
        Collections.sort(sorted);
        int n = sorted.size();
        return n == 0 ? 0 : n % 2 == 1 ? sorted.get(n / 2) : (sorted.get(n / 2 - 1) + sorted.get(n / 2)) / 2;
    }

    /// How far sound dry wood of this building stands off the season in the long run.
    double level() { return level; }

    /// What meter and weather add on the walk around a time, and how sure that is.
    Shift shift(long wallMs) {
        List<Double> off = new ArrayList<>();
        for (int i = 0; i < dry.size(); i++)
            for (Series.Point point : dry.get(i).points())
                if (Math.abs(point.wallMs() - wallMs) <= Survey.ONE_WALK_MS) off.add(point.moisture() - past.rest(dry.get(i).member(), point.day()) - own.get(i));
        if (off.size() < ENOUGH) return new Shift(0, past.doubt(), off.size());
        return new Shift(middle(off), MIDDLE_OF_NORMAL * REPEAT / Math.sqrt(off.size()), off.size());
    }

    /// @param value to be taken off a reading
    /// @param doubt its standard deviation
    /// @param from  how many dry places it rests on
    record Shift(double value, double doubt, int from) {}

    /// A reading with season, weather and meter taken out: 0 for sound dry wood.
    double off(Member member, Series.Point point) { return point.moisture() - past.rest(member, point.day()) - shift(point.wallMs()).value() - level; }

    /// What a dry place of a member should show on the walk around a time.
    double dry(Member member, long wallMs) { return past.rest(member, Series.dayOf(wallMs)) + shift(wallMs).value() + level; }
}
