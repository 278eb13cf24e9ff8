package sillwright.desk.demo;

import module java.base;

import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.walk.Building;
import sillwright.walk.Entry;
import sillwright.walk.Member;

/// The demo: an invented timber-framed house of 1887, 24 ft wide to the street and 30 ft deep, with a porch on its south
/// front, walked by two people on one autumn day. Four waters are at work, one on each side.
public final class DemoHouse {
    /// The sides, in the order of the walk.
    static final List<SideNotes> SIDES = List.of(new SouthSide(), new WestSide(), new EastSide(), new NorthSide());

    private DemoHouse() {}

    /// Invented, and like those of a cool humid continental place.
    static final String MONTHS = """
            high,low,rain,days,humidity,wind,snow
            31 F,14 F,2.9 in,12,72%,8.5 mph,19 in
            34 F,16 F,2.6 in,10,70%,8.7 mph,16 in
            43 F,25 F,3.2 in,12,68%,9 mph,13 in
            57 F,36 F,3.6 in,12,64%,8.8 mph,3 in
            69 F,47 F,3.8 in,13,66%,7.6 mph,0 in
            77 F,56 F,4.2 in,12,71%,6.8 mph,0 in
            82 F,61 F,4.1 in,11,72%,6.2 mph,0 in
            80 F,60 F,4 in,11,75%,6 mph,0 in
            72 F,52 F,3.8 in,10,76%,6.4 mph,0 in
            60 F,40 F,4 in,11,74%,7.2 mph,0.5 in
            47 F,31 F,3.4 in,12,75%,8 mph,5 in
            36 F,20 F,3.2 in,12,75%,8.3 mph,16 in
            """;

    static Building building() {
        return new Building("fallow-brook-house", "The house at Fallow Brook (invented)",
                "An invented house in an invented place: every measure, reading and sighting in this book was made up to try the program out.", 1887,
                Optional.of(Quantity.read("3.5 in/h", Kind.RAIN)), Optional.of(Quantity.read("30 psf", Kind.STRESS)), Written.months(MONTHS));
    }

    /// Every entry of the book, by the clock.
    public static List<Entry> entries() {
        var first = new Walker("phone-1", "A. Surveyor", Instant.parse("2025-10-14T12:30:00Z"), 1887);
        first.write(building());
        List<Round> rounds = SIDES.subList(0, 3).stream().map(side -> new Round(side, first)).toList();
        for (Round round : rounds) round.describe(first);
        var second = new Walker("phone-2", "B. Surveyor", first.now().plusSeconds(120), 1888);
        var north = new Round(SIDES.getLast(), second);
        north.describe(first);
        first.rest(Duration.ofMinutes(10));
        second.rest(Duration.ofMinutes(20));
        for (Round round : rounds) {
            round.walk();
            first.rest(Duration.ofMinutes(15));
        }
        north.walk();
        // Last, so that no reading is taken by another hand for them.
        for (SideNotes side : SIDES) side.measured().forEach(first::write);
        return Stream.concat(first.entries().stream(), second.entries().stream()).sorted(Entry.ORDER).toList();
    }

    /// How deep a member is truly soft beneath a point, mm: what the decay map is held against.
    ///
    /// @throws NoSuchElementException where the house has no such member
    public static double truthMm(String member, Member.Face face, double alongMm, double acrossMm) {
        for (SideNotes side : SIDES)
            for (Member one : side.memberList())
                if (one.id().equals(member)) return Rot.truthMm(side.rotList(), one, face, alongMm, acrossMm);
        throw new NoSuchElementException(member);
    }

    /// The members with rot in them, by the plan.
    static Set<String> damaged() {
        return SIDES.stream().flatMap(side -> side.rotList().stream()).map(Rot::member).collect(Collectors.toCollection(TreeSet::new));
    }
}
