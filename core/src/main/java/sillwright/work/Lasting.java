package sillwright.work;

import sillwright.measure.Basis;
import sillwright.walk.Species;
import sillwright.wood.Outlook;
import sillwright.wood.drying.Dose;
import sillwright.work.stock.Supply;

/// How long a treatment may be expected to serve, in years: to rank one beside another, and no promise.
///
/// With its water stopped: a span for the kind of work, own choice but for paint, shortened for new wood of little durability. With the water running on: new wood lasts until the
/// dose of its weather brings it to moderate decay (rating 2) at its durability, resin and paint until the wood beneath moves on to its next rating; never longer than
/// with the water stopped.
///
/// @param stopped with the water stopped
/// @param running with it running on
public record Lasting(double stopped, double running) {
    public static final Basis[] BASIS = {Basis.read("Preservation Briefs 10 and 47", "repaint every 5 to 8 years"),
        Basis.own("years that each kind of repair serves with its water stopped; new wood in running water lasts to rating 2 of the dose model, times 1, 1.5, 2 or 3 by durability")};

    private static final double PAINT = 7, NO_WEATHER_YEARS = 5, MOST = 60;

    static Lasting of(Job job, Treatment treatment) {
        double own = switch (treatment) {
            case Treatment.Watch _ -> job.outlook().flatMap(outlook -> outlook.stopped().yearsToNext()).map(years -> Math.min(MOST, years.median())).orElse(job.outlook().isPresent() ? MOST / 2 : PAINT);
            case Treatment.Recoat _ -> PAINT;
            case Treatment.Reseat _ -> 12;
            case Treatment.Consolidate _, Treatment.Fill _ -> 15;
            case Treatment.ButtSplice _, Treatment.ReplacePart _ -> 30;
            case Treatment.Dutchman _, Treatment.Sister _, Treatment.BuildUp _ -> 35;
            case Treatment.HalfLap _, Treatment.ScarfSplice _ -> 40;
            case Treatment.Replace _ -> 45;
        };
        boolean fresh = treatment.degree() >= 5;
        double stopped = fresh ? own * served(durability(job, treatment)) : own;
        return new Lasting(stopped, Math.min(stopped, fresh ? freshYears(job, treatment) : oldYears(job)));
    }

    /// Of what is put in: the stock's own where it is known.
    private static Species.Durability durability(Job job, Treatment treatment) {
        String species = Stocking.species(job, treatment);
        return Supply.of(species).map(Supply::durability).orElse(job.species().durability());
    }

    private static double served(Species.Durability durability) {
        return switch (durability) {
            case SLIGHT -> 0.7;
            case MODERATE -> 0.85;
            case RESISTANT -> 1;
            case VERY_RESISTANT -> 1.15;
        };
    }

    private static double resists(Species.Durability durability) {
        return switch (durability) {
            case SLIGHT -> 1;
            case MODERATE -> 1.5;
            case RESISTANT -> 2;
            case VERY_RESISTANT -> 3;
        };
    }

    private static double freshYears(Job job, Treatment treatment) {
        double dose = job.outlook().map(Outlook::asIs).map(asIs -> asIs.daysAYear().median()).orElse(-1.0), resists = resists(durability(job, treatment));
        return dose < 0 ? NO_WEATHER_YEARS * resists : dose == 0 ? MOST : Math.min(MOST, Dose.days(2) / dose * resists);
    }

    private static double oldYears(Job job) {
        return job.outlook().map(outlook -> outlook.asIs().yearsToNext().map(years -> years.median()).orElse(MOST)).orElse(NO_WEATHER_YEARS);
    }
}
