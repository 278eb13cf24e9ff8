package sillwright.work.resin;

import java.util.List;
import java.util.Optional;

import sillwright.measure.Basis;
import sillwright.wood.Interval;

/// One resin for one place: how much is likely, how much to have at hand, and how it is mixed and laid that day.
///
/// @param resin     which
/// @param likelyMl  the middle of what it takes
/// @param buyMl     what nine in ten such places take no more than
/// @param parts     of what is bought
/// @param batches   of what is bought
/// @param workingS  how long a batch can be worked at the day's temperature
/// @param tempC     the day's temperature
/// @param lifts     layers, each set before the next; 1 for what soaks in
/// @param liftMm    the thickest layer that does not overheat that day
/// @param againH    hours from one layer, or from consolidant, to the next
/// @param paintH    hours from the last to paint
/// @param holes     to drill for it, where it must go deeper than it soaks
public record Mixing(Resin resin, double likelyMl, double buyMl, Mix.Parts parts, Mix.Batches batches, double workingS, double tempC, int lifts, double liftMm, double againH,
                     double paintH, Optional<Holes> holes) {
    public static final List<Basis> BASIS = List.of(Resin.BASIS, Basis.own("bought for nine places in ten: the spread of the soft volume, and of how much of it resin reaches, taken as lognormal"),
            Basis.own("a lift thins with the square root of the working time, since heat leaves a layer by the square of its thickness; cure takes twice as long for each 10 °C cooler"));

    /// Holes in rows, each row set off by half a step from the one beside it.
    ///
    /// @param diameterMm of the bit
    /// @param alongMm    from hole to hole along the grain
    /// @param acrossMm   from row to row
    /// @param deepMm     how deep, aslant, never through
    /// @param count      on the whole soft skin
    public record Holes(double diameterMm, double alongMm, double acrossMm, double deepMm, int count) {}

    /// Deeper than this consolidant is fed in through holes, mm: own choice, half an inch.
    static final double SOAKS_MM = 12.7;
    private static final double ROOM_C = 21, NEXT_SHARE = 0.25;

    /// @param softMl of soft wood or of lost wood, with its doubt
    /// @param takes  share of that volume which the resin fills, with its doubt
    /// @param deepMm of the place
    public static Mixing of(Resin resin, Interval softMl, Interval takes, double deepMm, double tempC, Optional<Holes> holes) {
        double likely = softMl.median() * takes.median(), buy = likely > 0 ? likely * Math.exp(NINE_IN_TEN * Math.hypot(spread(softMl), spread(takes))) : 0;
        double working = Mix.workingS(resin.potLifeS(), Resin.STATED_C, tempC);
        double lift = liftMm(resin.liftMm(), tempC), slower = Math.pow(2, (ROOM_C - tempC) / 10);
        return new Mixing(resin, likely, buy, Mix.split(buy, resin.ratio()), Mix.batches(buy, Mix.greatestBatchMl(Mix.USUAL_POT_G, resin.potLifeS(), working)), working, tempC,
                resin == Resin.CONSOLIDANT ? 1 : Mix.lifts(deepMm, lift), lift, NEXT_SHARE * resin.paintH() * slower, resin.paintH() * slower, holes);
    }

    private static final double NINE_IN_TEN = 1.2815515655, NINETEEN_IN_TWENTY = 1.6448536270;

    /// The lognormal spread of an interval that holds nine in ten, by its upper half: that is where a pot runs short.
    static double spread(Interval interval) { return interval.median() > 0 ? Math.log(interval.high() / interval.median()) / NINETEEN_IN_TWENTY : 0; }

    /// The thickest lift at a temperature: as stated up to the stated temperature, thinner above it.
    static double liftMm(double statedMm, double tempC) { return statedMm * Math.min(1, Math.pow(2, (Resin.STATED_C - tempC) / 20)); }

    /// Holes for a soft place: an eighth of an inch wide, an inch apart across and two along, since resin runs along the grain; none where it soaks in by itself.
    /// Own choice.
    public static Optional<Holes> holes(double areaMm2, double deepMm, double throughMm) {
        if (deepMm <= SOAKS_MM || areaMm2 <= 0) return Optional.empty();
        double along = 50.8, across = 25.4;
        return Optional.of(new Holes(3.175, along, across, Math.min(deepMm, throughMm - 6.35), (int) Math.max(4, Math.ceil(areaMm2 / (along * across)))));
    }
}
