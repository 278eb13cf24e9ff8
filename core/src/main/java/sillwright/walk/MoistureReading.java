package sillwright.walk;

import java.util.Optional;

import sillwright.measure.Quantity;
import sillwright.measure.Refused;

/// What a pin meter showed.
///
/// @param spot    the place
/// @param reading as shown, a fraction of oven-dry mass
/// @param wood    the wood's temperature, °C; the air's will do in shade
/// @param pins    how deep the pins went, mm
public record MoistureReading(Spot spot, Quantity reading, Optional<Quantity> wood, Optional<Quantity> pins) implements Body {
    public MoistureReading {
        if (!(reading.own() >= 0 && reading.own() <= 1.5)) throw new Refused("reading", "{} is not a moisture content", "write what the meter showed, such as 18%", reading);
        wood.ifPresent(temp -> {
            if (temp.own() < -40 || temp.own() > 80) throw new Refused("wood", "{} is not a temperature wood has outdoors", "check the unit: F or C", temp);
        });
        Measured.notNegative("pins", pins);
    }
}
