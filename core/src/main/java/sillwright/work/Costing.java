package sillwright.work;

import java.util.List;

import sillwright.work.cost.Bill;
import sillwright.work.cost.Line;
import sillwright.work.cost.Range;

/// What the whole work costs, and each part of it.
///
/// @param currency of every sum; empty where the price book names none
/// @param priced   whether there is a price book at all
/// @param money    all that has a price
/// @param hours    of work, one person's
/// @param bill     line by line
/// @param repairs  each repair by itself, its material by what it uses up and not by whole packs
/// @param sources  the simplest remedy of each source of water to stop, with its material
/// @param remedies every remedy of every source, the first of each source to stop being the one in the sum
public record Costing(String currency, boolean priced, Range money, Range hours, Bill bill, List<Part> repairs, List<Part> sources, List<Remedied> remedies) {
    public static final Costing NONE = new Costing("", false, Range.NOTHING, Range.NOTHING, new Bill(List.of(), List.of()), List.of(), List.of(), List.of());

    public Costing {
        repairs = List.copyOf(repairs);
        sources = List.copyOf(sources);
        remedies = List.copyOf(remedies);
    }

    /// One repair or one source.
    public record Part(String id, Range money, Range hours) {}

    /// One remedy of a source of water.
    ///
    /// @param source   its id
    /// @param remedy   its word, as the findings name it
    /// @param summed   whether it is in the sum
    /// @param material what it uses up, in words; empty where nothing
    public record Remedied(String source, String remedy, boolean summed, String material, Range money, Range hours) {}

    /// What one remedy costs: `3 to 8 h, 210 to 540 dollars; gutter 7.3 m, downspout 4.7 m`; money where there is a price book.
    public java.util.Optional<String> band(String source, String remedy) {
        return remedies.stream().filter(one -> one.source.equals(source) && one.remedy.equals(remedy)).findFirst().map(one -> hours(one.hours)
                + (priced && one.money.draws() > 0 ? ", " + words(one.money) : "") + (one.material.isEmpty() ? ", no material" : "; " + one.material));
    }

    /// `3 to 8 h`; a quarter of an hour is told, less is not.
    public static String hours(Range range) {
        int digits = range.high() < 10 ? 1 : 0;
        String low = sillwright.measure.Words.number(range.low(), digits), high = sillwright.measure.Words.number(range.high(), digits);
        return (low.equals(high) ? high : low + " to " + high) + " h";
    }

    /// What the parts do not hold: setting up, fetching, clearing up, whole packs; money at the middle, and hours.
    public double aroundMoney() { return Math.max(0, money.middle() - sum(repairs, true) - sum(sources, true)); }

    public double aroundHours() { return Math.max(0, hours.middle() - sum(repairs, false) - sum(sources, false)); }

    private static double sum(List<Part> parts, boolean money) { return parts.stream().mapToDouble(part -> money ? part.money.middle() : part.hours.middle()).sum(); }

    /// A repair or a source by its id.
    public java.util.Optional<Part> part(String id) { return java.util.stream.Stream.concat(repairs.stream(), sources.stream()).filter(part -> part.id.equals(id)).findFirst(); }

    /// The line of the bill for one line of the order.
    public java.util.Optional<Line> line(String item) { return bill.lines().stream().filter(line -> !line.toil() && line.words().equals(item)).findFirst(); }

    /// `840 to 1,310 USD`, rounded as one would say it; one in ten turns out under, one in ten over.
    public String words(Range range) { return sum(range.low()) + " to " + sum(range.high()) + (currency.isEmpty() ? "" : " " + currency); }

    /// A sum to three figures.
    public static String sum(double money) {
        double step = Math.max(1, Math.pow(10, Math.floor(Math.log10(Math.max(1, Math.abs(money)))) - 2));
        String whole = String.valueOf(Math.round(Math.round(money / step) * step));
        StringBuilder said = new StringBuilder();
        for (int i = 0; i < whole.length(); i++) {
            if (i > 0 && (whole.length() - i) % 3 == 0 && whole.charAt(i - 1) != '-') said.append(',');
            said.append(whole.charAt(i));
        }
        return said.toString();
    }
}
