package sillwright.work.stock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import sillwright.measure.Basis;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Choice;
import sillwright.walk.Species;
import sillwright.wood.Movement;
import sillwright.work.stock.Supply.Sold;

/// The wood that new work is made of: the old species where it will last, else the one that moves most nearly like it and will.
///
/// @param species     name of the species table
/// @param sold        how it is come by; empty where the table of stock does not know it
/// @param rings       to the inch at the least; 0 where nothing is asked
/// @param leastDense  oven-dry gravity at the least: that of the old species, so that new wood is never the softer by default
/// @param apartMm     how much further it moves than the old wood over the piece's greater side, from 10 to 16 %; 0 for the same species
/// @param rough       the section to ask for, by the name it is sold by
/// @param planeMm     taken off its thickness, both faces together; 0 where it is used as sold
/// @param why         one sentence
/// @param others      what else would serve, each with its reason, and what was passed over
public record Stock(String species, Optional<Sold> sold, int rings, double leastDense, double apartMm, String rough, double planeMm, String why, List<String> others, List<Basis> basis) {
    public Stock {
        others = List.copyOf(others);
        basis = List.copyOf(basis);
    }

    /// Shrinkage may differ by so much in either direction, fraction of the green size; more and the joint opens. Own choice.
    static final double UNLIKE = 0.015;
    /// New wood may be lighter than the old by so little that nobody could tell. Own choice.
    static final double AS_DENSE = 0.005;
    private static final double DRY = 0.10, DAMP = 0.16;

    private static final List<Basis> BASIS = List.of(Supply.BASIS,
            Basis.read("National Park Service, Preservation Brief 47", "a patch matches the base in strength and movement; new wood dried before fitting"),
            Basis.own("a piece that stays damp is made of stock of moderate durability at least, no lighter than the old, its shrinkage within 1.5 points either way"),
            Basis.practice("new growth is less dense and less durable than old: closer rings, heartwood"));

    /// @param old        of the member, as the species table has it
    /// @param named      as the survey names it
    /// @param thinMm     lesser side of the piece, net
    /// @param wideMm     greater side
    /// @param staysDamp  it stands on something, or lies where water lies
    /// @param letIn      a patch, which moves with the wood round it and so is always of its species
    public static Stock of(Species old, String named, double thinMm, double wideMm, boolean staysDamp, boolean letIn, Units units) {
        Optional<Supply> own = Supply.of(old.name());
        Species.Durability wanted = wanted(staysDamp);
        List<Supply> fit = fit(old, wanted);
        List<String> others = new ArrayList<>();
        boolean lasts = lasts(own, wanted), same = letIn || lasts || fit.isEmpty();
        Species taken = same ? old : fit.getFirst().species();
        Optional<Supply> supply = same ? own : Optional.of(fit.getFirst());
        for (Supply other : fit) if (other.species() != taken && others.size() < 2) others.add(Species.said(other.species().name()) + ": " + apart(other, old, wideMm, units) + ", " + Choice.said(other.durability()) + ", " + said(other.sold()));
        softer(old, wanted, own, others);
        String why = same ? sameWhy(Species.said(named), letIn, lasts, staysDamp, own, units) : Species.said(taken.name()) + " and not " + Species.said(named) + ": it stays damp there, " + own.map(s -> "and " + Species.said(old.name()) + " as it is sold now is of "
                + Choice.said(s.durability()) + " durability").orElse("and " + Species.said(named) + " is not known to be sold") + "; " + Species.said(taken.name()) + " is " + Choice.said(supply.orElseThrow().durability()) + ", no softer, and "
                + apart(supply.orElseThrow(), old, wideMm, units) + ".";
        Nominal bought = Nominal.of(wideMm, thinMm, supply, units);
        return new Stock(same ? named : taken.name(), supply.map(Supply::sold), supply.map(Supply::rings).orElse(8), old.gravityOvenDry(), same ? 0 : apartMm(taken, old, wideMm), bought.name(), Math.max(0, bought.thinMm() - thinMm), why, others, BASIS);
    }

    /// The species alone, without its reasons.
    public static Species species(Species old, boolean staysDamp, boolean letIn) {
        Species.Durability wanted = wanted(staysDamp);
        if (letIn || lasts(Supply.of(old.name()), wanted)) return old;
        List<Supply> fit = fit(old, wanted);
        return fit.isEmpty() ? old : fit.getFirst().species();
    }

    private static Species.Durability wanted(boolean staysDamp) { return staysDamp ? Species.Durability.MODERATE : Species.Durability.SLIGHT; }

    private static boolean lasts(Optional<Supply> own, Species.Durability wanted) { return own.isPresent() && own.get().durability().compareTo(wanted) >= 0; }

    /// What is durable enough, as dense and moves alike, the nearest first; what is harder to come by counts as a little further off.
    private static List<Supply> fit(Species old, Species.Durability wanted) {
        Optional<Supply> own = Supply.of(old.name());
        List<Supply> fit = new ArrayList<>();
        for (Supply supply : Supply.all()) {
            if (supply.species().name().equals(old.name()) || own.isPresent() && supply.sort() != own.get().sort()) continue;
            if (supply.durability().compareTo(wanted) >= 0 && dense(supply, old) && unlike(supply.species(), old) <= UNLIKE) fit.add(supply);
        }
        fit.sort(Comparator.comparingDouble((Supply supply) -> unlike(supply.species(), old) + HARDER * supply.sold().ordinal()));
        return fit;
    }

    /// What a step harder to come by weighs against a difference of shrinkage. Own choice.
    private static final double HARDER = 0.004;

    private static boolean dense(Supply supply, Species old) { return supply.species().gravityOvenDry() >= old.gravityOvenDry() - AS_DENSE; }

    /// The greater difference of shrinkage, along the rings or across them.
    static double unlike(Species one, Species other) { return Math.max(Math.abs(one.tangential() - other.tangential()), Math.abs(one.radial() - other.radial())); }

    static double apartMm(Species one, Species other, double wideMm) {
        return Math.abs(Movement.changeMm(wideMm, one.tangential(), DRY, DAMP) - Movement.changeMm(wideMm, other.tangential(), DRY, DAMP));
    }

    private static String apart(Supply supply, Species old, double wideMm, Units units) {
        double mm = apartMm(supply.species(), old, wideMm);
        String least = Words.length(units == Units.US ? 25.4 / 16 : 1, units), said = mm < (units == Units.US ? 25.4 / 32 : 0.5) ? "less than " + least : Words.length(Math.max(mm, units == Units.US ? 25.4 / 16 : 1), units);
        return "its movement differs by " + said + " over " + Words.length(wideMm, units) + " from 10 to 16 %";
    }

    private static void softer(Species old, Species.Durability wanted, Optional<Supply> own, List<String> others) {
        List<String> soft = Supply.all().stream().filter(supply -> own.map(Supply::sort).filter(sort -> sort != supply.sort()).isEmpty() && supply.durability().compareTo(Species.Durability.RESISTANT) >= 0
                && supply.sold() == Sold.YARD && supply.durability().compareTo(wanted) >= 0 && !dense(supply, old)).map(supply -> Species.said(supply.species().name()) + " ("
                + Words.number(supply.species().gravityOvenDry(), 2) + " against " + Words.number(old.gravityOvenDry(), 2) + ")").toList();
        if (!soft.isEmpty()) others.add("passed over as softer than the old wood: " + Words.list(soft));
    }

    /// How close its rings lie: `8 rings to the inch`, `8 rings in 25 mm`.
    public static String rings(int rings, Units units) { return rings + (units == Units.US ? " rings to the inch" : " rings in 25 mm"); }

    private static String sameWhy(String named, boolean letIn, boolean lasts, boolean damp, Optional<Supply> own, Units units) {
        String kind = own.map(supply -> supply.rings() > 0 ? ", heartwood, " + rings(supply.rings(), units) + " or closer" : ", heartwood").orElse(", heartwood, close-grown");
        if (letIn) return named + kind + ", its rings lying as in the wood around it: a patch moves with what it is let into.";
        if (lasts) return named + kind + ": in kind, and " + (damp ? "durable enough where it stands." : "it dries out where it is.");
        return named + kind + ": in kind; it stays damp there and " + (own.isEmpty() ? named + " is not in the table of stock" : "nothing in the table lasts better, is as dense and moves alike") + ", so treat it with borate and keep it off what it stands on.";
    }

    static String said(Sold sold) {
        return switch (sold) {
            case YARD -> "in most yards";
            case ORDER -> "to order";
            case RECLAIMED -> "salvaged only";
        };
    }

    /// An eighth of an inch off each face, or 3 mm.
    static double planeMm(Units units) { return units == Units.US ? 6.35 : 6; }

    private static final int[] QUARTERS = {4, 5, 6, 8, 10, 12, 16};
    private static final double[] METRIC = {25, 32, 38, 50, 63, 75, 100};

    /// The rough thickness that planes to a net one, mm: in quarters of an inch or metric as yards saw it; thicker is sawn to order.
    static double roughMm(double thinMm, Units units) {
        double wanted = thinMm + planeMm(units);
        if (units == Units.US) {
            for (int quarters : QUARTERS) if (quarters * 6.35 >= wanted - 1e-6) return quarters * 6.35;
        } else for (double mm : METRIC) if (mm >= wanted - 1e-6) return mm;
        return Math.ceil(wanted / planeMm(units) - 1e-9) * planeMm(units);
    }

    /// As it is named: `8/4`, `50 mm`.
    static String rough(double thinMm, Units units) {
        double mm = roughMm(thinMm, units);
        boolean order = mm > (units == Units.US ? 101.6 : 100) + 1e-6;
        return order ? Words.length(mm, units) + " sawn to order" : units == Units.US ? Math.round(mm / 6.35) + "/4" : Words.number(mm, 0) + " mm";
    }
}
