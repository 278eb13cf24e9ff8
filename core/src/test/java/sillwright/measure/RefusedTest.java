package sillwright.measure;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import static org.junit.jupiter.api.Assertions.assertEquals;

@DisplayNameGeneration(ReplaceUnderscores.class)
class RefusedTest {
    private final Refused refused = new Refused("depth", "depth {} is not within the probe's reach of {}", "name the longer probe: reach=150mm",
            Quantity.read("142 mm", Kind.LENGTH), new Answer.Measured(120, Kind.LENGTH));

    @Test
    void one_line_says_where_what_and_how_to_mend() {
        assertEquals("depth: depth 142 mm is not within the probe's reach of 120 mm; name the longer probe: reach=150mm", refused.line(Units.SI));
    }

    @Test
    void what_was_written_is_said_as_written_and_the_rest_in_the_readers_units() {
        assertEquals("depth 142 mm is not within the probe's reach of 4.724 in (4-3/4 in)", refused.what(Units.US));
    }

    @Test
    void from_further_out_the_place_grows_and_the_fault_stays() {
        Refused outer = refused.at("north side, post 3");
        assertEquals("north side, post 3, depth", outer.where());
        assertEquals(refused.what(Units.SI), outer.what(Units.SI));
        assertEquals(refused.mend(), outer.mend());
    }

    @Test
    void where_there_is_no_place_or_no_mend_no_mark_is_left_hanging() {
        assertEquals("is empty", new Refused("", "is empty", "").getMessage());
    }

    @Test
    void braces_in_what_was_typed_do_not_swallow_a_value() {
        assertEquals("'{}' is not a species", new Refused("", "'{}' is not a species", "", "{}").getMessage());
    }
}
