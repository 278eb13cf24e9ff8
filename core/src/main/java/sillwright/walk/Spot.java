package sillwright.walk;

import sillwright.measure.Quantity;
import sillwright.measure.Words;

/// A point on the skin of a member.
///
/// @param member its id
/// @param face   the long face it is on
/// @param along  from the member's start, mm
/// @param across over the face, mm
public record Spot(String member, Member.Face face, Quantity along, Quantity across) {
    public Spot {
        Measured.notNegative("along", along);
        Measured.notNegative("across", across);
    }

    public double alongMm() { return along.own(); }

    public double acrossMm() { return across.own(); }

    /// `s-post-3, front face, 6 in along, 2 in across`
    public String words() { return member + ", " + Choice.said(face) + " face, " + along.text() + " along, " + across.text() + " across"; }

    /// Refuses a spot that is not on the member.
    void on(Member member) {
        double slack = 1e-6;
        if (!member.faces().contains(face))
            throw new sillwright.measure.Refused("face", "{} lies " + Choice.said(member.run()) + " and has no " + Choice.said(face) + " face",
                    "use one of " + Words.list(member.faces().stream().map(Choice::word).toList()), member.id());
        if (alongMm() > member.lengthMm() + slack)
            throw new sillwright.measure.Refused("along", "{} is off the member, which is {} long", "measure from its lower or left end", along, member.length());
        if (acrossMm() > member.acrossMm(face) + slack)
            throw new sillwright.measure.Refused("across", "{} is off the face, which is {} across", "measure from the edge of that face", across,
                    member.acrossMm(face) == member.widthMm() ? member.width() : member.depth());
    }
}
