package sillwright.watch;

import module java.base;

import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.walk.*;
import sillwright.walk.WorkDone.Done;
import sillwright.work.Months;

/// Five years of rounds on an invented house whose truth is known: a remedy that works, never worked, stopped a part of the water, or failed later.
///
/// Moisture does not follow the program's own filter: wet wood swings with the season, the meter has a bias on each walk, each place stands off in its own
/// way, the year's weather differs from the normals, wood dries faster or slower than computed, and now and then a number is written down wrong.
final class Histories {
    enum Truth { WORKS, NEVER, PARTLY, LATER }

    /// @param failsMs when the water comes again; the largest where it never does
    record History(Survey survey, Truth truth, long doneMs, long failsMs, List<Long> walks) {
        Survey until(long wallMs) {
            return new Survey(survey.building(), survey.sides(), survey.members(), List.of(), survey.moistures().stream().filter(one -> one.wallMs() <= wallMs).toList(),
                    survey.sightings(), List.of(), survey.works().stream().filter(one -> one.wallMs() <= wallMs).toList(), List.of(), survey.entries());
        }
    }

    private static final long DAY = 86_400_000L;

    private Histories() {}

    private static Quantity q(String text, Kind kind) { return Quantity.read(text, kind); }

    private static Member board(String id, String side, double thickMm, int at, Member.Coat coat) {
        return new Member(id, side, MemberKind.CASING, "board " + id, Member.Role.SHEDS_WATER, "pine-eastern-white", Member.Run.UPRIGHT, q("120 mm", Kind.LENGTH),
                q(Math.round(thickMm) + " mm", Kind.LENGTH), q("2400 mm", Kind.LENGTH), q(200 + 300 * at + " mm", Kind.LENGTH), q("400 mm", Kind.LENGTH), Optional.empty(),
                Member.EndGrain.COVERED, Member.EndGrain.COVERED, coat, Member.Contact.NONE);
    }

    private static Side side(String id, String bearing) {
        return new Side(id, id, q(bearing, Kind.ANGLE), q("12 m", Kind.LENGTH), List.of(), new Side.Ground(Side.Surface.GRASS, Optional.empty(), Optional.empty()), Optional.empty(), List.of());
    }

    static History of(Truth truth, RandomGenerator random) {
        List<Building.Month> months = Months.chicago();
        Building building = new Building("invented", "Invented house", "invented for a test", 1890, Optional.empty(), Optional.empty(), months);
        Side south = side("south", "180deg"), north = side("north", "0deg");
        int wet = 1 + random.nextInt(3), dry = random.nextInt(6);
        double thick = random.nextDouble(18, 60);
        Map<String, Member> members = new LinkedHashMap<>();
        Member.Coat coat = random.nextBoolean() ? Member.Coat.FAILING : Member.Coat.NONE;
        for (int i = 0; i < wet; i++) members.put("s" + i, board("s" + i, "south", thick, i, coat));
        for (int i = 0; i < dry; i++) members.put("n" + i, board("n" + i, "north", thick, i, Member.Coat.SOUND));
        LocalDate first = LocalDate.of(2021, 4, 8).plusDays(random.nextInt(20));
        List<LocalDate> walks = new ArrayList<>();
        for (int year = 0; year < 6; year++) {
            walks.add(first.plusYears(year).plusDays(random.nextInt(-8, 9)));
            walks.add(LocalDate.of(2021 + year, 11, 3).plusDays(random.nextInt(-10, 11)));
        }
        LocalDate done = random.nextBoolean() ? walks.get(0).plusDays(random.nextInt(20, 90)) : walks.get(1).plusDays(random.nextInt(10, 60));
        long doneMs = ms(done.plusDays(1)) - 1;
        long failsMs = switch (truth) {
            case WORKS -> Long.MAX_VALUE;
            case NEVER, PARTLY -> doneMs;
            case LATER -> doneMs + random.nextLong(500, 1300) * DAY;
        };
        double left = truth == Truth.PARTLY ? random.nextDouble(0.55, 0.8) : 1;
        List<Survey.Noted<MoistureReading>> readings = new ArrayList<>();
        List<Long> times = new ArrayList<>();
        double[] off = random.doubles(wet + dry).map(_ -> 0.008 * random.nextGaussian()).toArray();
        double[] excess = random.doubles(wet).map(u -> 0.08 + 0.08 * u).toArray();
        double half = Drying.halfDays(members.get("s0"), 0.26, Optional.of(building)) * random.nextDouble(0.6, 1.7);
        for (LocalDate walk : walks) {
            long at = ms(walk) + 10 * 3_600_000L;
            times.add(at);
            double meter = 0.01 * random.nextGaussian() + 0.008 * random.nextGaussian(), season = Seasons.atRest(Optional.of(building), walk).orElseThrow();
            double swing = walk.getMonthValue() < 7 ? 1.15 : 0.9;
            int i = 0;
            for (Member member : members.values()) {
                double over = 0;
                if (member.side().equals("south")) {
                    double sinceFail = (at - failsMs) / (double) DAY, since = (at - doneMs) / (double) DAY, full = excess[i] * swing * Math.exp(0.12 * random.nextGaussian());
                    if (since <= 0) over = full;
                    else if (sinceFail > 0) over = Math.max(full * left * (truth == Truth.LATER ? 1 - Math.pow(0.5, sinceFail / 30) : 1), 0);
                    else over = excess[i] * Math.pow(0.5, since / half);
                }
                double shown = season + over + off[i] + meter + 0.012 * random.nextGaussian();
                if (random.nextInt(150) == 0) shown += random.nextBoolean() ? 0.1 : -0.06;
                shown = Math.clamp(shown, 0.06, 0.45);
                readings.add(new Survey.Noted<>("r" + readings.size(), at, new MoistureReading(new Spot(member.id(), Member.Face.FRONT, q("150 mm", Kind.LENGTH), q("60 mm", Kind.LENGTH)),
                        q(Math.round(100 * shown) + "%", Kind.PERCENT), Optional.empty(), Optional.empty())));
                i++;
            }
        }
        List<Survey.Noted<WorkDone>> works = new ArrayList<>();
        for (int i = 0; i < wet; i++) works.add(new Survey.Noted<>("w" + i, doneMs, new WorkDone(Done.STOP_WATER, done, "south", Optional.of("s" + i), Optional.empty(), Optional.empty(),
                Optional.of("joint-open"), "", Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), "")));
        Map<String, Side> sides = new LinkedHashMap<>();
        sides.put("south", south);
        sides.put("north", north);
        return new History(new Survey(Optional.of(building), sides, members, List.of(), readings, List.of(), List.of(), works, List.of(), readings.size()), truth, doneMs, failsMs, times);
    }

    private static long ms(LocalDate day) { return day.toEpochDay() * DAY; }
}
