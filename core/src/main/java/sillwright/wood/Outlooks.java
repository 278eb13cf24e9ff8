package sillwright.wood;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;

import sillwright.measure.Basis;
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
    private static final int YEARS = 8, STOPPED_YEARS = 2, STARTS = 6, SLICES = 16;
    private static final double AT_FIRST = 0.16, END_M = 0.4;

    private final List<Wetting> wettings;
    private final Transport transport;
    private final Weather weather;
    private final Air air;
    /// Rows of the stacks: first each member through its thickness, then those with a wetted end.
    private final List<Integer> endOf = new ArrayList<>();
    private final int pieces;

    private Outlooks(List<Wetting> wettings, Normals normals, RandomGenerator random, Transport transport) {
        this.wettings = wettings;
        this.transport = transport;
        weather = WeatherMaker.years(normals, YEARS + 2, random);
        air = new Air(weather.hours());
        for (int h = 0; h < weather.hours(); h++) air.set(h, weather.tempC[h], weather.humidity[h], weather.rainMm(h));
        for (int m = 0; m < wettings.size(); m++) if (wettings.get(m).now().wetsAnEnd() || wettings.get(m).stopped().wetsAnEnd()) endOf.add(m);
        pieces = wettings.size() + endOf.size();
    }

    /// The outlook of each, in their order, in plain Java.
    public static List<Outlook> of(List<Wetting> wettings, Normals normals, int startDay, double limit, RandomGenerator random) {
        return of(wettings, normals, startDay, limit, random, Transport.PLAIN);
    }

    /// The outlook of each, in their order.
    ///
    /// @param startDay  the day of the year on which the water is stopped, 0 to 364
    /// @param limit     the moisture to be reached before treatment, a fraction
    /// @param random    the same state gives the same outlooks
    /// @param transport what moves the moisture
    public static List<Outlook> of(List<Wetting> wettings, Normals normals, int startDay, double limit, RandomGenerator random, Transport transport) {
        return wettings.isEmpty() ? List.of() : new Outlooks(wettings, normals, random, transport).work(startDay, limit, random);
    }

    private List<Outlook> work(int startDay, double limit, RandomGenerator random) {
        Stack asIs = stack(false), stopped = stack(true);
        Log now = new Log(YEARS), dry = new Log(STOPPED_YEARS);
        double[][] dryDown = new double[pieces][STARTS], firstYear = new double[pieces][STARTS];
        run(asIs, 0, 365, null);
        java.util.Arrays.fill(asIs.wetHours, 0);
        for (int year = 0; year < YEARS; year++) {
            int day = 365 * (year + 1);
            run(asIs, day, day + startDay, now.in(year));
            if (year < STARTS) dry(asIs, day + startDay, year, limit, dryDown, firstYear);
            run(asIs, day + startDay, day + 365, now.in(year));
        }
        run(stopped, 0, 365, null);
        for (int year = 0; year < STOPPED_YEARS; year++) run(stopped, 365 * (year + 1), 365 * (year + 2), dry.in(year));
        List<Outlook> all = new ArrayList<>();
        for (int m = 0; m < wettings.size(); m++) {
            int end = endOf.indexOf(m), there = end >= 0 && now.total(wettings.size() + end) >= now.total(m) ? wettings.size() + end : m;
            all.add(outlook(m, there, asIs, now, dry, dryDown[there], firstYear[there], limit, random));
        }
        return all;
    }

    private Outlook outlook(int m, int piece, Stack asIs, Log now, Log dry, double[] dryDown, double[] firstYear, double limit, RandomGenerator random) {
        Wetting wetting = wettings.get(m);
        Species species = Species.orCareful(wetting.member().species());
        double resistance = Dose.resistance(species.durability());
        List<Basis> basis = new ArrayList<>(Timber.BASIS);
        basis.addAll(Skin.BASIS);
        basis.addAll(Dose.BASIS);
        basis.addAll(Dose.RESISTANCE);
        basis.addAll(WeatherMaker.BASIS);
        int dried = 0;
        for (double days : dryDown) if (days < Outlook.LONGEST_DAYS) dried++;
        return new Outlook(wetting.member().id(), asIs.wetHours[piece] / YEARS, now.moisture[piece] / now.days, now.damp[piece] / YEARS, Forecast.spread(dryDown),
                dried / (double) STARTS, limit, Forecast.of(wetting.rating(), new double[0], now.doses(piece), resistance, random),
                Forecast.of(wetting.rating(), firstYear, dry.doses(piece), resistance, random), piece != m, basis);
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

    /// The water is stopped on a day, with the wood as wet as it then is, or as the meter said it is.
    private void dry(Stack asIs, int fromDay, int start, double limit, double[][] days, double[][] doses) {
        Stack stack = stack(true);
        for (int p = 0; p < pieces; p++) {
            stack.take(p, asIs, p);
            days[p][start] = Outlook.LONGEST_DAYS;
            Optional<Double> measured = wettings.get(member(p)).measured();
            if (measured.isPresent()) {
                double factor = measured.get() / skin(stack, p);
                for (int i = 0; i < SLICES; i++) stack.moisture[i][p] = Math.min(stack.full[p], stack.moisture[i][p] * factor);
            }
            if (Math.max(skin(stack, p), stack.mean(p)) <= limit) days[p][start] = 0;
        }
        for (int day = 0; day < Outlook.LONGEST_DAYS; day++) {
            transport.hours(stack, air, 24 * (fromDay + day), 24 * (fromDay + day) + 24);
            double tempC = dayC(fromDay + day);
            for (int p = 0; p < pieces; p++) {
                double u = skin(stack, p);
                doses[p][start] += Dose.day(u, tempC);
                if (days[p][start] == Outlook.LONGEST_DAYS && Math.max(u, stack.mean(p)) <= limit) days[p][start] = day + 1;
            }
        }
    }

    private int member(int piece) { return piece < wettings.size() ? piece : endOf.get(piece - wettings.size()); }

    /// Moisture where it counts: 5 to 25 mm behind the near face, or 10 to 40 mm behind the end. This program's own choice: where pins reach and rot begins.
    private double skin(Stack stack, int piece) {
        if (piece >= wettings.size()) return stack.between(piece, 0.010, 0.040);
        double throughM = throughM(wettings.get(piece));
        return stack.between(piece, Math.min(0.005, throughM / 4), Math.min(0.025, throughM * 3 / 4));
    }

    private Stack stack(boolean stopped) {
        Stack stack = new Stack(SLICES, pieces, 3600);
        for (int m = 0; m < wettings.size(); m++) {
            Wetting wetting = wettings.get(m);
            Timber timber = Timber.of(Species.orCareful(wetting.member().species()), Timber.Grain.ACROSS);
            Member.Face near = near(wetting), far = Member.opposite(near);
            stack.lay(m, timber, throughM(wetting), skin(wetting, timber, near, stopped), skin(wetting, timber, far, stopped), 1.5, AT_FIRST);
            stack.lose(m, timber, Skin.under(wetting.member().coat(), timber), wetting.member().acrossMm(near) / 1000);
        }
        for (int e = 0; e < endOf.size(); e++) {
            Wetting wetting = wettings.get(endOf.get(e));
            Member member = wetting.member();
            Species species = Species.orCareful(member.species());
            Timber along = Timber.of(species, Timber.Grain.ALONG), across = Timber.of(species, Timber.Grain.ACROSS);
            int piece = wettings.size() + e;
            stack.lay(piece, along, Math.min(END_M, member.lengthMm() / 1000), end(wetting, along, stopped), Skin.SEALED, 1.25, AT_FIRST);
            Skin beside = Skin.under(member.coat(), across);
            stack.lose(piece, across, beside, member.widthMm() / 1000);
            stack.lose(piece, across, beside, member.depthMm() / 1000);
        }
        return stack;
    }

    private static Skin skin(Wetting wetting, Timber timber, Member.Face face, boolean stopped) {
        Exposure exposure = stopped ? wetting.stopped() : wetting.now();
        Skin skin = Skin.under(wetting.member().coat(), timber);
        return exposure.wets(face) ? skin.wetted(exposure.share(), exposure.standingHours()) : skin;
    }

    /// The wetted end; of two, the barer.
    private static Skin end(Wetting wetting, Timber along, boolean stopped) {
        Exposure exposure = stopped ? wetting.stopped() : wetting.now(), any = wetting.now().wetsAnEnd() ? wetting.now() : wetting.stopped();
        Member member = wetting.member();
        Member.EndGrain grain = !any.startEnd() || any.farEnd() && member.farEnd().compareTo(member.startEnd()) < 0 ? member.farEnd() : member.startEnd();
        Skin skin = switch (grain) {
            case BARE -> Skin.under(Member.Coat.NONE, along);
            case COATED -> Skin.under(Member.Coat.SOUND, along);
            case COVERED -> new Skin(false, 0, 0, 1, 0, 0);
        };
        return exposure.wetsAnEnd() ? skin.wetted(exposure.share(), exposure.standingHours()) : skin;
    }

    private static double throughM(Wetting wetting) { return wetting.member().throughMm(near(wetting)) / 1000; }

    /// The wetted face with the least wood behind it; where none is wetted, the face with the least.
    private static Member.Face near(Wetting wetting) {
        Member.Face best = null;
        for (Member.Face face : wetting.member().faces()) {
            boolean wets = wetting.now().wets(face), bestWets = best != null && wetting.now().wets(best);
            if (best == null || wets && !bestWets || wets == bestWets && wetting.member().throughMm(face) < wetting.member().throughMm(best)) best = face;
        }
        return best;
    }
}
