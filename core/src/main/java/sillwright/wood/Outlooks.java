package sillwright.wood;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;

import sillwright.measure.Basis;
import sillwright.measure.Memo;
import sillwright.measure.SplitMix;
import sillwright.walk.Member;
import sillwright.walk.Species;
import sillwright.wood.drying.Air;
import sillwright.wood.drying.Dose;
import sillwright.wood.drying.Skin;
import sillwright.wood.drying.Stack;
import sillwright.wood.drying.Timber;
import sillwright.wood.drying.Transport;
import sillwright.wood.weather.Normals;
import sillwright.wood.weather.Weather;
import sillwright.wood.weather.WeatherMaker;

/// Works the outlook of many members together: one weather, one stack through the thickness and one along the grain behind the wetted ends.
public final class Outlooks {
    private static final int YEARS = 8, STARTS = 6, SLICES = 16;
    private static final double AT_FIRST = 0.16, END_M = 0.4;

    /// What the wood is taken to be in: its water as it is, its water stopped, or its coat taken off at the place and a sheet hung before it that keeps rain out and lets air by.
    enum In { WATER, STOPPED, OPENED }

    private final List<Wetting> wettings;
    private final Transport transport;
    private final Weather weather;
    private final Air air;
    /// Rows of the stacks: first each member through its thickness, then those with a wetted end.
    private final List<Integer> endOf = new ArrayList<>();
    private final int pieces;

    private Outlooks(List<Wetting> wettings, Weather weather, Air air, Transport transport) {
        this.wettings = wettings;
        this.transport = transport;
        this.weather = weather;
        this.air = air;
        for (int m = 0; m < wettings.size(); m++) if (wettings.get(m).now().wetsAnEnd() || wettings.get(m).stopped().wetsAnEnd()) endOf.add(m);
        pieces = wettings.size() + endOf.size();
    }

    /// The outlook of each, in their order, in plain Java, by one hand.
    public static List<Outlook> of(List<Wetting> wettings, Normals normals, int startDay, double limit, RandomGenerator random) {
        return of(wettings, normals, startDay, limit, random, Transport.PLAIN, Memo.NONE);
    }

    /// The outlook of each, in their order.
    ///
    /// @param startDay  the day of the year on which the water is stopped, 0 to 364
    /// @param limit     the moisture to be reached before treatment, a fraction
    /// @param random    the same state gives the same outlooks
    /// @param transport what moves the moisture
    /// @param hands     members are parted among them by their place in the list; however many there are, the answer is the same to the last digit
    public static List<Outlook> of(List<Wetting> wettings, Normals normals, int startDay, double limit, RandomGenerator random, Transport transport, Memo hands) {
        if (wettings.isEmpty()) return List.of();
        Weather weather = WeatherMaker.years(normals, YEARS + 2, random);
        Air air = air(weather);
        long seed = random.nextLong();
        int parts = Math.min(hands.hands(), wettings.size());
        List<Outlook> all = new ArrayList<>();
        for (List<Outlook> part : hands.sideBySide(parts, p ->
                new Outlooks(wettings.subList(wettings.size() * p / parts, wettings.size() * (p + 1) / parts), weather, air, transport).work(startDay, limit, seed))) all.addAll(part);
        return all;
    }

    private List<Outlook> work(int startDay, double limit, long seed) {
        Stack asIs = stack(In.WATER), stopped = stack(In.STOPPED);
        Log now = new Log(YEARS), dry = new Log(YEARS);
        double[][] dryDown = new double[pieces][STARTS], opened = new double[pieces][STARTS], firstYear = new double[pieces][STARTS];
        run(asIs, 0, 365, null);
        java.util.Arrays.fill(asIs.wetHours, 0);
        for (int year = 0; year < YEARS; year++) {
            int day = 365 * (year + 1);
            run(asIs, day, day + startDay, now.in(year));
            if (year < STARTS) {
                dry(asIs, In.STOPPED, day + startDay, year, limit, dryDown, firstYear);
                dry(asIs, In.OPENED, day + startDay, year, limit, opened, new double[pieces][STARTS]);
            }
            run(asIs, day + startDay, day + 365, now.in(year));
        }
        run(stopped, 0, 365, null);
        java.util.Arrays.fill(stopped.wetHours, 0);
        for (int year = 0; year < YEARS; year++) run(stopped, 365 * (year + 1), 365 * (year + 2), dry.in(year));
        List<Outlook> all = new ArrayList<>();
        for (int m = 0; m < wettings.size(); m++) {
            // Each draws for itself: one member more or less changes no other's outlook.
            RandomGenerator own = new SplitMix(seed ^ wettings.get(m).member().id().hashCode() * 0x9E3779B97F4A7C15L);
            int end = endOf.indexOf(m), there = end >= 0 && now.total(wettings.size() + end) >= now.total(m) ? wettings.size() + end : m;
            all.add(outlook(m, there, asIs, stopped, now, dry, dryDown[there], opened[there], firstYear[there], limit, own));
        }
        return all;
    }

    /// What is left of the wetting of each, in their order, with only the rest of its water stopped: `stopped` of a wetting is what still comes.
    static List<Left> left(List<Wetting> wettings, Normals normals, RandomGenerator random, Transport transport) {
        if (wettings.isEmpty()) return List.of();
        Weather weather = WeatherMaker.years(normals, YEARS + 2, random);
        return new Outlooks(wettings, weather, air(weather), transport).left(random.nextLong());
    }

    private static Air air(Weather weather) {
        Air air = new Air(weather.hours());
        for (int h = 0; h < weather.hours(); h++) air.set(h, weather.tempC[h], weather.humidity[h], weather.rainMm(h));
        return air;
    }

    /// @param hours with liquid water in a mean year
    record Left(double hours, double moisture, Forecast forecast) {}

    private List<Left> left(long seed) {
        Stack stack = stack(In.STOPPED);
        Log log = new Log(YEARS);
        run(stack, 0, 365, null);
        java.util.Arrays.fill(stack.wetHours, 0);
        for (int year = 0; year < YEARS; year++) run(stack, 365 * (year + 1), 365 * (year + 2), log.in(year));
        List<Left> all = new ArrayList<>();
        for (int m = 0; m < wettings.size(); m++) {
            Wetting wetting = wettings.get(m);
            int end = endOf.indexOf(m), there = end >= 0 && log.total(wettings.size() + end) >= log.total(m) ? wettings.size() + end : m;
            RandomGenerator own = new SplitMix(seed ^ wetting.member().id().hashCode() * 0x9E3779B97F4A7C15L);
            double resistance = Dose.resistance(Species.orCareful(wetting.member().species()).durability());
            all.add(new Left(stack.wetHours[there] / YEARS, log.moisture[there] / log.days, Forecast.of(wetting.rating(), new double[0], log.doses(there), resistance, own)));
        }
        return all;
    }

    private Outlook outlook(int m, int piece, Stack asIs, Stack stopped, Log now, Log dry, double[] dryDown, double[] opened, double[] firstYear, double limit, RandomGenerator random) {
        Wetting wetting = wettings.get(m);
        Species species = Species.orCareful(wetting.member().species());
        double resistance = Dose.resistance(species.durability());
        List<Basis> basis = new ArrayList<>(Timber.BASIS);
        basis.addAll(Skin.BASIS);
        basis.addAll(Dose.BASIS);
        basis.addAll(Dose.RESISTANCE);
        basis.addAll(WeatherMaker.BASIS);
        return new Outlook(wetting.member().id(), asIs.wetHours[piece] / YEARS, now.moisture[piece] / now.days, now.damp[piece] / YEARS, Forecast.spread(dryDown),
                inAYear(dryDown), Forecast.spread(opened), inAYear(opened), limit, Forecast.of(wetting.rating(), new double[0], now.doses(piece), resistance, random),
                Forecast.of(wetting.rating(), firstYear, dry.doses(piece), resistance, random), stopped.wetHours[piece] / YEARS, dry.moisture[piece] / dry.days, piece != m, basis);
    }

    private static double inAYear(double[] dryDown) {
        int dried = 0;
        for (double days : dryDown) if (days < Outlook.LONGEST_DAYS) dried++;
        return dried / (double) STARTS;
    }

    /// Sums of days, by piece.
    private final class Log {
        final double[][] dose;
        final double[] moisture = new double[pieces];
        final double[] damp = new double[pieces];
        int days;
        int year;

        Log(int years) { dose = new double[years][pieces]; }

        Log in(int year) {
            this.year = year;
            return this;
        }

        double[] doses(int piece) {
            double[] all = new double[dose.length];
            for (int y = 0; y < all.length; y++) all[y] = dose[y][piece];
            return all;
        }

        double total(int piece) {
            double sum = moisture[piece] / days * 1e-6;
            for (double[] one : dose) sum += one[piece];
            return sum;
        }

        void day(Stack stack, double tempC) {
            days++;
            for (int p = 0; p < pieces; p++) {
                double u = skin(stack, p), one = Dose.day(u, tempC);
                moisture[p] += u;
                dose[year][p] += one;
                if (one > 0) damp[p]++;
            }
        }
    }

    private void run(Stack stack, int fromDay, int toDay, Log log) {
        if (log == null) {
            transport.hours(stack, air, 24 * fromDay, 24 * toDay);
            return;
        }
        for (int day = fromDay; day < toDay; day++) {
            transport.hours(stack, air, 24 * day, 24 * day + 24);
            log.day(stack, dayC(day));
        }
    }

    private double dayC(int day) {
        double sum = 0;
        for (int h = 24 * day; h < 24 * day + 24; h++) sum += weather.tempC[h];
        return sum / 24;
    }

    /// The water is stopped on a day, with the wood as wet as it then is, or as the meter said it is; followed for a year, or opened until all of it is dry.
    private void dry(Stack asIs, In in, int fromDay, int start, double limit, double[][] days, double[][] doses) {
        Stack stack = stack(in);
        int wet = 0;
        for (int p = 0; p < pieces; p++) {
            stack.take(p, asIs, p);
            days[p][start] = Outlook.LONGEST_DAYS;
            Optional<Double> measured = wettings.get(member(p)).measured();
            if (measured.isPresent()) {
                double factor = measured.get() / skin(stack, p);
                for (int i = 0; i < SLICES; i++) stack.moisture[i][p] = Math.min(stack.full[p], stack.moisture[i][p] * factor);
            }
            if (Math.max(skin(stack, p), stack.mean(p)) <= limit) days[p][start] = 0;
            else wet++;
        }
        for (int day = 0; day < Outlook.LONGEST_DAYS && (wet > 0 || in != In.OPENED); day++) {
            transport.hours(stack, air, 24 * (fromDay + day), 24 * (fromDay + day) + 24);
            double tempC = dayC(fromDay + day);
            for (int p = 0; p < pieces; p++) {
                double u = skin(stack, p);
                doses[p][start] += Dose.day(u, tempC);
                if (days[p][start] == Outlook.LONGEST_DAYS && Math.max(u, stack.mean(p)) <= limit) {
                    days[p][start] = day + 1;
                    wet--;
                }
            }
        }
    }

    private int member(int piece) { return piece < wettings.size() ? piece : endOf.get(piece - wettings.size()); }

    /// Moisture where it counts: 5 to 25 mm behind the near face, or 10 to 40 mm behind the end. This program's own choice: where pins reach and rot begins.
    private double skin(Stack stack, int piece) {
        return piece >= wettings.size() ? stack.between(piece, 0.010, 0.040) : pins(stack, piece, wettings.get(piece));
    }

    /// Moisture 5 to 25 mm behind the near face of a piece.
    static double pins(Stack stack, int piece, Wetting wetting) {
        double throughM = throughM(wetting);
        return stack.between(piece, Math.min(0.005, throughM / 4), Math.min(0.025, throughM * 3 / 4));
    }

    private Stack stack(In in) {
        Stack stack = new Stack(SLICES, pieces, 3600);
        for (int m = 0; m < wettings.size(); m++) lay(stack, m, wettings.get(m), in, AT_FIRST);
        for (int e = 0; e < endOf.size(); e++) {
            Wetting wetting = wettings.get(endOf.get(e));
            Member member = wetting.member();
            Species species = Species.orCareful(member.species());
            Timber along = Timber.of(species, Timber.Grain.ALONG), across = Timber.of(species, Timber.Grain.ACROSS);
            int piece = wettings.size() + e;
            stack.lay(piece, along, Math.min(END_M, member.lengthMm() / 1000), end(wetting, along, in), Skin.SEALED, 1.25, AT_FIRST);
            Skin beside = Skin.outside(coat(member, in), across);
            stack.lose(piece, across, beside, member.widthMm() / 1000);
            stack.lose(piece, across, beside, member.depthMm() / 1000);
        }
        return stack;
    }

    /// A member through its thickness, between the face that is wetted and the one opposite.
    static void lay(Stack stack, int piece, Wetting wetting, In in, double atFirst) {
        Timber timber = Timber.of(Species.orCareful(wetting.member().species()), Timber.Grain.ACROSS);
        Member.Face near = near(wetting);
        stack.lay(piece, timber, throughM(wetting), skin(wetting, timber, near, in), skin(wetting, timber, Member.opposite(near), in), 1.5, atFirst);
        stack.lose(piece, timber, Skin.outside(coat(wetting.member(), in), timber), wetting.member().acrossMm(near) / 1000);
    }

    private static Member.Coat coat(Member member, In in) { return in == In.OPENED ? Member.Coat.NONE : member.coat(); }

    private static Exposure exposure(Wetting wetting, In in) {
        return switch (in) {
            case WATER -> wetting.now();
            case STOPPED -> wetting.stopped();
            case OPENED -> Exposure.DRY;
        };
    }

    private static Skin skin(Wetting wetting, Timber timber, Member.Face face, In in) {
        Exposure exposure = exposure(wetting, in);
        Skin skin = Skin.outside(coat(wetting.member(), in), timber);
        return exposure.wets(face) ? skin.wetted(exposure.share(), exposure.standingHours()) : skin;
    }

    /// The wetted end; of two, the barer.
    private static Skin end(Wetting wetting, Timber along, In in) {
        Exposure exposure = exposure(wetting, in), any = wetting.now().wetsAnEnd() ? wetting.now() : wetting.stopped();
        Member member = wetting.member();
        Member.EndGrain grain = !any.startEnd() || any.farEnd() && member.farEnd().compareTo(member.startEnd()) < 0 ? member.farEnd() : member.startEnd();
        Skin skin = switch (grain) {
            case BARE -> Skin.outside(Member.Coat.NONE, along);
            case COATED -> Skin.outside(in == In.OPENED ? Member.Coat.NONE : Member.Coat.SOUND, along);
            case COVERED -> new Skin(false, 0, 0, 1, 0, 0, 0);
        };
        return exposure.wetsAnEnd() ? skin.wetted(exposure.share(), exposure.standingHours()) : skin;
    }

    static double throughM(Wetting wetting) { return wetting.member().throughMm(near(wetting)) / 1000; }

    /// The wetted face with the least wood behind it; where none is wetted, the face with the least.
    static Member.Face near(Wetting wetting) {
        Member.Face best = null;
        for (Member.Face face : wetting.member().faces()) {
            boolean wets = wetting.now().wets(face), bestWets = best != null && wetting.now().wets(best);
            if (best == null || wets && !bestWets || wets == bestWets && wetting.member().throughMm(face) < wetting.member().throughMm(best)) best = face;
        }
        return best;
    }
}
