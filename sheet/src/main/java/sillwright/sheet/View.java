package sillwright.sheet;

import sillwright.walk.Member;

/// From places on a side of the building to places on paper.
///
/// @param leftPaper  where the side's left end stands on paper, mm
/// @param gradePaper where grade stands on paper, mm
record View(Scale scale, double leftPaper, double gradePaper) {
    double x(double leftMm) { return leftPaper + scale.paper(leftMm); }

    double y(double aboveMm) { return gradePaper - scale.paper(aboveMm); }

    Box box(double leftMm, double aboveMm, double widthMm, double heightMm) {
        return new Box(x(leftMm), y(aboveMm + heightMm), scale.paper(widthMm), scale.paper(heightMm));
    }

    /// A point of a member as seen from the front, on paper.
    ///
    /// @param along  from its start, mm; of an outward member, upward on its end
    /// @param across over its front face, mm
    double[] point(Member member, double along, double across) {
        double left = member.left().own(), above = member.above().own();
        return switch (member.run()) {
            case UPRIGHT, OUTWARD -> new double[] {x(left + across), y(above + along)};
            case LEVEL -> new double[] {x(left + along), y(above + across)};
            case RAKING -> {
                double slant = Math.toRadians(member.slant().map(angle -> angle.own()).orElse(0.0));
                yield new double[] {x(left + along * Math.cos(slant) - across * Math.sin(slant)), y(above + along * Math.sin(slant)
                        + across * Math.cos(slant))};
            }
        };
    }

    /// How far a member reaches along as it is seen from the front, mm: of an outward member, only its end is seen.
    static double seenLengthMm(Member member) { return member.run() == Member.Run.OUTWARD ? member.depthMm() : member.lengthMm(); }

    /// A stretch of a member over its whole width, four corners on paper.
    double[] stretch(Member member, double from, double to) {
        double[] a = point(member, from, 0), b = point(member, to, 0), c = point(member, to, member.widthMm()),
                d = point(member, from, member.widthMm());
        return new double[] {a[0], a[1], b[0], b[1], c[0], c[1], d[0], d[1]};
    }

    static Box around(double[] points) {
        double left = points[0], right = points[0], top = points[1], bottom = points[1];
        for (int i = 2; i < points.length; i += 2) {
            left = Math.min(left, points[i]);
            right = Math.max(right, points[i]);
            top = Math.min(top, points[i + 1]);
            bottom = Math.max(bottom, points[i + 1]);
        }
        return Box.around(left, top, right, bottom);
    }
}
