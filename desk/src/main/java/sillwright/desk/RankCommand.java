package sillwright.desk;

import java.io.PrintWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sillwright.Assessment;
import sillwright.Portfolio;
import sillwright.Settings;
import sillwright.measure.Refused;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.page.Hands;
import sillwright.sheet.GroupMap;
import sillwright.store.SurveyFile;
import sillwright.walk.Building;
import sillwright.walk.Survey;
import sillwright.work.Costing;
import sillwright.work.cost.Range;

/// `sillwright rank FILES`: several buildings, what cannot wait first, and what a budget of money or hours buys most of.
@Command(name = "rank", description = "Several buildings: what cannot wait first, and what a budget buys most of.", mixinStandardHelpOptions = true, sortOptions = false)
final class RankCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", arity = "1..*", description = "*.survey.json files, one for each building")
    private List<Path> files;

    @Option(names = "--budget", paramLabel = "AMOUNT", description = "money there is, where --prices gives a price book; else hours of work, as 120; without it the buildings are ranked only")
    private Double budget;

    @Option(names = "--csv", paramLabel = "FILE", description = "write the list of buildings, and what is bought, as a table too")
    private Path csv;

    @Option(names = "--map", paramLabel = "FILE", description = "write the buildings for a map, as GeoJSON")
    private Path map;

    @Option(names = "--at", paramLabel = "ID=LAT,LON", description = "where a building stands, in degrees, for --map; may be given several times; a building without it is on the map without a place")
    private Map<String, String> at = Map.of();

    @Option(names = "--start", paramLabel = "DATE", description = "first day that work may begin (default: the Monday after next)")
    private LocalDate start;

    @Mixin
    private Terms terms = new Terms();

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut(), err = spec.commandLine().getErr();
        LocalDate first = start != null ? start : Settings.firstDay(LocalDate.now());
        List<Assessment> all = new ArrayList<>();
        int code = 0;
        Terms.Settled settled = terms.settled();
        Map<String, GroupMap.Position> places = places();
        Units units = Units.US;
        for (Path file : files) {
            try {
                Survey survey = SurveyFile.read(file).fold();
                Road.tell(survey.faults(), err);
                code = Math.max(code, Road.code(survey));
                units = Settings.written(survey);
                err.println(file.getFileName() + ", " + (all.size() + 1) + " of " + files.size());
                all.add(Assessment.of(survey, settled.on(first, units, 1), _ -> {}, new Hands()));
            } catch (Refused refused) {
                err.println("left out: " + refused.getMessage());
                code = Main.SET_ASIDE;
            }
        }
        if (all.isEmpty()) throw new Refused("rank", "none of the files could be read", "give at least one survey that sillwright check finds right");
        Set<String> there = all.stream().flatMap(one -> one.survey().building().stream()).map(Building::id).collect(Collectors.toSet());
        for (String id : places.keySet()) if (!there.contains(id)) {
            err.println("left out: --at: no building here has the id '" + id + "'; use one of " + Words.list(there.stream().sorted().toList()));
            code = Main.SET_ASIDE;
        }
        Portfolio portfolio = Portfolio.of(all, Optional.ofNullable(budget));
        say(portfolio, units, out);
        if (csv != null) write(csv, table(portfolio));
        if (map != null) write(map, GroupMap.geojson(all.stream().map(one -> new GroupMap.Placed(one, one.survey().building().map(building -> places.get(building.id())))).toList()));
        return code;
    }

    private static void write(Path file, String text) {
        try {
            Files.writeString(file, text);
        } catch (IOException trouble) {
            throw new Refused(file.toString(), "cannot be written: " + trouble.getMessage(), "name a file in a folder that is there and may be written to");
        }
    }

    private Map<String, GroupMap.Position> places() {
        Map<String, GroupMap.Position> all = new LinkedHashMap<>();
        at.forEach((id, words) -> all.put(id, DossierCommand.Wish.place(words)));
        return all;
    }

    private void say(Portfolio portfolio, Units units, PrintWriter out) {
        int place = 1;
        for (Portfolio.Standing one : portfolio.buildings()) {
            out.println(FigureCommand.pad(place++ + ".", 4) + one.name());
            Brief.wrap(out, "    ", (one.urgent() > 0 ? Words.count(one.urgent(), "repair") + " cannot wait; " : "") + "a piece that bears load at its limit within two years in " + Words.number(100 * one.riskSoon(), 0)
                    + " of 100 draws; " + (one.failed() > 0 ? Words.count(one.failed(), "remedy").replace("remedys", "remedies") + " did not hold; " : "") + "ten years of waiting cost "
                    + (one.lostMl() > 0 ? Words.wood(one.lostMl(), units) + " more" : "hardly more") + " of the original wood; the work takes " + portfolio.cost(one)
                    + (portfolio.priced() ? " and " + Costing.hours(one.hours()) : ""));
        }
        if (budget == null) return;
        out.println();
        Brief.wrap(out, "", portfolio.sum(portfolio.spent()) + " of " + portfolio.sum(portfolio.budget()) + " buy most, proven: " + Words.wood(portfolio.savedMl(), units) + " of original wood saved");
        for (Portfolio.Bought one : portfolio.chosen())
            Brief.wrap(out, "  " + FigureCommand.pad(one.building(), 20) + FigureCommand.pad(one.ref(), 5) + FigureCommand.pad(portfolio.sum(portfolio.priced() ? one.money() : one.hours()), 14), one.words());
        Brief.wrap(out, "beware: ", (portfolio.priced() ? "sums are middles of a range" : "hours are rough") + ", and worth is counted in wood alone: what may hurt someone is propped and closed off first, whatever a list says.");
    }

    private static String table(Portfolio portfolio) {
        StringBuilder csv = new StringBuilder("rank,building,name,cannot_wait,risk_2_years,more_lost_ml_10_years,remedies_failed,hours_low,hours,hours_high" + (portfolio.priced() ? ",money_low,money,money_high" : "") + "\n");
        int place = 1;
        for (Portfolio.Standing one : portfolio.buildings()) {
            csv.append(place++).append(',').append(quoted(one.id())).append(',').append(quoted(one.name())).append(',').append(one.urgent()).append(',').append(one.riskSoon()).append(',')
                    .append(Math.round(one.lostMl())).append(',').append(one.failed());
            ranged(csv, one.hours(), 1);
            if (portfolio.priced()) ranged(csv, one.money(), 0);
            csv.append('\n');
        }
        if (portfolio.chosen().isEmpty()) return csv.toString();
        csv.append("\nbuilding,ref,what,hours").append(portfolio.priced() ? ",money" : "").append(",saved_ml,needs\n");
        for (Portfolio.Bought one : portfolio.chosen()) {
            csv.append(quoted(one.building())).append(',').append(one.ref()).append(',').append(quoted(one.words())).append(',').append(plain(one.hours(), 1));
            if (portfolio.priced()) csv.append(',').append(plain(one.money(), 0));
            csv.append(',').append(Math.round(one.savedMl())).append(',').append(String.join(" ", one.needs())).append('\n');
        }
        return csv.toString();
    }

    private static void ranged(StringBuilder csv, Range range, int digits) {
        for (double one : new double[] {range.low(), range.middle(), range.high()}) csv.append(',').append(plain(one, digits));
    }

    /// A number as a spreadsheet reads it, without marks between thousands.
    private static String plain(double value, int digits) { return Words.number(value, digits).replace(",", ""); }

    /// Quoted for a table; a cell that a spreadsheet would work as a formula is made plain text.
    private static String quoted(String text) {
        String plain = text.startsWith("=") || text.startsWith("+") || text.startsWith("-") || text.startsWith("@") ? "'" + text : text;
        return '"' + plain.replace("\"", "\"\"") + '"';
    }
}
