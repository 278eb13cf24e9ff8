package sillwright.wood;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import sillwright.measure.Basis;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Member;
import sillwright.wood.strength.Adjusted;
import sillwright.wood.strength.Bearing;
import sillwright.wood.strength.Buckling;
import sillwright.wood.strength.Combined;
import sillwright.wood.strength.DesignValues;
import sillwright.wood.strength.Duration;
import sillwright.wood.strength.Grade;
import sillwright.wood.strength.Post;
import sillwright.wood.strength.Tributary;
import sillwright.wood.strength.UnitLoads;

/// How much of what is left of a member its load uses up: a screening figure, never a design.
///
/// @param member      the member
/// @param utilisation 1 is all of it; from the least decay to the most that the readings allow, the load and the grade taken as sure;
///                    [Combined#BEYOND] stands for a section of which nothing is left
/// @param verdict     what it comes to
/// @param words       one sentence
/// @param alert       what to do now; empty where there is no alarm
/// @param shore       what one shore beneath it must bear
/// @param assumptions what was taken for granted, each a sentence
/// @param basis       what it rests on
/// @param governing   the station where most is used up; empty where only even losses are known
public record Capacity(Member member, Interval utilisation, Verdict verdict, String words, Optional<String> alert, Shore shore, List<String> assumptions, List<Basis> basis,
                       Optional<Governing> governing) {
    public Capacity {
        assumptions = List.copyOf(assumptions);
        basis = List.copyOf(basis);
    }

    /// What one shore must bear, and the pad it stands on.
    ///
    /// @param loadN     the heaviest combination: all of a post's or a base's; half of a beam's, at either end; of a sill what four feet of it bear
    /// @param padSideMm of a square pad on ground of the least presumptive bearing value
    public record Shore(double loadN, double padSideMm) {}

    /// A sill is shored at least so often, mm; this program's own choice, of common practice.
    private static final double SHORE_EVERY_MM = 1219.2;

    /// From calm to alarm. All but the first ask for a shore.
    public enum Verdict { BEARS, IN_DOUBT, OVERLOADED, HOLLOW }

    private static final String ALERT = "Stop. Keep people off and from beneath it, prop it with a shore on sound ground beside it, and call a licensed engineer before anything is cut.";

    /// How the member does its work, by its kind and the way it lies; empty where its kind bears nothing that can be checked so.
    enum Work {
        POST, BEAM_OVER_WIDTH, BEAM_OVER_DEPTH, SEAT_ALONG, SEAT, FOOT;

        static Optional<Work> of(Member member) {
            boolean upright = member.run() == Member.Run.UPRIGHT;
            return switch (member.kind()) {
                case POST, COLUMN -> upright ? Optional.of(POST) : Optional.empty();
                case BEAM, JOIST, STRINGER -> upright ? Optional.empty() : Optional.of(member.run() == Member.Run.OUTWARD ? BEAM_OVER_DEPTH : BEAM_OVER_WIDTH);
                case SILL -> upright ? Optional.empty() : Optional.of(SEAT_ALONG);
                case COLUMN_BASE, PLINTH -> Optional.of(upright ? FOOT : SEAT);
                case WINDOW_SILL, THRESHOLD, FASCIA, SOFFIT, FRIEZE, RAKE_BOARD, CORNER_BOARD, CASING, BRICKMOULD, HEAD_CASING, CLAPBOARD, SHINGLE, WATER_TABLE,
                     SKIRT_BOARD, TREAD, RAIL, BALUSTER, NEWEL, FLOORBOARD, BRACKET, SASH, DOOR, SHUTTER, OTHER -> Optional.empty();
            };
        }
    }

    /// By the shape of what is left where it is known; else by the even losses of a section, which are known as likely and as bad as one time in twenty, those of the good
    /// side being taken as far the other way. Of parted wood only the largest piece counts.
    ///
    /// @param hollow true where it sounds hollow or a probe ran out
    /// @param wet    in use wetter than 19 %: so for wood that decays, until its water is stopped
    public static Optional<Capacity> of(Member member, SectionLeft left, boolean hollow, Demand demand, Grade grade, boolean wet) {
        if (left.shapes().isPresent()) {
            SectionLeft.Shapes shapes = left.shapes().get();
            return of(member, largest(shapes.least()), largest(shapes.likely()), largest(shapes.most()), hollow, demand, grade, wet);
        }
        double good = Math.min(1, 2 * left.areaKept() - left.keptLow());
        return of(member, scaled(member, left, good), scaled(member, left, left.areaKept()), scaled(member, left, left.keptLow()), hollow, demand, grade, wet);
    }

    /// By the station where draws of the decay have most used up.
    ///
    /// @param most the section with the most decay, to see whether a post is too slender
    static Optional<Capacity> of(Member member, Governing governing, Optional<Section> most, boolean hollow, Demand demand) {
        return Work.of(member).map(work -> of(member, work, governing.utilisation(), most, hollow, demand, careful(member), true, Optional.of(governing)));
    }

    /// No.2 wood, wet in use, as [#of] takes it.
    static Optional<Stations> stations(Member member, Demand demand) { return Work.of(member).map(work -> new Stations(member, work, demand, careful(member), true)); }

    private static DesignValues careful(Member member) { return DesignValues.orCareful(member.species(), Grade.NO2, member.widthMm(), member.depthMm()); }

    /// The station that governs, one line; empty where none is known.
    public Optional<String> governs(Units units) {
        return governing.map(at -> "Most is used up " + (at.stationMm() < 1 ? "at its start" : Words.length(at.stationMm(), units) + " from its start") + ", by " + at.by().words() + ".");
    }

    static Optional<Section> largest(SectionLeft.Outline outline) { return outline.sound().pieces().stream().findFirst(); }

    /// The same with No.2 wood, wet in use: the prudent start for old wood that decays.
    public static Optional<Capacity> of(Member member, SectionLeft left, boolean hollow, Demand demand) { return of(member, left, hollow, demand, Grade.NO2, true); }

    /// By sections of any shape.
    ///
    /// @param least  the section with the least decay the readings allow; empty where nothing is left
    /// @param likely the most likely
    /// @param most   with the most decay
    public static Optional<Capacity> of(Member member, Optional<Section> least, Optional<Section> likely, Optional<Section> most, boolean hollow, Demand demand, Grade grade,
                                        boolean wet) {
        return Work.of(member).map(work -> {
            DesignValues values = DesignValues.orCareful(member.species(), grade, member.widthMm(), member.depthMm());
            double[] uses = {use(work, member, least, demand, values, wet), use(work, member, likely, demand, values, wet), use(work, member, most, demand, values, wet)};
            Interval utilisation = new Interval(Math.min(uses[0], uses[1]), uses[1], Math.max(uses[1], uses[2]));
            return of(member, work, utilisation, most, hollow, demand, values, wet, Optional.empty());
        });
    }

    private static Capacity of(Member member, Work work, Interval utilisation, Optional<Section> most, boolean hollow, Demand demand, DesignValues values, boolean wet,
                               Optional<Governing> governing) {
        boolean slender = work == Work.POST && most.map(rest -> post(member, rest, values, Duration.NORMAL, wet).slender() > Buckling.MOST_SLENDER).orElse(false);
        Verdict verdict = hollow ? Verdict.HOLLOW : utilisation.median() > 1 ? Verdict.OVERLOADED : utilisation.high() > 1 || slender ? Verdict.IN_DOUBT : Verdict.BEARS;
        List<Basis> basis = new ArrayList<>(List.of(Basis.memory("NDS 2018", "allowable stress equations of columns, beams and bearing; column and beam stability "
                + "confirmed by worked examples that were read"), Adjusted.BASIS, Duration.BASIS));
        basis.addAll(values.basis());
        basis.addAll(demand.basis());
        return new Capacity(member, utilisation, verdict, words(verdict, utilisation, slender), verdict == Verdict.BEARS ? Optional.empty() : Optional.of(ALERT),
                shore(work, member, demand), assumptions(work, member, demand, values, wet, governing.isPresent()), basis, governing);
    }

    private static Shore shore(Work work, Member member, Demand demand) {
        double heaviest = demand.loads().stream().mapToDouble(Tributary.Load::load).max().orElseThrow();
        double load = heaviest * switch (work) {
            case POST, SEAT, FOOT -> 1;
            case BEAM_OVER_WIDTH, BEAM_OVER_DEPTH -> member.lengthMm() / 2;
            case SEAT_ALONG -> Math.min(SHORE_EVERY_MM, member.lengthMm());
        };
        return new Shore(load, Tributary.padSideMm(load, UnitLoads.all().get("soil").loadMPa()));
    }

    private static double use(Work work, Member member, Optional<Section> rest, Demand demand, DesignValues values, boolean wet) {
        if (rest.isEmpty()) return Combined.BEYOND;
        double worst = 0;
        for (Tributary.Load load : demand.loads()) worst = Math.max(worst, use(work, member, rest.get(), load, values, wet));
        return Math.min(Combined.BEYOND, worst);
    }

    private static double use(Work work, Member member, Section rest, Tributary.Load load, DesignValues values, boolean wet) {
        Adjusted wood = adjusted(member, values, load.duration(), wet);
        double level = rest.areaMm2() / member.widthMm();
        return switch (work) {
            case POST -> {
                Post post = post(member, rest, values, load.duration(), wet);
                yield Math.max(post.under(load.load(), 0).greatest(), post.foot(load.load()));
            }
            case BEAM_OVER_WIDTH, BEAM_OVER_DEPTH ->
                    Bearer.beam(whole(member), rest, member.lengthMm(), work == Work.BEAM_OVER_DEPTH, wood).greatest(load.load());
            case SEAT_ALONG -> load.load() / level / wood.acrossMPa();
            case SEAT -> load.load() / (level * member.lengthMm()) / wood.acrossMPa();
            case FOOT -> Bearing.foot(load.load(), rest.areaMm2(), wood.alongMPa());
        };
    }

    private static Post post(Member member, Section rest, DesignValues values, Duration duration, boolean wet) {
        return Bearer.post(whole(member), rest, member.lengthMm(), adjusted(member, values, duration, wet));
    }

    private static Adjusted adjusted(Member member, DesignValues values, Duration duration, boolean wet) {
        return Adjusted.of(values, member.widthMm(), member.depthMm(), Adjusted.Service.of(duration, wet));
    }

    private static Section whole(Member member) { return Section.rectangle(0, member.widthMm(), 0, member.depthMm()); }

    /// The section with its losses lessened or deepened alike until so much of the area is kept; empty where nothing is. Where nothing is likely to be
    /// lost, what may be is taken from one face, which is the worse for a post.
    private static Optional<Section> scaled(Member member, SectionLeft left, double kept) {
        if (!(kept > 0)) return Optional.empty();
        double w = member.widthMm(), d = member.depthMm();
        boolean none = left.frontMm() + left.backMm() + left.leftMm() + left.rightMm() <= 0;
        double front = none ? d : left.frontMm(), back = left.backMm(), lost = left.leftMm(), right = left.rightMm();
        double low = 0, high = 1 / Math.max((front + back) / d, (lost + right) / w);
        for (int i = 0; i < 100; i++) {
            double by = (low + high) / 2, area = (1 - by * (front + back) / d) * (1 - by * (lost + right) / w);
            if (area > kept) low = by;
            else high = by;
        }
        return Optional.of(Section.rectangle(lost * low, w - right * low, front * low, d - back * low));
    }

    private static List<String> assumptions(Work work, Member member, Demand demand, DesignValues values, boolean wet, boolean stations) {
        List<String> all = new ArrayList<>(List.of("The grade of old wood is not known: " + values.grade().said()
                + (values.group().isEmpty() ? " of the weakest likely wood" : " of " + values.group().replace('-', ' ')) + " as " + values.use().said() + " is taken."));
        switch (work) {
            case POST -> all.add("Held from going sideways at both ends only, over its whole length; its load stands where it stood when it was whole; "
                    + (stations ? "a loss in the middle half of its height is taken for all of it, one nearer to an end is pressed and bent there and not buckled."
                    : "the worst section is taken for all of it."));
            case BEAM_OVER_WIDTH, BEAM_OVER_DEPTH -> all.add("On two supports at its ends, nothing holding its top edge; "
                    + (stations ? "each place by the bending and the shear there, its ends on 1-1/2 in (38 mm) of seat." : "the worst section is taken for its whole length."));
            case SEAT_ALONG -> all.add("Bears on its whole length; where a pier alone holds it up, that bearing is checked apart.");
            case SEAT, FOOT -> all.add("Bears on all of its sound wood.");
        }
        all.add(Words.sentence(demand.said()) + ".");
        if (wet) all.add("Wetter than 19 % in use.");
        for (String caution : values.cautions()) all.add(Words.sentence(caution) + ".");
        all.add("Screening, not engineering: wood that is not softened is taken as sound, and joints and fasteners are not counted.");
        return all;
    }

    private static String words(Verdict verdict, Interval use, boolean slender) {
        if (use.median() >= Combined.BEYOND) return verdict == Verdict.HOLLOW ? "Hollow, with nothing sound to count on." : "Nothing sound is left to bear the load.";
        String share = "uses " + Words.significant(use.median(), 2) + " of what is left (" + Words.significant(use.low(), 2) + " to "
                + (use.high() >= Combined.BEYOND ? "beyond count" : Words.significant(use.high(), 2)) + ")";
        return switch (verdict) {
            case BEARS -> "By screening its load " + share + ".";
            case IN_DOUBT -> "In doubt: its load " + share + (slender ? ", and it is more slender than the code allows." : ".");
            case OVERLOADED -> "Overloaded by screening: its load " + share + ".";
            case HOLLOW -> "Hollow: how much is left is not known, whatever the readings say; by them its load " + share + ".";
        };
    }
}
