package sillwright.wood;

import java.util.ArrayList;
import java.util.List;

import sillwright.measure.Unit;
import sillwright.walk.Member;
import sillwright.wood.strength.Adjusted;
import sillwright.wood.strength.Beam;
import sillwright.wood.strength.Bearing;
import sillwright.wood.strength.Combined;
import sillwright.wood.strength.DesignValues;
import sillwright.wood.strength.Post;
import sillwright.wood.strength.Tributary;

/// What a member's load asks of its section, station by station: a beam is bent most at its middle, sheared and pressed at its ends; a post buckles at its middle and is crushed
/// anywhere.
///
/// Sources: statics of a beam on two supports under an even load, a standard of texts (from memory); *NDS* 2018, 3.6.3: a post whose section is lessened away from where it
/// buckles is held there to Fc* (from memory). That it buckles in the middle half of its height is this program's own choice.
final class Stations {
    /// What a beam sits on at each end, mm. Source: *IRC* R502.6, the least on wood or metal (from memory).
    private static final double SEAT_MM = Unit.INCH.toOwn(1.5);
    /// The part of a post's height, from either end, in which it does not buckle.
    private static final double END_PART = 0.25;
    /// So short a post does not buckle, mm.
    private static final double STUB_MM = 1;

    private final Member member;
    private final Capacity.Work work;
    private final List<Tributary.Load> loads;
    private final List<Adjusted> woods = new ArrayList<>();
    private final Section whole;

    Stations(Member member, Capacity.Work work, Demand demand, DesignValues values, boolean wet) {
        this.member = member;
        this.work = work;
        loads = demand.loads();
        for (Tributary.Load load : loads) woods.add(Adjusted.of(values, member.widthMm(), member.depthMm(), Adjusted.Service.of(load.duration(), wet)));
        whole = Section.rectangle(0, member.widthMm(), 0, member.depthMm());
    }

    Section wholeSection() { return whole; }

    double middleMm() { return member.lengthMm() / 2; }

    /// Of the member with nothing lost, at its worst station.
    Governing.Use whole() { return at(0, whole).orWorse(at(middleMm(), whole)); }

    /// At a station; `Combined.BEYOND` where nothing is left.
    Governing.Use at(double stationMm, Section rest) {
        Governing.Use worst = new Governing.Use(0, usual());
        for (int i = 0; i < woods.size(); i++) worst = worst.orWorse(at(stationMm, rest, loads.get(i).load(), woods.get(i)));
        return worst.share() < Combined.BEYOND ? worst : new Governing.Use(Combined.BEYOND, worst.by());
    }

    private Governing.By usual() {
        return switch (work) {
            case POST, FOOT -> Governing.By.CRUSHING;
            case BEAM_OVER_WIDTH, BEAM_OVER_DEPTH -> Governing.By.BENDING;
            case SEAT_ALONG, SEAT -> Governing.By.BEARING;
        };
    }

    private Governing.Use at(double stationMm, Section rest, double load, Adjusted wood) {
        if (!(rest.areaMm2() > 0)) return new Governing.Use(Combined.BEYOND, usual());
        double level = rest.areaMm2() / member.widthMm();
        return switch (work) {
            case POST -> post(stationMm, rest, load, wood);
            case BEAM_OVER_WIDTH -> beam(stationMm, rest, false, load, wood);
            case BEAM_OVER_DEPTH -> beam(stationMm, rest, true, load, wood);
            case SEAT_ALONG -> new Governing.Use(load / level / wood.acrossMPa(), Governing.By.BEARING);
            case SEAT -> new Governing.Use(load / (level * member.lengthMm()) / wood.acrossMPa(), Governing.By.BEARING);
            case FOOT -> new Governing.Use(Bearing.foot(load, rest.areaMm2(), wood.alongMPa()), Governing.By.CRUSHING);
        };
    }

    private Governing.Use post(double stationMm, Section rest, double loadN, Adjusted wood) {
        Post stub = Bearer.post(whole, rest, STUB_MM, wood);
        Governing.Use crushed = new Governing.Use(Math.max(stub.under(loadN, 0).greatest(), stub.foot(loadN)), Governing.By.CRUSHING);
        double toEnd = Math.min(stationMm, member.lengthMm() - stationMm) / member.lengthMm();
        return toEnd < END_PART ? crushed : crushed.orWorse(new Governing.Use(Bearer.post(whole, rest, member.lengthMm(), wood).under(loadN, 0).greatest(), Governing.By.BUCKLING));
    }

    private Governing.Use beam(double stationMm, Section rest, boolean overDepth, double loadNPerMm, Adjusted wood) {
        Beam beam = Bearer.beam(whole, rest, member.lengthMm(), overDepth, wood);
        double along = stationMm / member.lengthMm(), end = Math.min(stationMm, member.lengthMm() - stationMm);
        Governing.Use bent = new Governing.Use(4 * along * (1 - along) * beam.bentMPa(loadNPerMm) / beam.allowedBendingMPa(), Governing.By.BENDING),
                sheared = new Governing.Use(Math.abs(1 - 2 * along) * beam.shearMPa(loadNPerMm) / wood.shearMPa(), Governing.By.SHEAR);
        Governing.Use worse = bent.orWorse(sheared);
        if (end > SEAT_MM) return worse;
        double levelMm = rest.areaMm2() / beam.uprightMm(), pressed = loadNPerMm * member.lengthMm() / 2 / (levelMm * SEAT_MM);
        return worse.orWorse(new Governing.Use(pressed / wood.acrossMPa(), Governing.By.BEARING));
    }
}
