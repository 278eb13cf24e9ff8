package sillwright.page;

import sillwright.walk.Choice;
import sillwright.walk.Sign;
import sillwright.walk.Species;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/// The words of the trade for the phone, out of the core's own lists, so that none is written twice.
final class FieldWords {
    private FieldWords() {}

    /// Where one looks for a sign on the wall, in the order of a walk from the eave down and in.
    enum Place {
        GUTTER("gutter"), ROOF("roof edge"), PAINT("paint"), STAIN("stain"), WINDOW("sill, joint"), GROUND("ground"), WOOD("wood"), LIFE("insects, fungus"), WEATHER("damp, when");

        private final String words;

        Place(String words) { this.words = words; }
    }

    static ObjectNode json() {
        ObjectNode root = Wire.object();
        ArrayNode groups = root.putArray("groups"), signs = root.putArray("signs"), species = root.putArray("species");
        for (Place place : Place.values()) groups.addObject().put("id", Choice.word(place)).put("words", place.words);
        for (Sign sign : Sign.values()) signs.addObject().put("id", Choice.word(sign)).put("words", sign.words()).put("group", Choice.word(place(sign)));
        Species.all().keySet().forEach(species::add);
        return root;
    }

    /// A new sign must be given its place before this compiles.
    static Place place(Sign sign) {
        return switch (sign) {
            case GUTTER_FULL, GUTTER_OVERFLOWS, GUTTER_HOLDS_WATER, GUTTER_PULLED_AWAY, GUTTER_JOINT_DRIPS, DOWNSPOUT_LOOSE, DOWNSPOUT_EMPTIES_AT_WALL -> Place.GUTTER;
            case NO_DRIP_EDGE, DRIP_EDGE_BEHIND_GUTTER, ROOF_EDGE_SHORT, ICICLES, ICE_RIDGE, ROOF_DAMAGED_ABOVE, FLASHING_MISSING, FLASHING_LIFTED -> Place.ROOF;
            case PEELING_AT_BASE, PEELING_BELOW_EAVE, PEELING_TO_BARE_WOOD, PEELING_BETWEEN_COATS, PEELING_BELOW_WINDOW, BLISTERED_PAINT, CRAZED_PAINT,
                 PAINT_GONE_ON_WEATHER_SIDE -> Place.PAINT;
            case DIRT_BAND, ALGAE_OR_MOSS, MILDEW_LOW, STREAK_BELOW_GUTTER_JOINT, STREAK_ON_DOWNSPOUT_WALL, STAIN_ON_SOFFIT, STAIN_BEHIND_GUTTER, STAIN_BELOW_SILL_END,
                 STAIN_INSIDE, RUST_STREAKS, SALTS_ON_MASONRY -> Place.STAIN;
            case SILL_FLAT, SILL_CHECKS, NO_DRIP_KERF, PUTTY_FAILED, JOINT_OPEN, SEALANT_FAILED, WEEP_BLOCKED, CONDENSATION_ON_GLASS -> Place.WINDOW;
            case WATER_STANDS_ON_FLOOR, FLOOR_FALLS_TO_HOUSE, BASE_TIGHT_ON_FLOOR, SOIL_TOUCHES_WOOD, GROUND_FALLS_TO_WALL, PAVING_AGAINST_WALL, SPLASH_SEEN,
                 PLANTS_AGAINST_WALL, SPRINKLER_WETS_WALL, HOSE_TAP_LEAKS -> Place.GROUND;
            case END_GRAIN_BARE, END_GRAIN_DARK, CUPPED_BOARDS, NAILS_POPPED, HOLLOW_SOUND, SAGGING, CUBES_ACROSS_GRAIN, BLEACHED_STRINGS, LOOKS_WEATHERED_ONLY -> Place.WOOD;
            case FUNGUS, CRUST_AND_CORDS, SHALLOW_SOFT_SKIN, STAIN_ONLY, MUD_TUBES, COARSE_FRASS, FINE_POWDER, SMALL_ROUND_HOLES, ROUND_HOLES, OVAL_HOLES, PELLETS, PECKED_HOLES,
                 INSECTS_SEEN -> Place.LIFE;
            case WET_AFTER_RAIN, WATER_RUNS_DOWN_WALL, DAMP_ROOM_BEHIND, FAN_OR_DRYER_VENTS_HERE, PIPE_IN_WALL, WORSE_IN_WINTER, WORSE_AFTER_WIND_RAIN, WET_IN_DRY_WEATHER -> Place.WEATHER;
        };
    }
}
