package sillwright.wood.drying;

/// Many pieces of wood side by side in the same air, each cut into the same number of slices from its near face to its far one.
///
/// One array per quantity, one row per slice, the piece innermost: `moisture[slice][piece]`. The arrays belong to the caller, who fills them through
/// [Piece] or by hand, and reads them between hours; [Transport] makes none. m, kg, s; moisture is a fraction of oven-dry mass.
public final class Stack {
    /// Keeps a ratio of two differences in bounds where both are nothing.
    public static final double TINY = 1e-9;

    /// Pieces that go together: work is parted at multiples of this, and every row ends on one, the last places empty.
    public static final int TOGETHER = 16;

    public final int slices;
    public final int pieces;
    /// Length of a step, s.
    public final double stepS;

    /// State.
    public final double[][] moisture;

    /// Geometry: the step over the slice's thickness, s/m, and one over the distance to the next slice's middle, 1/m.
    public final double[][] stepOverSlice;
    public final double[][] overDistance;

    /// Diffusion of bound water at 20 °C and no moisture, m²/s, and how steeply it grows: D = bound · exp(rise · u).
    public final double[] bound;
    public final double[] rise;
    /// Moisture at which cell walls are full.
    public final double[] saturation;
    /// Diffusion of free water where the wood is full, m²/s; one over the free water it then holds; and the moisture it then has.
    public final double[] free;
    public final double[] overRoom;
    public final double[] full;
    /// Exchange through the long sides of a piece that is followed along its grain, 1/s at 20 °C; nothing where the faces are all there is.
    public final double[] sides;
    /// True where any piece loses through its sides.
    public boolean anySides;

    public final Faces near;
    public final Faces far;

    /// Hours with liquid water on either face, counted as they pass.
    public final double[] wetHours;
    /// Water taken in through the faces less what left, m of depth times fraction; with the sides' share apart.
    public final double[] gained;
    public final double[] gainedBySides;

    /// Of the step in hand: what a slice sheds to the one before it, what it carries; pull and pulled of the faces likewise.
    public final double[][] shed;
    public final double[][] carried;
    final double[] link;
    final double[] nextLink;
    final double[] filled;
    final double[] nextFilled;
    final double[] inWalls;
    final double[] nextInWalls;
    final double[] walls;
    final double[] work;

    /// One face of every piece.
    public static final class Faces {
        /// Half the slice at this face, m.
        public final double[] half;
        /// 1 where vapour may pass, 0 where the face is sealed.
        public final double[] open;
        /// Resistance of the still air at 20 °C and dry wood, and of the film of paint at 20 °C, s/m.
        public final double[] air;
        public final double[] film;
        /// Share of the face through which liquid gets in.
        public final double[] leak;
        /// Liquid that reaches the face for each mm of rain on level ground, m/s of moisture for mm/h.
        public final double[] supply;
        /// Hours that the face counts as wet from an hour of rain on, that hour with it; 0 where rain never reaches it.
        public final double[] stays;
        /// Hours it still stays wet: state.
        public final double[] left;

        /// Of the step in hand: `pulled - pull · u` enters, m/s of moisture; and the share of the step that liquid lies on the face.
        public final double[] pull;
        public final double[] pulled;
        public final double[] wet;

        private Faces(int places) {
            half = new double[places];
            open = new double[places];
            air = new double[places];
            film = new double[places];
            leak = new double[places];
            supply = new double[places];
            stays = new double[places];
            left = new double[places];
            pull = new double[places];
            pulled = new double[places];
            wet = new double[places];
        }
    }

    public Stack(int slices, int pieces, double stepS) {
        if (slices < 2 || pieces < 1 || !(stepS > 0)) throw new IllegalArgumentException(slices + " slices, " + pieces + " pieces, " + stepS + " s");
        this.slices = slices;
        this.pieces = pieces;
        int places = (pieces + TOGETHER - 1) / TOGETHER * TOGETHER;
        this.stepS = stepS;
        moisture = new double[slices][places];
        stepOverSlice = new double[slices][places];
        overDistance = new double[slices - 1][places];
        bound = new double[places];
        rise = new double[places];
        saturation = new double[places];
        free = new double[places];
        overRoom = new double[places];
        full = new double[places];
        sides = new double[places];
        near = new Faces(places);
        far = new Faces(places);
        wetHours = new double[places];
        gained = new double[places];
        gainedBySides = new double[places];
        shed = new double[slices][places];
        carried = new double[slices][places];
        link = new double[places];
        nextLink = new double[places];
        filled = new double[places];
        nextFilled = new double[places];
        inWalls = new double[places];
        nextInWalls = new double[places];
        walls = new double[places];
        work = new double[places];
    }

    /// Water in one piece, m of depth times fraction: over all slices thickness times moisture.
    public double held(int piece) {
        double sum = 0;
        for (int i = 0; i < slices; i++) sum += moisture[i][piece] * thicknessM(i, piece);
        return sum;
    }

    /// Mean moisture of one piece.
    public double mean(int piece) {
        double whole = 0;
        for (int i = 0; i < slices; i++) whole += thicknessM(i, piece);
        return held(piece) / whole;
    }

    public double thicknessM(int slice, int piece) { return stepS / stepOverSlice[slice][piece]; }
}
