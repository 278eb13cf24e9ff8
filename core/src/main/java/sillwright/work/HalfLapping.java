package sillwright.work;

import java.util.List;

import sillwright.measure.Basis;
import sillwright.walk.Member;

/// The half lap that joins a new end to a member pressed along its length.
///
/// Source: length 3 to 4 times the depth, at least 2; two or more bolts or pegs; ends squinted 1:6 to 1:8 (common carpentry
/// practice, from memory).
final class HalfLapping {
    static final List<Basis> BASIS = List.of(Basis.memory("Common carpentry practice", "halved scarf in a post: 3 to 4 times the depth, at least 2; two or more bolts; squinted ends"));

    private HalfLapping() {}

    /// Three times the greater side.
    static double lengthMm(Member member) { return 3 * Math.max(member.widthMm(), member.depthMm()); }
}
