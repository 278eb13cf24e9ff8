package sillwright.wood;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import sillwright.measure.SplitMix;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Choice;
import sillwright.walk.Member;
import sillwright.walk.ProbeReading;

/// Where on a member to push the probe next: the spot whose reading is expected to shrink most what is not known of what is to be decided, by turns with the widest stretch
/// that nobody probed.
///
/// A pure function of the readings: the same readings always give the same spot. Of several probed faces the one that leaves most open is named; a face without a
/// reading is not, for it may be out of reach, but [#unseen] names those that the damage makes worth a look.
///
/// @param face     one of the probed faces
/// @param alongMm  from the member's start; not within 25 mm of another reading while a spot is left that is not
/// @param acrossMm over the face
/// @param decides  what the reading would tell of
/// @param why      what makes this the spot
/// @param now      what is known: mL of a volume, mm from the start of a line
/// @param left     the share of that width that is expected to remain after the reading, 0 to 1
/// @param enough   true where more probing would not change what is done
/// @param unseen   faces never probed, next to softness that may have reached them
public record NextProbe(Member.Face face, double alongMm, double acrossMm, Decides decides, Why why, Interval now, double left, boolean enough, List<Member.Face> unseen) {
    public NextProbe { unseen = List.copyOf(unseen); }

    public enum Decides { VOLUME, CUT_LINE }

    /// What makes a spot worth a push.
    public enum Why {
        UNSEEN("no reading is near"), EDGE("softness may end about here"), DEPTH("how deep it goes here weighs most"), CROWDED("the face is probed as closely as wood bears");

        private final String words;

        Why(String words) { this.words = words; }

        public String words() { return words; }
    }

    /// One line for whoever holds the probe.
    public String words(Units units) {
        if (enough) return "Probed enough: more readings would not change what is done." + unseenWords();
        String reaches = decides == Decides.VOLUME ? "soft wood is known to " + Words.wood(now.low(), units) + " to " + Words.wood(now.high(), units)
                : "the cut line is known to " + Words.length(now.low(), units) + " to " + Words.length(now.high(), units);
        return "Probe next: " + Choice.said(face) + " face, " + Words.length(alongMm, units) + " along and " + Words.length(acrossMm, units) + " across; " + why.words + ". On that face " + reaches
                + "; a reading there is expected to leave " + Words.percent(left) + " of that width." + unseenWords();
    }

    private String unseenWords() {
        return unseen.isEmpty() ? "" : " Not probed, and softness may have reached it: " + Words.list(unseen.stream().map(Choice::said).toList()) + " face.";
    }

    /// A probe for members reaches so far where no reading tells, mm.
    static final double USUAL_REACH_MM = 100;

    /// @return empty where the member has no reading yet
    public static Optional<NextProbe> of(Member member, List<ProbeReading> readings) {
        Map<Member.Face, List<ProbeReading>> byFace = new EnumMap<>(Member.Face.class);
        for (ProbeReading reading : readings) byFace.computeIfAbsent(reading.spot().face(), _ -> new ArrayList<>()).add(reading);
        Map<Member.Face, FaceStudy> studies = new EnumMap<>(Member.Face.class);
        for (Member.Face face : byFace.keySet()) {
            Slab slab = Slab.of(member, face);
            Readings own = Readings.of(byFace.get(face)), all = Readings.between(byFace.get(face), byFace.getOrDefault(Member.opposite(face), List.of()), slab.throughMm());
            studies.put(face, FaceStudy.of(slab, own, all, Decay.TOLERANCE_MM, FaceStudy.DRAWS, new SplitMix(face.ordinal())));
        }
        return of(member, byFace, studies);
    }

    static Optional<NextProbe> of(Member member, Map<Member.Face, List<ProbeReading>> byFace, Map<Member.Face, FaceStudy> studies) {
        double margin = member.bearsLoad() ? Decay.LOAD_MARGIN_MM : Decay.TRIM_MARGIN_MM;
        record Candidate(Member.Face face, FaceNext next) {}
        List<Candidate> candidates = new ArrayList<>();
        for (Map.Entry<Member.Face, FaceStudy> one : studies.entrySet()) {
            double reach = byFace.get(one.getKey()).stream().mapToDouble(probe -> probe.reach().own()).max().orElse(USUAL_REACH_MM);
            candidates.add(new Candidate(one.getKey(), FaceNext.of(one.getValue(), reach, margin)));
        }
        boolean enough = candidates.stream().allMatch(one -> one.next.enough());
        return candidates.stream().max(Comparator.comparingDouble(one -> one.next.worth())).map(best -> new NextProbe(best.face, best.next.alongMm(), best.next.acrossMm(),
                best.next.decides(), best.next.why(), best.next.now(), best.next.left(), enough, unseen(member, byFace, studies)));
    }

    /// Faces that nobody probed and that softness may have reached: opposite to where it may go half through, or beside where it may be deep at the arris.
    private static List<Member.Face> unseen(Member member, Map<Member.Face, List<ProbeReading>> byFace, Map<Member.Face, FaceStudy> studies) {
        List<Member.Face> all = new ArrayList<>();
        for (Member.Face face : member.faces()) {
            if (byFace.containsKey(face)) continue;
            FaceStudy from = studies.get(Member.opposite(face));
            boolean through = from != null && from.deepestMm().high() > from.slab.throughMm() / 2;
            boolean beside = studies.entrySet().stream().anyMatch(one -> one.getKey() != Member.opposite(face) && atArris(member, face, one.getValue()));
            if (through || beside) all.add(face);
        }
        return all;
    }

    /// Whether the row of a face next to another is as likely soft as not, anywhere.
    private static boolean atArris(Member member, Member.Face beside, FaceStudy study) {
        int row = farSide(member.sectionSide(beside)) ? study.draws.grid.rows() - 1 : 0;
        for (int c = 0; c < study.draws.grid.columns(); c++) {
            int soft = 0;
            for (int d = 0; d < study.draws.count; d++) if (study.draws.soft(d, c, row)) soft++;
            if (soft > study.draws.count / 2) return true;
        }
        return false;
    }

    /// Whether a side of the section lies where the across of its neighbours ends.
    private static boolean farSide(Member.SectionSide side) { return side == Member.SectionSide.BACK || side == Member.SectionSide.RIGHT; }
}
