package sillwright.wood;

import sillwright.wood.strength.Adjusted;
import sillwright.wood.strength.Beam;
import sillwright.wood.strength.Post;

/// A section that is left, as the equations of strength take it.
final class Bearer {
    private Bearer() {}

    /// A post whose load stands over the middle of the section it had when it was whole. A skew section buckles by its least radius of gyration,
    /// and both its radii are lessened alike.
    static Post post(Section whole, Section rest, double lengthMm, Adjusted wood) {
        double x = Math.sqrt(rest.ixMm4() / rest.areaMm2()), y = Math.sqrt(rest.iyMm4() / rest.areaMm2()), skew = rest.gyrationMm() / Math.min(x, y);
        return new Post(rest.areaMm2(), x * skew, y * skew, rest.carefulSxMm3(), rest.carefulSyMm3(), rest.xMm() - whole.xMm(), rest.yMm() - whole.yMm(), lengthMm, wood);
    }

    /// @param overDepth true where the load bends it over its depth, false over its width
    static Beam beam(Section whole, Section rest, double spanMm, boolean overDepth, Adjusted wood) {
        double depth = rest.backMm() - rest.frontMm(), width = rest.rightMm() - rest.leftMm();
        double wholeDepth = whole.backMm() - whole.frontMm(), wholeWidth = whole.rightMm() - whole.leftMm();
        return overDepth ? new Beam(rest.areaMm2(), rest.ixMm4(), rest.carefulSxMm3(), depth, width, spanMm, wholeDepth < wholeWidth, wood)
                : new Beam(rest.areaMm2(), rest.iyMm4(), rest.carefulSyMm3(), width, depth, spanMm, wholeWidth < wholeDepth, wood);
    }
}
