package sillwright.work;

import sillwright.measure.Basis;

/// A reason not to take a treatment. Each refusal carries the number that refuses.
enum Rule {
    TOO_DEEP_TO_LEAVE(Basis.read("National Park Service, Preservation Brief 47", "small or shallow defects may need no patch"),
            Basis.own("how deep still counts as shallow: 3/16 in (5 mm)")),
    COAT_DOES_NOT_SHED(Basis.practice("bare wood outdoors is coated before it weathers")),
    FILL_TOO_DEEP(Basis.read("National Park Service, Preservation Brief 47", "large or deep defects: a dutchman rather than a patch"),
            Basis.own("a filled place goes at most a third of the way through, and 1-1/2 in (38 mm)")),
    FILL_TOO_LARGE(Basis.read("National Park Service, Preservation Brief 47", "large or deep defects: a dutchman rather than a patch"),
            Basis.own("a filled place holds at most 12 fl oz (355 mL) where it is seen, twice that where it is not")),
    FILL_IS_NO_MEMBER(Basis.practice("a cured filler is not a structural member without an engineer's design"),
            Basis.own("a loaded member may be filled while it keeps 90 % of its area and 85 % of its bending modulus")),
    FILL_IN_TENSION(Basis.read("US General Services Administration, procedure 0630001R", "epoxy is a poor choice in tension")),
    TOO_WEAK(Basis.memory("NDS 2018", "allowable stress of columns, beams and bearing"), Basis.own("after it is mended a member may be used to all of its capacity by screening; where the load assumed is more than a whole new one bears, strength settles nothing")),
    WET_BEHIND(Basis.read("National Park Service, Preservation Brief 10", "peeling to bare wood: water behind the film"), Basis.own("a board that holds more than 20 % is wet behind its paint")),
    CHECKS_HOLD_WATER(sillwright.work.resin.Checks.BASIS),
    SEALS_WATER_IN(Basis.read("US military guide specification 09995", "the cause of decay is mended first; wet wood dried through its depth")),
    DOES_NOT_DRY(Basis.own("resin is thought of where wood is as likely as not to dry within a year")),
    TOO_COLD(Basis.memory("Makers' sheets, varying by product", "least temperature about 50 °F")),
    WOOD_IS_GONE(Basis.own("wood that has softened and is soft no deeper than 3/8 in holds together; a fifth of deeper softened wood crumbles, half of decayed")),
    FILL_IN_BENDING(Basis.practice("no fill where a load is carried in bending"), Basis.read("US General Services Administration, procedure 0630001R", "epoxy may be unfit where the piece is structural: replacement better")),
    NO_ROOM_BENEATH(Basis.own("to cut, fill or brush an underside a hand and a tool want 8 in (200 mm) of room below it")),
    PUSHED_SIDEWAYS(Leaning.BASIS, Basis.read("Wood Handbook, FPL-GTR-190", "ch. 10: a glued end-grain butt has at most about 25 % of wood's tensile strength")),
    NO_ROOM_FOR_NIBS(Basis.own("nibs want wood 1-1/2 in thick")),
    SISTER_HAS_NO_HOLD(Basis.own("a sister is bolted to a member that keeps half of its section")),
    SISTER_TOO_THICK(Basis.own("a sister more than half as thick again as the old member is no sister")),
    SISTER_IN_SIGHT(Basis.own("ornament in plain view gets no sister")),
    PART_IS_MOST_OF_IT(Basis.own("a part is at most three fifths of a piece")),
    PART_LEAVES_A_STUB(Basis.own("between a new part and an end a foot of old wood is left at the least")),
    STANDS_WET(Basis.practice("end grain in the ground stays wet whatever is put on it")),
    DEPTH_NOT_KNOWN(Basis.practice("a reading at the probe's limit says only `at least`")),
    PATCH_TOO_DEEP(Basis.own("a dutchman is let in at most half way through, so that as much sound wood stays beneath as is laid in")),
    PATCH_TOO_LONG(Basis.own("a dutchman takes at most half the length of the piece, unless it lies on masonry all along")),
    PATCH_IS_NO_MEMBER(Basis.own("a loaded member may be patched while it keeps three quarters of its area and of its bending modulus; one that lies on masonry all along half of its area")),
    PATCH_HAS_NO_SHOULDERS(Basis.own("a dutchman wants sound wood around it: soft on three faces there is none to let it into")),
    BUILD_UP_BEARS_LOAD(Basis.practice("a built-up base carries nothing but itself")),
    BUILD_UP_TOO_TALL(Basis.own("a built-up base stands at most 12 in (300 mm) high")),
    BUTT_IN_BENDING(Basis.read("Wood Handbook, FPL-GTR-190", "ch. 10: a glued end-grain butt has at most about 25 % of wood's tensile strength"),
            Basis.practice("scarf where there is angle or side load")),
    BUTT_TAKES_IN_WATER(Basis.own("a level piece that sheds water is not given a square joint across its top")),
    LAP_IN_BENDING(Basis.read("Karolak, Jasienko and Raszczuk, Heritage Science 8:105 (2020)", "Table 3: lapped and halved joints keep 10 to 28 % of a beam's bending capacity, with inclined faces and dowels 50 to 75 %")),
    LAP_WITHOUT_NEED(Basis.practice("a bolted half lap is for members that bear load; trim is butted or scarfed")),
    SPLICE_LEAVES_TOO_LITTLE(Basis.own("a splice may renew six tenths of plain stock, seven of worked, eight of ornament; past that it is no splice")),
    JOINT_AT_GREATEST_BENDING(Basis.own("in a loaded member that bends, the joint lies within a quarter of its length from the end")),
    HOLLOW_IN_BENDING(Basis.practice("a hollow beam is propped and opened up, not patched"),
            Basis.read("National Park Service, From the Roof Down", "an engineer or experienced contractor props and opens up beams that sag")),
    LOSES_MORE_WOOD(Basis.read("Secretary of the Interior's Standards, Guidelines for Preserving, wood",
            "repair before replacement; replace in kind only the deteriorated part"));

    private final java.util.List<Basis> basis;

    Rule(Basis... basis) { this.basis = java.util.List.of(basis); }

    java.util.List<Basis> basis() { return basis; }

    /// A rule and the number that sets it off, said in the reader's units.
    record Refusal(Rule rule, String words) {}
}
