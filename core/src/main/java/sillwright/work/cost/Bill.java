package sillwright.work.cost;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import sillwright.measure.Words;

/// What is bought and done for something, each line with its price where the book has one.
///
/// @param lines what is done first, then what is bought
/// @param gaps  what has no price, or is priced by a measure that does not fit
public record Bill(List<Line> lines, List<String> gaps) {
    public Bill {
        lines = List.copyOf(lines);
        gaps = List.copyOf(gaps);
    }

    public static Bill of(PriceBook prices, Labour labour, List<Want> wants, List<Toil> toils) {
        List<Line> lines = new ArrayList<>();
        List<String> gaps = new ArrayList<>(), unpriced = new ArrayList<>(), trades = new ArrayList<>();
        merged(toils).forEach((name, toil) -> {
            Labour.Task task = labour.tasks().get(name);
            if (task == null) throw new IllegalStateException("the table of hours has no task '" + name + "'");
            Optional<Price> wage = prices.find(List.of("labour " + task.trade(), "labor " + task.trade(), task.trade(), "labour", "labor"));
            if (wage.isPresent() && wage.get().sold().by() != Sold.By.HOURS) {
                String gap = "The price of '" + wage.get().item() + "' is for " + wage.get().sold().text() + ": hours are paid by h or day.";
                if (!gaps.contains(gap)) gaps.add(gap);
                wage = Optional.empty();
            } else if (wage.isEmpty() && !trades.contains(task.trade())) trades.add(task.trade());
            double hour = wage.map(price -> price.sold().amount()).orElse(1.0);
            lines.add(new Line(task.words(), true, toil.amount(), task.hours().times(1 / hour), 0, wage, toil.refs()));
        });
        for (Want want : wants) {
            Line line = line(prices, want, gaps);
            if (line.price().isEmpty()) unpriced.add(want.words());
            lines.add(line);
        }
        if (!prices.isEmpty() && !unpriced.isEmpty()) gaps.add("No price stands in the book for " + Words.list(unpriced) + ": not in the sum.");
        if (!prices.isEmpty() && !trades.isEmpty()) gaps.add("No price stands in the book for an hour of labour (" + Words.list(trades) + "): not in the sum. Add a row such as labour,h,60.");
        return new Bill(lines, gaps);
    }

    /// The same with more lines and gaps, each gap once.
    public Bill with(List<Line> more, List<String> moreGaps) {
        List<Line> all = new ArrayList<>(lines);
        all.addAll(more);
        List<String> told = new ArrayList<>(gaps);
        for (String gap : moreGaps) if (!told.contains(gap)) told.add(gap);
        return new Bill(all, told);
    }

    /// Work of one task stands in one line, since one table tells how fast all of it goes.
    private static Map<String, Toil> merged(List<Toil> toils) {
        Map<String, Toil> all = new LinkedHashMap<>();
        for (Toil toil : toils) all.merge(toil.task(), toil, (a, b) -> {
            List<String> refs = new ArrayList<>(a.refs());
            for (String ref : b.refs()) if (!refs.contains(ref)) refs.add(ref);
            return new Toil(a.task(), a.amount().with(b.amount()), refs);
        });
        return all;
    }

    private static Line line(PriceBook prices, Want want, List<String> gaps) {
        Optional<Price> price = prices.find(want.names());
        if (price.isPresent()) {
            Sold sold = price.get().sold();
            Double factor = sold.by() == want.by() ? Double.valueOf(1) : want.also().get(sold.by());
            if (factor == null) gaps.add("The price of '" + price.get().item() + "' is for " + sold.text() + ", by which " + want.words() + " is not counted: not in the sum.");
            else {
                Spread units = want.amount().times(factor / sold.amount());
                return new Line(want.words(), false, units, Spread.exactly(1), want.whole() ? (int) Math.max(1, Math.ceil(units.mid() - 1e-9)) : 0, price, want.refs());
            }
        }
        return new Line(want.words(), false, want.amount(), Spread.exactly(1), 0, Optional.empty(), want.refs());
    }

    /// Hours of work at the likeliest.
    public double likelyHours() { return lines.stream().mapToDouble(Line::hours).sum(); }

    /// What the priced lines come to.
    public Range money(long seed) {
        List<Line> priced = lines.stream().filter(line -> line.price().isPresent()).toList();
        return Draws.of(priced, priced.stream().map(line -> line.price().orElseThrow()).toList(), seed);
    }

    /// How many hours the work takes, one person's.
    public Range hours(long seed) {
        List<Line> toil = lines.stream().filter(Line::toil).toList();
        Sold hour = new Sold(1, Sold.By.HOURS, "h");
        return Draws.of(toil, toil.stream().map(line -> new Price("an hour", hour, Spread.exactly(line.paidHours()), Optional.empty(), 0)).toList(), seed);
    }
}
