package sillwright.desk.demo;

import module java.base;

import sillwright.measure.Csv;
import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.measure.Words;
import sillwright.walk.Body;
import sillwright.walk.Choice;
import sillwright.walk.Entry;
import sillwright.walk.Member;
import sillwright.walk.MoistureReading;
import sillwright.walk.ProbeReading;
import sillwright.walk.Sighting;
import sillwright.walk.Spot;

/// A walk along one side: first it is described, then looked at, metered and probed.
final class Round {
    private final SideNotes notes;
    private final Walker walker;
    private final Map<String, Member> members = new LinkedHashMap<>();
    private final List<Rot> rots;
    private final Map<String, String> slips = new HashMap<>();
    private final Map<String, Integer> count = new HashMap<>();

    Round(SideNotes notes, Walker walker) {
        this.notes = notes;
        this.walker = walker;
        notes.memberList().forEach(member -> members.put(member.id(), member));
        rots = notes.rotList();
        for (Csv.Row row : Csv.read(notes.slips()).rows())
            slips.put(row.get("of") + " " + row.get("what") + " " + row.get("nth"), row.get("how"));
    }

    void describe(Walker describer) {
        describer.write(notes.side());
        for (Member member : members.values()) {
            if (slips.remove(member.id() + " length 1") == null) describer.write(member);
            else describer.amend(describer.write(twoFeetLonger(member)), member);
        }
    }

    private static Member twoFeetLonger(Member m) {
        return new Member(m.id(), m.side(), m.kind(), m.title(), m.role(), m.species(), m.run(), m.width(), m.depth(),
                Marks.INCHES.nearest(m.lengthMm() + 24 * 25.4, 1e6), m.left(), m.above(), m.slant(), m.startEnd(), m.farEnd(), m.coat(), m.contact());
    }

    void walk() {
        for (Sighting s : notes.sightingList())
            write(Choice.word(s.sign()), "sighting", s, new Sighting(s.sign(), !s.seen(), s.side(), s.member(), s.left(), s.above(), s.words()));
        for (var points : notes.moisturePoints()) each(points, spot -> meter(spot, points.last()));
        for (var points : notes.probePoints()) each(points, spot -> probe(spot, points.last()));
        if (!slips.isEmpty()) throw new IllegalStateException("slips that never happened: " + slips);
    }

    private void each(SideNotes.Points points, Consumer<Spot> at) {
        Member member = members.get(points.member());
        if (member == null) throw new IllegalArgumentException("no member " + points.member());
        for (double along : points.alongMm())
            for (double across : points.acrossMm())
                at.accept(new Spot(member.id(), points.face(), notes.written().nearest(along, member.lengthMm()),
                        notes.written().nearest(across, member.acrossMm(points.face()))));
    }

    private void meter(Spot spot, double about) {
        double percent = about + 1.2 * unsteady();
        if (about >= 22) percent = Math.clamp(percent, 22, 35);
        if (about <= 14) percent = Math.clamp(percent, 10, 14);
        var wood = notes.written().temperature(notes.woodC() + unsteady());
        var reading = new MoistureReading(spot, percent(percent), Optional.of(wood), Optional.of(notes.written().nearest(6.4, 100)));
        write(spot.member(), "moisture", reading, new MoistureReading(spot, percent(percent / 2), reading.wood(), reading.pins()));
    }

    private static Quantity percent(double percent) { return Quantity.read(Words.number(percent, 1) + "%", Kind.PERCENT); }

    private void probe(Spot spot, double reachMm) {
        Member member = members.get(spot.member());
        double through = member.throughMm(spot.face());
        double truth = Rot.truthMm(rots, member, spot.face(), spot.alongMm(), spot.acrossMm());
        double felt = truth < 0.5 ? 0 : truth * (1 + 0.1 * unsteady());
        Marks marks = notes.written();
        Quantity reach = reach(reachMm), depth = marks.nearest(felt, Math.min(through, reach.own()));
        boolean ranOut = reach.own() < through && depth.own() >= reach.own() - 1e-6;
        var reading = new ProbeReading(spot, depth, reach, ranOut);
        var wrong = new ProbeReading(spot, depth.own() * 2 > reach.own() ? marks.nearest(0, 0) : marks.nearest(reach.own() - depth.own(), through), reach, false);
        write(spot.member(), Choice.word(spot.face()), reading, wrong);
    }

    /// A probe is marked in whole inches, or in fives of millimetres.
    private Quantity reach(double mm) { return notes.written().nearest(notes.written() == Marks.INCHES ? mm : Math.floor(mm / 5) * 5, mm); }

    /// Between -2 and 2, mostly within 1.
    private double unsteady() { return Math.clamp(walker.hand().nextGaussian(), -2, 2); }

    private void write(String of, String what, Body right, Body wrong) {
        int nth = count.merge(of + " " + what, 1, Integer::sum);
        String how = slips.remove(of + " " + what + " " + nth);
        switch (how == null ? "" : how) {
            case "" -> walker.write(right);
            case "typed" -> walker.amend(walker.write(wrong), right);
            case "struck" -> {
                walker.strike(walker.write(wrong), "went into an old nail hole; taken again beside it");
                walker.write(right);
            }
            case "restored" -> {
                Entry entry = walker.write(right);
                walker.strike(walker.strike(entry, "taken twice"), "it was not taken twice after all");
            }
            default -> throw new IllegalArgumentException("a slip is typed, struck or restored, not " + how);
        }
    }
}
