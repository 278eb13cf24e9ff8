package sillwright.wood.strength;

/// A post that stands on its foot, held at both ends and free between: what it bears along the grain.
///
/// The section is what is left, taken for the whole length; the load stands where it stood when the post was whole.
///
/// @param areaMm2      of the section left
/// @param gyrationXMm  radius of gyration for bending over the depth; of a skew section the least
/// @param gyrationYMm  the same over the width
/// @param modulusXMm3  section modulus for bending over the depth, the lesser face
/// @param modulusYMm3  the same over the width
/// @param shiftXMm     how far the load stands off the middle of what is left, over the width, either way
/// @param shiftYMm     the same over the depth
/// @param lengthMm     effective length
/// @param wood         what it may be stressed to
public record Post(double areaMm2, double gyrationXMm, double gyrationYMm, double modulusXMm3, double modulusYMm3, double shiftXMm, double shiftYMm,
                   double lengthMm, Adjusted wood) {
    /// Of a sound rectangle.
    public static Post rectangle(double widthMm, double depthMm, double lengthMm, Adjusted wood) {
        return new Post(widthMm * depthMm, depthMm / Math.sqrt(12), widthMm / Math.sqrt(12), widthMm * depthMm * depthMm / 6, depthMm * widthMm * widthMm / 6, 0, 0,
                lengthMm, wood);
    }

    private double leastGyrationMm() { return Math.min(gyrationXMm, gyrationYMm); }

    /// le/d, d the lesser side of the rectangle that buckles alike.
    public double slender() { return lengthMm / Buckling.side(leastGyrationMm()); }

    public double cp() { return Buckling.share(Buckling.columnByGyrationMPa(wood.leastElasticMPa(), lengthMm, leastGyrationMm()), wood.alongMPa(), Buckling.SAWN); }

    /// Fc′.
    public double allowedMPa() { return wood.alongMPa() * cp(); }

    /// The state under a load that stands off its old middle by `offMm`, in whichever direction does the most harm.
    public Combined under(double loadN, double offMm) {
        Combined one = at(loadN, Math.abs(shiftXMm) + offMm, Math.abs(shiftYMm)), other = at(loadN, Math.abs(shiftXMm), Math.abs(shiftYMm) + offMm);
        return one.greatest() >= other.greatest() ? one : other;
    }

    private Combined at(double loadN, double offXMm, double offYMm) {
        boolean deep = gyrationXMm >= gyrationYMm;
        double greater = Buckling.side(Math.max(gyrationXMm, gyrationYMm)), lesser = Buckling.side(leastGyrationMm());
        double overDepth = offYMm * areaMm2 / modulusXMm3, overWidth = offXMm * areaMm2 / modulusYMm3;
        double rb = Buckling.beamSlender(Buckling.Loading.ANY.lengthMm(lengthMm, greater), greater, lesser);
        double tipping = Buckling.beamMPa(wood.leastElasticMPa(), rb);
        double cl = greater - lesser <= 1e-9 * greater ? 1 : Buckling.share(tipping, wood.bendingMPa(), Buckling.BEAM);
        return new Combined(loadN / areaMm2, allowedMPa(), Buckling.columnMPa(wood.leastElasticMPa(), lengthMm, greater),
                Buckling.columnMPa(wood.leastElasticMPa(), lengthMm, lesser), tipping, 0, 0, wood.bendingMPa() * cl, Math.min(wood.bendingMPa(), wood.flatMPa()),
                deep ? overDepth : overWidth, deep ? overWidth : overDepth);
    }

    /// The load at which the greatest of the conditions reaches 1, N.
    public double capacityN(double offMm) {
        double low = 0, high = allowedMPa() * areaMm2;
        if (under(high, offMm).greatest() <= 1) return high;
        for (int i = 0; i < 200 && high - low > 1e-13 * high; i++) {
            double middle = (low + high) / 2;
            if (under(middle, offMm).greatest() <= 1) low = middle;
            else high = middle;
        }
        return low;
    }

    /// Share of the capacity of its sound end grain that the foot uses, if the foot has lost as much.
    public double foot(double loadN) { return Bearing.foot(loadN, areaMm2, wood.alongMPa()); }
}
