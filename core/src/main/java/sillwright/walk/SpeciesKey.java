package sillwright.walk;

import sillwright.measure.Answer;
import sillwright.measure.Inputs;
import sillwright.measure.Key;
import sillwright.measure.Kind;
import sillwright.measure.Refused;
import sillwright.measure.Units;

/// The wood that a figure is asked about: a species of the table, or for a name that the table lacks one of its kin or of its weight, with a caution that names it.
public final class SpeciesKey {
    private SpeciesKey() {}

    public static Key named(String says, String example) { return Key.text("species", says, example); }

    /// What to go by where the table lacks the species.
    public static Key gravity() {
        return Key.of("gravity", Kind.NUMBER, "for a wood that the species table lacks: oven-dry mass over green volume, relative to water").within(0.1, 1.2).optional();
    }

    /// The species named by the key `species`, of a figure that also takes [#gravity].
    public static Species read(Inputs in, Answer.Sheet out) { return read(in, out, "species", in.word("species")); }

    /// The species of a name that stands in a key of such a figure.
    public static Species read(Inputs in, Answer.Sheet out, String key, String name) {
        try {
            return said(out, in.has("gravity") ? Species.taken(name, in.own("gravity")) : Species.taken(name));
        } catch (Refused refused) {
            throw in.refuse(key, new Refused("", refused.what(Units.SI), refused.mend() + (refused.mend().endsWith("?") ? " If not, add" : ", or add") + " its weight: gravity=0.45"));
        }
    }

    /// The species named by the key `species`, by its name alone.
    public static Species byName(Inputs in, Answer.Sheet out) {
        try {
            return said(out, Species.taken(in.word("species")));
        } catch (Refused refused) {
            throw in.refuse("species", refused);
        }
    }

    private static Species said(Answer.Sheet out, Species.Taken taken) {
        taken.caution().ifPresent(out::beware);
        return taken.species();
    }
}
