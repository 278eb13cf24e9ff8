package sillwright.watch;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import sillwright.measure.Basis;
import sillwright.walk.Building;
import sillwright.walk.Member;
import sillwright.walk.Survey;
import sillwright.wood.Retrace;
import sillwright.wood.drying.Transport;
import sillwright.wood.weather.Normals;
import sillwright.wood.weather.Since;

/// What wood that no source wets would have shown on each day it was metered: by the wetting model in the weather since, where that is told; else by the normals.
public final class Past {
    static final Basis BASIS = Basis.own("where the weather since is told, the wetting model run with it says what dry wood would hold; else the resting moisture of the month before, by the normals");
    private static final double NO_NORMALS = 0.13, KNOWN = 0.012, NOT_KNOWN = 0.02;

    private final Optional<Building> building;
    private final Since since;
    private final Optional<Retrace> trace;

    private Past(Optional<Building> building, Since since, Optional<Retrace> trace) {
        this.building = building;
        this.since = since;
        this.trace = trace;
    }

    /// By the normals alone.
    public static Past of(Survey survey) { return new Past(survey.building(), Since.NOTHING, Optional.empty()); }

    /// In plain Java.
    static Past of(Survey survey, Since since, long seed) { return of(survey, since, seed, Transport.PLAIN); }

    /// @param seed for the hours that must be drawn
    public static Past of(Survey survey, Since since, long seed, Transport transport) {
        Optional<Normals> normals = survey.building().flatMap(Normals::of);
        if (since.isEmpty() || normals.isEmpty() || survey.moistures().isEmpty()) return of(survey);
        Map<String, Member> metered = new LinkedHashMap<>();
        LocalDate first = LocalDate.MAX, last = LocalDate.MIN;
        for (var noted : survey.moistures()) {
            Member member = survey.members().get(noted.what().spot().member());
            metered.put(member.id(), member);
            LocalDate day = Series.dayOf(noted.wallMs());
            first = day.isBefore(first) ? day : first;
            last = day.isAfter(last) ? day : last;
        }
        return new Past(survey.building(), since, Optional.of(Retrace.of(List.copyOf(metered.values()), since, normals.get(), first, last, seed, transport)));
    }

    /// Whether the weather of the month before a day was told.
    boolean tells(LocalDate day) { return trace.isPresent() && since.tells(day.minusDays(15)); }

    /// What a member would hold on a day.
    double rest(Member member, LocalDate day) {
        if (tells(day)) return trace.orElseThrow().at(member.id(), day);
        return Seasons.atRest(building, day).orElse(NO_NORMALS);
    }

    /// How unsure that is for a whole walk, one standard deviation, where no dry place says how the walk stood.
    double doubt() { return building.map(Building::months).filter(months -> !months.isEmpty()).isPresent() ? KNOWN : NOT_KNOWN; }
}
