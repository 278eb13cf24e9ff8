package sillwright.watch;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import sillwright.walk.Member;
import sillwright.walk.MoistureReading;
import sillwright.walk.Spot;
import sillwright.walk.Survey;
import sillwright.wood.moisture.Moisture;

/// The meter readings of one place in the order of time: those on one face within 6 in of the first.
///
/// @param spot   of the first
/// @param points one for each walk, or each fortnight of a logger
record Series(Member member, Spot spot, List<Point> points) {
    Series { points = List.copyOf(points); }

    /// @param moisture corrected for the wood's temperature, a fraction; what a meter shows above fibre saturation counts as [#FULL]
    record Point(long wallMs, double moisture) {
        LocalDate day() { return dayOf(wallMs); }
    }

    /// Above this a pin meter only tells that wood is wet.
    static final double FULL = 0.32;
    private static final int BY_HAND = 4;

    static LocalDate dayOf(long wallMs) { return Instant.ofEpochMilli(wallMs).atZone(ZoneOffset.UTC).toLocalDate(); }

    /// Every place that was metered, in the order they were first.
    static List<Series> of(Survey survey) {
        List<Spot> spots = new ArrayList<>();
        List<List<List<Point>>> walks = new ArrayList<>();
        for (Survey.Noted<MoistureReading> noted : survey.moistures().stream().sorted(Comparator.comparingLong(Survey.Noted::wallMs)).toList()) {
            MoistureReading reading = noted.what();
            int at = 0;
            while (at < spots.size() && !Survey.samePlace(spots.get(at), reading.spot())) at++;
            if (at == spots.size()) {
                spots.add(reading.spot());
                walks.add(new ArrayList<>());
            }
            add(walks.get(at), new Point(noted.wallMs(), Math.min(FULL, corrected(reading))));
        }
        List<Series> all = new ArrayList<>();
        for (int i = 0; i < spots.size(); i++) all.add(new Series(survey.members().get(spots.get(i).member()), spots.get(i), walks.get(i).stream().map(Series::one).toList()));
        return List.copyOf(all);
    }

    private static void add(List<List<Point>> walks, Point point) {
        if (walks.isEmpty() || point.wallMs - walks.getLast().getFirst().wallMs > Survey.ONE_WALK_MS) walks.add(new ArrayList<>());
        walks.getLast().add(point);
    }

    /// What a fortnight comes to: of a few readings by hand the wettest, of a logger's many the middle.
    private static Point one(List<Point> walk) {
        List<Point> sorted = walk.stream().sorted(Comparator.comparingDouble(Point::moisture)).toList();
        return new Point(walk.getFirst().wallMs, walk.size() <= BY_HAND ? sorted.getLast().moisture : Baseline.middle(walk.stream().map(Point::moisture).toList()));
    }

    private static double corrected(MoistureReading reading) {
        double shown = reading.reading().own();
        return reading.wood().map(temp -> Moisture.fromMeter(shown, temp.own())).orElse(shown);
    }

    String key() { return member.id() + "/" + spot.face() + "/" + Math.round(spot.alongMm()); }
}
