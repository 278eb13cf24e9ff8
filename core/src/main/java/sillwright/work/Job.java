package sillwright.work;

import java.util.List;
import java.util.Optional;

import sillwright.measure.Units;
import sillwright.walk.Decision;
import sillwright.walk.Member;
import sillwright.walk.MemberKind;
import sillwright.walk.Species;
import sillwright.water.WaterFindings.RankedSource;
import sillwright.wood.Capacity;
import sillwright.wood.Condition;
import sillwright.wood.Damage;
import sillwright.wood.Outlook;
import sillwright.wood.SectionLeft;

/// One damage with all that bears on what is done about it.
///
/// @param condition of the whole member
/// @param water     the likely sources that wet it
/// @param outlook   what weather will do to the member, where that was worked
/// @param capacity  how much of what is left its load uses up, where that was worked
/// @param site      load, weather and what else bears on it
/// @param units     that the reader measures in, so that cut lines fall on the marks of the tape
record Job(Damage damage, Condition condition, List<RankedSource> water, Optional<Outlook> outlook, Optional<Capacity> capacity, Site site, Units units) {
    /// How near a meter reading must be to speak for the damage: a hand's breadth past its ends.
    private static final double NEAR_MM = 150;
    /// Wood that lies lower than this is splashed for good, mm: 8 in, the clearance that codes ask of siding and more.
    private static final double NEAR_GROUND_MM = 203.2;

    Member member() { return damage.member(); }

    /// The same, something decided about it.
    Job with(Decision decision) { return new Job(damage, condition, water, outlook, capacity, new Site(site.demand(), site.checks(), site.profile(), site.months(), site.start(), site.outfit(), Optional.of(decision)), units); }

    Species species() { return Species.orCareful(member().species()); }

    double throughMm() { return member().throughMm(damage.worst()); }

    SectionLeft section() { return damage.section(); }

    double areaLost() { return 1 - section().areaKept(); }

    /// The bending modulus kept about the axis it is bent about, or about the weaker where it stands upright.
    double modulusKept() { return bends() ? section().sxKept() : Math.min(section().sxKept(), section().syKept()); }

    boolean bends() { return member().run() != Member.Run.UPRIGHT && !pressed(); }

    /// Whether it is held up all along, so that its load only presses it: on masonry, or as a base or a plinth between a post and what it stands on.
    boolean pressed() {
        boolean block = member().kind() == MemberKind.COLUMN_BASE || member().kind() == MemberKind.PLINTH;
        return block && member().run() != Member.Run.UPRIGHT || onMasonry();
    }

    boolean onMasonry() {
        return member().run() == Member.Run.LEVEL && (member().contact() == Member.Contact.MASONRY || member().contact() == Member.Contact.CONCRETE);
    }

    /// Whether it is flat stock: thin enough to be taken off whole and put back.
    boolean board() { return thinMm() <= Limits.BOARD_MM && !bearsLoad(); }

    double thinMm() { return Math.min(member().widthMm(), member().depthMm()); }

    double wideMm() { return Math.max(member().widthMm(), member().depthMm()); }

    /// Whether it stands on something or lies where water lies, so that it stays damp even when it is mended.
    boolean staysDamp() {
        boolean wet = switch (member().kind()) {
            case SILL, WINDOW_SILL, THRESHOLD, TREAD, WATER_TABLE -> true;
            default -> false;
        };
        boolean stands = member().contact() != Member.Contact.NONE && (!upright() || CutLine.of(damage, units).fromStart());
        return wet || stands || inTheGround() || member().above().own() < NEAR_GROUND_MM && !upright();
    }

    /// Whether it is only checked: no probe found it soft.
    boolean onlyChecked() { return !site.checks().isEmpty() && damage.volumeMl().high() <= 0; }

    /// The widest of the open checks in this stretch, mm; 0 where there is none.
    double widestCheckMm() { return site.checks().stream().mapToDouble(sillwright.walk.OpenChecks::widthMm).max().orElse(0); }

    /// Whether water stands in its checks: they lie on a face that looks up.
    boolean checksLookUp() { return site.checks().stream().anyMatch(group -> group.spot().face() == Member.Face.TOP); }

    /// Whether two lengths of it may meet over what carries it.
    boolean carriedBeneath() { return member().kind() == MemberKind.FLOORBOARD; }

    /// Whether other parts of the house rest on it, so that they are propped before it is cut: not so a board that is only walked on or leant against.
    static boolean carries(Member member) {
        return member.bearsLoad() && switch (member.kind()) {
            case FLOORBOARD, TREAD, RAIL, BALUSTER, THRESHOLD -> false;
            default -> true;
        };
    }

    boolean bearsLoad() { return member().bearsLoad(); }

    boolean upright() { return member().run() == Member.Run.UPRIGHT; }

    /// Whether the soft stretch is the one that sounded hollow, or that the probe ran out in.
    boolean hollow() {
        boolean deepest = condition.damages().stream().allMatch(other -> other.deepestMm() <= damage.deepestMm() + 1e-9);
        return condition.state() == Condition.State.HOLLOW && (damage.ranOut() || deepest);
    }

    /// Whether the soft end is the one that the member stands on.
    boolean standsOnIt() { return upright() && damage.atStart() && member().contact() != Member.Contact.NONE; }

    boolean inTheGround() {
        return member().contact() == Member.Contact.GROUND && (member().run() != Member.Run.UPRIGHT || damage.atStart());
    }

    /// Whether what looks down has gone soft deeper than counts as shallow; of a piece that stands upright nothing does.
    boolean softBeneath() {
        if (upright()) return false;
        double[] lost = {section().frontMm(), section().backMm(), section().leftMm(), section().rightMm()};
        return lost[member().sectionSide(Member.Face.BOTTOM).ordinal()] > Limits.SHALLOW_MM;
    }

    boolean seen() { return damage.worst() == member().faces().getFirst() || damage.worst() == Member.Face.TOP; }

    /// Whether the worst of it lies where a loaded member is stretched: the underside, away from its ends.
    boolean inTension() { return bearsLoad() && bends() && damage.worst() == Member.Face.BOTTOM && !damage.atAnEnd(); }

    /// How many of the four faces have lost wood.
    int facesLost() {
        int faces = 0;
        for (double lost : new double[] {section().frontMm(), section().backMm(), section().leftMm(), section().rightMm()}) if (lost > 0.5) faces++;
        return faces;
    }

    /// The wettest corrected reading at the damage, else on the member; empty where no meter was put to it.
    Optional<Double> moisture() {
        Optional<Double> here = condition.moisture().stream()
                .filter(reading -> reading.alongMm() >= damage.fromMm() - NEAR_MM && reading.alongMm() <= damage.toMm() + NEAR_MM)
                .map(Condition.Corrected::moisture).max(Double::compare);
        return here.isPresent() ? here : condition.wettest();
    }

    boolean tooWet() { return moisture().filter(moisture -> moisture > Limits.DRY_ENOUGH).isPresent(); }

    /// Whether it cannot wait: a loaded member that is hollow, has lost much, or is
    /// overloaded by screening, or a hollow piece over people's heads.
    boolean urgent() {
        boolean weak = section().areaKept() < Limits.URGENT_AREA || section().keptLow() < Limits.URGENT_AREA_LOW
                || bends() && modulusKept() < Limits.URGENT_MODULUS;
        boolean alarming = capacity.map(Capacity::verdict).filter(verdict -> verdict == Capacity.Verdict.OVERLOADED || verdict == Capacity.Verdict.HOLLOW).isPresent();
        boolean overhead = member().above().own() > Limits.OVERHEAD_MM && hollow();
        return bearsLoad() && (weak || alarming || hollow()) || overhead;
    }
}
