package sillwright.wood;

import sillwright.walk.Member;

/// The wood beneath one face: how far it goes along the grain, across the face, and in.
record Slab(double lengthMm, double acrossMm, double throughMm) {
    static Slab of(Member member, Member.Face face) { return new Slab(member.lengthMm(), member.acrossMm(face), member.throughMm(face)); }
}
