package sillwright.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import sillwright.measure.Quantity;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Building;
import sillwright.walk.Building.Month;
import sillwright.walk.Member;
import sillwright.walk.Side;
import sillwright.walk.Side.Downspout;
import sillwright.walk.Side.Edge;
import sillwright.walk.Side.RoofEdge;
import sillwright.walk.Survey;
import sillwright.water.Circumstance.Here;

import static sillwright.water.Circumstance.*;

/// Reads off the survey which circumstances hold on a side, at a roof edge, at a downspout, at a member.
final class Circumstances {
    /// Under this an overhang hardly shelters; this and more keeps most rain and splash from a wall. Own choice between the
    /// overhangs that the trade speaks of, 12 and 24 in.
    private static final double NARROW_MM = 203, WIDE_MM = 610;
    /// The longest run to one outlet: 50 ft (read, public notes on gutters).
    private static final double LONG_MM = 50 * 304.8;

    /// Snow fallen in a year that lies on roofs for weeks, 40 in; and so little, 6 in, that it hardly does. Own choice.
    private static final double SNOWY_MM = 1016, HARDLY_SNOW_MM = 152;

    /// Hours a year in which an unfilled wall's boards are colder than a usual room's dew point, above which damp from indoors is likelier than usual, and under which it is rare. Own choice.
    private static final double CONDENSES_LONG_H = 800, CONDENSES_HARDLY_H = 200;

    private final Survey survey;
    private final Units units;

    Circumstances(Survey survey, Units units) {
        this.survey = survey;
        this.units = units;
    }

    /// From the ground to the lowest wood: as measured, else the lowest member of the wall that was listed.
    static Optional<Double> clearanceMm(Survey survey, Side side) {
        Optional<Double> measured = side.ground().clearance().map(Quantity::own);
        if (measured.isPresent()) return measured;
        return survey.membersOn(side.id()).stream().filter(member -> !Exposed.inFront(member)).map(member -> Box.of(member).lowMm()).min(Double::compare);
    }

    List<Here> ofSide(Side side) {
        List<Here> here = new ArrayList<>();
        clearanceMm(survey, side).ifPresent(clearance -> clearance(clearance, side, here));
        side.ground().fall().ifPresent(fall -> {
            if (fall.own() < 0) here.add(new Here(FALLS_TO_WALL, ""));
            else if (fall.own() >= 0.05 - 1e-9) here.add(new Here(FALLS_AWAY, ""));
        });
        switch (side.ground().surface()) {
            case PAVING -> here.add(new Here(PAVED, ""));
            case GRAVEL -> here.add(new Here(GRAVELLED, ""));
            case MULCH -> here.add(new Here(MULCHED, ""));
            case SOIL, GRASS -> {}
        }
        if (!side.edges().isEmpty()) roof(side.edges().getFirst(), here);
        double bearing = side.bearing().own();
        if (bearing >= 135 && bearing <= 315) here.add(new Here(WEATHER_SIDE, bearing < 225 ? "south" : "west"));
        survey.building().map(Building::months).filter(months -> !months.isEmpty()).ifPresent(months -> climate(months, here));
        contacts(side, here);
        return here;
    }

    private void clearance(double clearance, Side side, List<Here> here) {
        String value = Words.length(clearance, units);
        if (clearance < 25) here.add(new Here(CLEARANCE_NONE, value));
        if (clearance < Splash.codeMm(side.ground().surface()) - 0.05) here.add(new Here(CLEARANCE_BELOW_CODE, value));
        else here.add(new Here(clearance < Splash.standardMm(side.ground().surface()) - 0.05 ? CLEARANCE_IN_SPLASH : CLEARANCE_AMPLE, value));
    }

    private void roof(RoofEdge edge, List<Here> here) {
        double overhang = edge.overhang().own();
        if (overhang < NARROW_MM - 0.5) here.add(new Here(OVERHANG_NARROW, Words.length(overhang, units)));
        if (overhang >= WIDE_MM - 0.5) here.add(new Here(OVERHANG_WIDE, Words.length(overhang, units)));
        if (edge.kind() == Edge.RAKE) here.add(new Here(GABLE, ""));
    }

    private void climate(List<Month> months, List<Here> here) {
        double coldest = months.stream().mapToDouble(Month::meanC).min().orElseThrow();
        double low = months.stream().mapToDouble(month -> month.meanLow().own()).min().orElseThrow();
        if (coldest <= -5.5) here.add(new Here(COLD_WINTERS, Words.temperature(coldest, units)));
        if (low > 0) here.add(new Here(MILD_WINTERS, Words.temperature(low, units)));
        double snow = months.stream().mapToDouble(month -> month.snow().own()).sum();
        if (coldest < 0 && snow >= SNOWY_MM) here.add(new Here(SNOWY_WINTERS, Words.length(snow, units)));
        if (low <= 0 && snow > 0 && snow < HARDLY_SNOW_MM) here.add(new Here(LITTLE_SNOW, Words.length(snow, units)));
        double cold = ColdWall.hours(months).stream().mapToDouble(hours -> hours).sum();
        if (cold >= CONDENSES_LONG_H) here.add(new Here(CONDENSES_LONG, Words.significant(cold, 2)));
        if (cold < CONDENSES_HARDLY_H) here.add(new Here(CONDENSES_HARDLY, Words.number(10 * Math.ceil((cold + 1) / 10), 0)));
        double index = DrivingRain.yearlyIndex(months);
        if (index >= 7) here.add(new Here(DRIVING_RAIN_SEVERE, Words.number(index, 1)));
        if (index < 3) here.add(new Here(DRIVING_RAIN_SLIGHT, Words.number(index, 1)));
    }

    private void contacts(Side side, List<Here> here) {
        first(side, Member.Contact.GROUND).ifPresent(member -> here.add(new Here(IN_THE_SOIL, member.title())));
        first(side, Member.Contact.MASONRY).or(() -> first(side, Member.Contact.CONCRETE)).ifPresent(member -> here.add(new Here(ON_MASONRY, member.title())));
        first(side, Member.Contact.PORCH_FLOOR).ifPresent(member -> here.add(new Here(ON_PORCH_FLOOR, member.title())));
    }

    private Optional<Member> first(Side side, Member.Contact contact) {
        return survey.membersOn(side.id()).stream().filter(member -> member.contact() == contact).findFirst();
    }

    List<Here> ofEdge(EdgeWater water) {
        List<Here> here = new ArrayList<>();
        RoofEdge edge = water.edge();
        String overhang = Words.length(edge.overhang().own(), units);
        if (edge.overhang().own() < NARROW_MM - 0.5) here.add(new Here(DRIPS_CLOSE, overhang));
        edge.planDepth().filter(depth -> depth.own() > 4500).ifPresent(depth -> here.add(new Here(BIG_ROOF, Words.length(depth.own(), units))));
        if (!water.hasGutter()) here.add(new Here(NO_GUTTER, ""));
        else {
            water.inflowLs().ifPresent(inflow -> {
                if (water.overflows()) here.add(new Here(GUTTER_OVERFLOWS, Words.flow(inflow, units)));
                else if (inflow < 0.8 * water.least()) here.add(new Here(GUTTER_CARRIES, ""));
            });
            edge.gutter().flatMap(Side.Gutter::fall).filter(fall -> fall.own() <= 0).ifPresent(_ -> here.add(new Here(GUTTER_LEVEL, "")));
            if (water.runMm() > LONG_MM) here.add(new Here(GUTTER_LONG, Words.length(water.runMm(), units)));
        }
        return here;
    }

    List<Here> ofDownspout(Downspout downspout) {
        Optional<Double> carries = downspout.carriesTo().map(Quantity::own);
        return switch (downspout.empties()) {
            case AT_FOOT -> List.of(new Here(EMPTIES_AT_FOOT, ""));
            case SPLASH_BLOCK, EXTENSION -> carries.isPresent() && carries.get() < 900 ? List.of(new Here(EMPTIES_NEAR, Words.length(carries.get(), units)))
                    : carries.isPresent() && carries.get() >= 1500 ? List.of(new Here(CARRIED_AWAY, "")) : List.of();
            case DRAIN, CISTERN -> List.of(new Here(CARRIED_AWAY, ""));
        };
    }

    List<Here> ofMember(Member member) {
        return switch (member.startEnd()) {
            case BARE -> List.of(new Here(END_BARE, ""));
            case COVERED -> member.farEnd() == Member.EndGrain.COVERED ? List.of(new Here(END_COVERED, "")) : List.of();
            case COATED -> member.farEnd() == Member.EndGrain.BARE ? List.of(new Here(END_BARE, "")) : List.of();
        };
    }
}
