package sillwright.wood;

import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;

/// The decay beneath one face, worked from its probe readings: the plausible fields, draws of the whole face, the soft stretches.
final class FaceStudy {
    static final int DRAWS = 200;
    private static final int OTHER_FIELDS = 8;

    final Slab slab;
    /// Its own readings, without what the face opposite says.
    final Readings readings;
    final FaceDraws draws;
    /// The most likely field.
    final DecayField field;
    /// Soft stretches along the member, each from one sound-wood line to the other, without the margin.
    final List<double[]> stretches;

    private FaceStudy(Slab slab, Readings readings, FaceDraws draws, DecayField field) {
        this.slab = slab;
        this.readings = readings;
        this.draws = draws;
        this.field = field;
        stretches = SoundLines.stretches(draws, readings, field.feel().alongMm());
    }

    static FaceStudy of(Slab slab, Readings readings, RandomGenerator random) { return of(slab, readings, readings, Decay.TOLERANCE_MM, DRAWS, random); }

    static FaceStudy of(Slab slab, Readings readings, Readings all, double toleranceMm, int count, RandomGenerator random) {
        return of(slab, readings, all, toleranceMm, Feel.Shape.MATERN_5_2, count, random);
    }

    /// @param all         the readings with the bounds that the face opposite sets
    /// @param toleranceMm deeper is soft
    /// @param shape       how smoothly decay is taken to spread
    static FaceStudy of(Slab slab, Readings readings, Readings all, double toleranceMm, Feel.Shape shape, int count, RandomGenerator random) {
        List<DecayFit.Weighed> fields = DecayFit.plausible(all, shape, OTHER_FIELDS, random);
        FaceDraws draws = FaceDraws.of(fields, FaceGrid.forDraws(slab.lengthMm(), slab.acrossMm()), slab.throughMm(), toleranceMm, count, random);
        return new FaceStudy(slab, readings, draws, fields.getFirst().field());
    }

    /// A face where every reading was sound: such readings tell hardly anything of the field's numbers, so that the usual ones stand alone.
    static FaceStudy ofSound(Slab slab, Readings readings, RandomGenerator random) {
        DecayField field = DecayField.of(readings, Feel.USUAL);
        FaceDraws draws = FaceDraws.of(List.of(new DecayFit.Weighed(field, 1)), FaceGrid.forDraws(slab.lengthMm(), slab.acrossMm()), slab.throughMm(), Decay.TOLERANCE_MM, DRAWS, random);
        return new FaceStudy(slab, readings, draws, field);
    }

    /// Soft wood beneath the whole face.
    Interval volumeMl() { return Interval.of(draws.volumesMl()); }

    /// Soft wood in the stretches that were found: what is filled or cut out as things stand.
    Interval foundMl() { return Interval.of(draws.volumesMl(stretches)); }

    Interval deepestMm() { return each(d -> draws.deepestMm(d, 0, slab.lengthMm())); }

    /// Where the last softness along the member ends; 0 where none is.
    Interval lastSoftMm() { return each(d -> draws.lastSoftMm(d, 0, slab.lengthMm())); }

    /// What share of the face is soft, 0 to 1.
    Interval softShare() { return each(d -> draws.softShare(d, 0, slab.lengthMm())); }

    Interval each(IntToDoubleFunction ofDraw) { return Interval.of(IntStream.range(0, draws.count).mapToDouble(ofDraw).toArray()); }
}
