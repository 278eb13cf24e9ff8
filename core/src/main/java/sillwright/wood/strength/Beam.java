package sillwright.wood.strength;

/// A beam on two supports under a load spread evenly: what it bears.
///
/// The section is what is left, taken for the whole span; nothing holds its top edge from going sideways.
///
/// @param areaMm2    of the section left
/// @param inertiaMm4 against bending over the upright side
/// @param modulusMm3 the lesser of top and bottom
/// @param uprightMm  side of the section that stands upright
/// @param levelMm    side that lies level
/// @param spanMm     between supports
/// @param flat       true where it lies on its flat: the whole section was wider than deep
/// @param wood       what it may be stressed to
public record Beam(double areaMm2, double inertiaMm4, double modulusMm3, double uprightMm, double levelMm, double spanMm, boolean flat, Adjusted wood) {
    public static Beam rectangle(double levelMm, double uprightMm, double spanMm, boolean flat, Adjusted wood) {
        return new Beam(levelMm * uprightMm, levelMm * Math.pow(uprightMm, 3) / 12, levelMm * uprightMm * uprightMm / 6, uprightMm, levelMm, spanMm, flat, wood);
    }

    /// RB: above 50 the code does not allow it.
    public double slender() { return Buckling.beamSlender(Buckling.Loading.UNIFORM.lengthMm(spanMm, uprightMm), uprightMm, levelMm); }

    private double bendingMPa() { return flat ? wood.flatMPa() : wood.bendingMPa(); }

    /// CL: 1 where it is no deeper than wide.
    public double cl() {
        if (uprightMm <= levelMm * (1 + 1e-9)) return 1;
        return Buckling.share(Buckling.beamMPa(wood.leastElasticMPa(), slender()), bendingMPa(), Buckling.BEAM);
    }

    /// Fb′.
    public double allowedBendingMPa() { return bendingMPa() * cl(); }

    /// fb = w·l²/8 over S.
    public double bentMPa(double loadNPerMm) { return loadNPerMm * spanMm * spanMm / 8 / modulusMm3; }

    /// fv = 3V/2A with V the whole half load: the part within a depth of the support is not left out.
    ///
    /// Source: *NDS* 2018, 3.4.2 (from memory); of a section that is no rectangle this is near, not exact.
    public double shearMPa(double loadNPerMm) { return 1.5 * loadNPerMm * spanMm / 2 / areaMm2; }

    /// How far its middle goes down: 5wl⁴/384EI, without what years of load add.
    public double sagMm(double loadNPerMm) { return 5 * loadNPerMm * Math.pow(spanMm, 4) / (384 * wood.elasticMPa() * inertiaMm4); }

    /// The greater of bending and shear; sag is for the eye and the plaster, and not in it.
    public double greatest(double loadNPerMm) {
        return Math.min(Combined.BEYOND, Math.max(bentMPa(loadNPerMm) / allowedBendingMPa(), shearMPa(loadNPerMm) / wood.shearMPa()));
    }

    /// The load for each length at which the greater reaches 1, N/mm.
    public double capacityNPerMm() { return Math.min(allowedBendingMPa() / bentMPa(1), wood.shearMPa() / shearMPa(1)); }

    /// What a beam notched in its bottom at a support bears in shear, N.
    ///
    /// Source: *NDS* 2018, 3.4.3.2 (from memory).
    ///
    /// @param shearMPa Fv′
    /// @param levelMm  width
    /// @param wholeMm  depth of the beam
    /// @param leftMm   depth over the notch
    public static double notchedN(double shearMPa, double levelMm, double wholeMm, double leftMm) {
        return 2.0 / 3 * shearMPa * levelMm * leftMm * (leftMm / wholeMm) * (leftMm / wholeMm);
    }
}
