package sillwright.lanes;

import sillwright.wood.drying.Transport;

/// Picks what moves the moisture in this process.
///
/// The vector unit is twice as fast once warm, and slower than plain Java until then; so whoever starts the process says which it is to be, by `--add-modules jdk.incubator.vector`. One process keeps to one of
/// them: the two part in the last digits.
public final class Lanes {
    private static final String MODULE = "jdk.incubator.vector";

    private Lanes() {}

    /// The vector unit's where the process was started with its module, else plain Java.
    public static Transport best() {
        // The class that needs the module is named only where it is there.
        return ModuleLayer.boot().findModule(MODULE).isPresent() ? Wide.transport() : Transport.PLAIN;
    }

    private static final class Wide {
        static Transport transport() { return LaneTransport.fits() ? new LaneTransport() : Transport.PLAIN; }
    }
}
