package sillwright.wood.drying;

/// Many pieces of wood side by side in the same air, each cut into the same number of slices from its near face to its far one.
///
/// One array per quantity, one row per slice, the piece innermost: `moisture[slice][piece]`. The arrays belong to the caller, who fills them through
/// [Piece] or by hand, and reads them between hours; [Transport] makes none. m, kg, s; moisture is a fraction of oven-dry mass.
public final class Stack {
    /// Keeps a ratio of two differences in bounds where both are nothing.
    public static final double TINY = 1e-9;
    /// Keeps it from being nothing over nothing.
    public static final double LEAST = 1e-300;
    /// The least rise: below it the growth of D from dry to saturated, under 1 in 30,000, is lost in rounding.
    public static final double LEAST_RISE = 1e-4;

    private static final double DAMP = 0.22;

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

    /// Diffusion of bound water at 20 °C and no moisture, m²/s, and how steeply it grows: D = bound · exp(rise · u); [#LEAST_RISE] at least.
    public final double[] bound;
    public final double[] rise;
    /// Moisture at which cell walls are full.
    public final double[] saturation;
    /// Diffusion of free water where the wood is full, m²/s; one over the free water it then holds; and the moisture it then has.
    public final double[] free;
    public final double[] overRoom;
    public final double[] full;
    /// One over the rise; and a quarter of the diffusion of full wood over `overRoom`: what the sums of D up to a moisture are made with.
    public final double[] overRise;
    public final double[] quarterFree;
    /// Exchange through the faces beside the run, 1/s at 20 °C; nothing where the two faces are all there is.
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
    final double[] walls;
    final double[] nextWalls;
    final double[] loose;
    final double[] nextLoose;
    final double[] lets;
    final double[] link;
    final double[] over;
    final double[] kept;
    final double[] has;
    final double[] inWalls;
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
        /// Share of the face through which water gets in from liquid; and that of it which fills the room for free water too.
        public final double[] leak;
        public final double[] fills;
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

        private void lay(int piece, Skin skin, double halfM, Timber timber) {
            half[piece] = halfM;
            open[piece] = skin.open() ? 1 : 0;
            air[piece] = skin.airSM();
            film[piece] = skin.filmSM();
            boolean whole = skin.soakedSM() > 0;
            // Behind an unbroken film the half slice and the film lie one after the other, the slice at a usual dampness.
            leak[piece] = whole ? 1 / (1 + skin.soakedSM() * timber.diffusion(DAMP) / halfM) : skin.leak();
            fills[piece] = whole ? 0 : skin.leak();
            supply[piece] = skin.share() * (whole ? 1 : skin.leak()) / 3600 / timber.densityKgM3();
            stays[piece] = skin.share() > 0 ? 1 + skin.stays() : 0;
        }

        private Faces(int places) {
            half = new double[places];
            open = new double[places];
            air = new double[places];
            film = new double[places];
            leak = new double[places];
            fills = new double[places];
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
        overRise = new double[places];
        quarterFree = new double[places];
        sides = new double[places];
        near = new Faces(places);
        far = new Faces(places);
        wetHours = new double[places];
        gained = new double[places];
        gainedBySides = new double[places];
        shed = new double[slices][places];
        carried = new double[slices][places];
        walls = new double[places];
        nextWalls = new double[places];
        loose = new double[places];
        nextLoose = new double[places];
        lets = new double[places];
        link = new double[places];
        over = new double[places];
        kept = new double[places];
        has = new double[places];
        inWalls = new double[places];
        work = new double[places];
    }

    /// Lays a piece in one place of the stack.
    ///
    /// Slices are thinnest at a face that anything passes, and each is `growth` times the one before on the way in.
    ///
    /// @param lengthM from the near face to the far one
    /// @param start   its moisture throughout
    public void lay(int piece, Timber timber, double lengthM, Skin nearSkin, Skin farSkin, double growth, double start) {
        double total = 0;
        double[] part = new double[slices];
        for (int i = 0; i < slices; i++) total += part[i] = Math.pow(growth, farSkin.open() ? nearSkin.open() ? Math.min(i, slices - 1 - i) : slices - 1 - i : i);
        for (int i = 0; i < slices; i++) {
            part[i] *= lengthM / total;
            stepOverSlice[i][piece] = stepS / part[i];
            moisture[i][piece] = start;
        }
        for (int i = 0; i + 1 < slices; i++) overDistance[i][piece] = 2 / (part[i] + part[i + 1]);
        bound[piece] = timber.boundM2S();
        rise[piece] = Math.max(LEAST_RISE, timber.rise());
        saturation[piece] = timber.saturation();
        free[piece] = timber.freeM2S();
        full[piece] = timber.full();
        overRoom[piece] = 1 / (timber.full() - timber.saturation());
        sums(piece);
        sides[piece] = 0;
        near.lay(piece, nearSkin, part[0] / 2, timber);
        far.lay(piece, farSkin, part[slices - 1] / 2, timber);
    }

    /// Works what follows from `rise`, `free` and `overRoom`; for whoever sets these by hand.
    public void sums(int piece) {
        overRise[piece] = 1 / rise[piece];
        quarterFree[piece] = 0.25 * free[piece] / overRoom[piece];
    }

    /// A piece loses to the air through the faces beside its run too: the other two of its long faces, or all four where it is followed along its grain.
    ///
    /// Each pair of them by the first mode of a slab, which is that of a film and a sixth of the thickness one after the other; two pairs add up.
    ///
    /// @param across what it lets through across the grain
    /// @param betweenM from one face of the pair to the other
    public void lose(int piece, Timber across, Skin side, double betweenM) {
        double usual = 0.15, grown = Math.exp(across.rise() * usual), outside = side.airSM() / grown + side.filmSM();
        sides[piece] += 2 / betweenM / (outside + betweenM / 6 / across.diffusion(usual));
        anySides = true;
    }

    /// Takes over the state of another stack's piece.
    public void take(int piece, Stack from, int theirs) {
        for (int i = 0; i < slices; i++) moisture[i][piece] = from.moisture[i][theirs];
        near.left[piece] = 0;
        far.left[piece] = 0;
    }

    /// Mean moisture between two depths from the near face.
    public double between(int piece, double fromM, double toM) {
        double sum = 0, over = 0, at = 0;
        for (int i = 0; i < slices; i++) {
            double next = at + thicknessM(i, piece), part = Math.min(next, toM) - Math.max(at, fromM);
            if (part > 0) {
                sum += part * moisture[i][piece];
                over += part;
            }
            at = next;
        }
        return sum / over;
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
