package sillwright.wood;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import sillwright.walk.Member;
import sillwright.wood.drying.Air;
import sillwright.wood.drying.Stack;
import sillwright.wood.drying.Transport;
import sillwright.wood.weather.Normals;
import sillwright.wood.weather.Since;
import sillwright.wood.weather.Weather;

/// What each member would have held, day by day in the weather that was, had no source of water wetted it: the wetting model with the rain of its open place alone.
public final class Retrace {
    private static final int SLICES = 16;
    private static final double AT_FIRST = 0.14;

    private final LocalDate first;
    private final Map<String, double[]> days = new LinkedHashMap<>();

    private Retrace(LocalDate first) { this.first = first; }

    /// @param from  the first day that is asked of; a year before it is run to settle the wood
    /// @param until the last
    /// @param seed  for what must be drawn
    public static Retrace of(List<Member> members, Since since, Normals normals, LocalDate from, LocalDate until, long seed, Transport transport) {
        int firstYear = from.getYear() - 1;
        Retrace trace = new Retrace(LocalDate.of(firstYear, 1, 1));
        if (members.isEmpty()) return trace;
        List<Wetting> open = members.stream().map(Exposures::open).toList();
        List<Weather> weathers = since.drawn(normals, firstYear, until.getYear(), seed);
        for (Member member : members) trace.days.put(member.id(), new double[365 * (until.getYear() - firstYear + 1)]);
        for (Weather weather : weathers) trace.run(open, weather, weathers.size(), transport);
        return trace;
    }

    private void run(List<Wetting> open, Weather weather, int of, Transport transport) {
        Air air = new Air(weather.hours());
        for (int h = 0; h < weather.hours(); h++) air.set(h, weather.tempC[h], weather.humidity[h], weather.rainMm(h));
        Stack stack = new Stack(SLICES, open.size(), 3600);
        List<double[]> into = new ArrayList<>();
        for (int m = 0; m < open.size(); m++) {
            Outlooks.lay(stack, m, open.get(m), Outlooks.In.STOPPED, AT_FIRST);
            into.add(days.get(open.get(m).member().id()));
        }
        for (int day = 0; day < weather.hours() / 24; day++) {
            transport.hours(stack, air, 24 * day, 24 * day + 24);
            for (int m = 0; m < open.size(); m++) into.get(m)[day] += Outlooks.pins(stack, m, open.get(m)) / of;
        }
    }

    /// Moisture where a meter's pins reach, on a day that was asked of. A leap day has the day's before it.
    ///
    /// @throws IllegalArgumentException for a member or a day that was not worked
    public double at(String member, LocalDate day) {
        double[] all = days.get(member);
        int at = 365 * (day.getYear() - first.getYear()) + Math.min(364, day.getDayOfYear() - 1);
        if (all == null || at < 0 || at >= all.length) throw new IllegalArgumentException(member + " on " + day + " was not worked");
        return all[at];
    }
}
