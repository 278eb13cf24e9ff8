package sillwright.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

import sillwright.walk.Member;
import sillwright.walk.Side;
import sillwright.walk.Sign;
import sillwright.walk.Side.RoofEdge;

/// A source at a place: one clogged gutter, one window's sill.
///
/// @param place     nearer than the side: `main eave`, `window 2 from the left`; empty for the whole side
/// @param sees      where a sighting may be of its making
/// @param wets      where it wets wood
/// @param takes     the members it can wet at all
/// @param elsewhere true of a source somewhere on the side, for sightings that name no place
/// @param edge      the roof edge it belongs to, if any
/// @param leftMm    where it is drawn
/// @param prior     before any sighting, circumstances weighed
/// @param reasons   the circumstances that made the prior
/// @param span      when it stood: always, or until or since it was seen to
record Instance(Source source, Side side, String place, Box sees, List<Box> wets, Predicate<Member> takes, boolean elsewhere, Optional<RoofEdge> edge,
                double leftMm, double aboveMm, double prior, List<Reason> reasons, Span span) {
    Instance(Source source, Side side, String place, Box sees, List<Box> wets, Predicate<Member> takes, boolean elsewhere, Optional<RoofEdge> edge, double leftMm, double aboveMm, double prior,
             List<Reason> reasons) {
        this(source, side, place, sees, wets, takes, elsewhere, edge, leftMm, aboveMm, prior, reasons, Span.ALWAYS);
    }

    /// A time, from one moment to another, milliseconds since 1970 UTC.
    record Span(long fromMs, long untilMs) {
        static final Span ALWAYS = new Span(Long.MIN_VALUE, Long.MAX_VALUE);

        boolean holds(long wallMs) { return wallMs > fromMs && wallMs <= untilMs; }
    }

    /// True of a source that has been seen to: it tells of what was sighted before, and is not at work.
    boolean over() { return span.untilMs < Long.MAX_VALUE; }

    /// A circumstance said in words, with the bits it adds and the sign that would say the same.
    record Reason(String words, double bits, Optional<Sign> sign) {}

    boolean reaches(Sighted sighted) {
        if (!span.holds(sighted.wallMs())) return false;
        if (elsewhere) return !sighted.placed();
        return sees.meets(sighted.box()) && (sighted.member().isEmpty() || takes.test(sighted.member().get()));
    }

    /// Ids of the members of its side that it wets.
    List<String> members(List<Member> onSide) {
        List<String> wetted = new ArrayList<>();
        for (Member member : onSide) {
            Box box = Box.of(member);
            if (takes.test(member) && wets.stream().anyMatch(box::meets)) wetted.add(member.id());
        }
        return wetted;
    }

    /// Words for the place, never empty: `the main eave`, `window 2 from the left`, `the south side`.
    String somewhere() {
        if (place.isEmpty()) return "the " + side.id() + " side";
        return place.contains(" from the left") && !place.startsWith("spot ") ? place : "the " + place;
    }
}
