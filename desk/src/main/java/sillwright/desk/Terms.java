package sillwright.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

import picocli.CommandLine.Option;
import sillwright.Settings;
import sillwright.lanes.Lanes;
import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.measure.Refused;
import sillwright.measure.Units;
import sillwright.solve.ProvenCuts;
import sillwright.walk.Survey;
import sillwright.watch.Watching;
import sillwright.wood.weather.Since;
import sillwright.work.Outfit;
import sillwright.work.Rack;
import sillwright.work.cost.Allowances;
import sillwright.work.cost.Labour;
import sillwright.work.cost.PriceBook;
import sillwright.work.schedule.Crew;

/// Under what terms work is done here: what things cost, who works when, what boards there are, how far work may be put off. The same for every building that a command is given.
final class Terms {
    @Option(names = "--prices", paramLabel = "FILE", description = "your price book, a table: item,unit,price,low,high,date; examples/prices.csv is an invented one")
    private Path prices;

    @Option(names = "--labour", paramLabel = "FILE", description = "your own hours for tasks, a table: task,low,likely,high, in place of the usual ones")
    private Path labour;

    @Option(names = "--materials", paramLabel = "FILE", description = "your own allowances for what remedies against water use up, a table: remedy,item,unit,each,per_m,low,high,pay_low,pay,pay_high")
    private Path materials;

    @Option(names = "--postpone", paramLabel = "YEARS", split = ",", description = "years that the work may be put off, each a course of the look ahead (default 2,5)")
    private List<Integer> waits = Watching.USUAL.waits();

    @Option(names = "--since", paramLabel = "FILE", description = "the weather as it was between the walks: a table month,high,low,humidity,rain,rain_days (2026-05,71F,49F,64%%,3.2in,9), or a real year's hours in "
            + "the EPW layout; may be given several times; examples/wash-house.months.csv is an invented one")
    private List<Path> since = List.of();

    @Option(names = "--crews", paramLabel = "N", defaultValue = "1", description = "how many crews work at once (default 1)")
    private int crews = 1;

    @Option(names = "--saturdays", description = "Saturdays are worked too")
    private boolean saturdays;

    @Option(names = "--stock", paramLabel = "LENGTHS", defaultValue = "", description = "lengths that boards are sold in, as 8ft,10ft,12ft (default: 8 to 16 ft by 2 ft, or 2.4 to 4.8 m by 0.6 m)")
    private String stock = "";

    @Option(names = "--boards", paramLabel = "FILE", description = "boards in the rack (CSV): species, width, depth, length, count, and defects such as 14in-17in that no piece may have in it")
    private Path boards;

    @Option(names = "--hours", paramLabel = "H", defaultValue = "6", description = "hours at the work in a day, where daylight leaves them (default 6)")
    private double hours = 6;

    @Option(names = "--latitude", paramLabel = "DEG", defaultValue = "42", description = "of the place, for daylight (default 42)")
    private double latitude = 42;

    Terms prices(Path prices) {
        this.prices = prices;
        return this;
    }

    /// What is settled once the files were read, for any building.
    ///
    /// @param stockMm lengths that boards are sold in; none where the usual ones serve
    record Settled(Outfit outfit, Watching watching, List<Double> stockMm) {
        Settings on(LocalDate start, Units units, long seed) {
            return new Settings(start, units, seed, new ProvenCuts(), stockMm.isEmpty() ? Settings.commonStock(units) : stockMm, outfit, watching, Lanes.best());
        }

        /// For a building at the desk: work begins the Monday after next, in the units that most was measured in.
        Function<Survey, Settings> daily() { return survey -> on(Settings.firstDay(LocalDate.now()), Settings.written(survey), 1); }
    }

    Settled settled() { return settled(Set.of()); }

    /// Reads the files that were named.
    ///
    /// @param rained days known to be lost to rain
    /// @throws Refused for a file or a number that cannot be used, with its option
    Settled settled(Set<LocalDate> rained) {
        Outfit outfit = new Outfit(prices == null ? PriceBook.EMPTY : PriceBook.read(name(prices), text("--prices", prices)),
                labour == null ? Labour.usual() : Labour.read(name(labour), text("--labour", labour)),
                materials == null ? Allowances.usual() : Allowances.read(name(materials), text("--materials", materials)),
                new Crew(crews, saturdays ? EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.SATURDAY) : Crew.ONE.days(), hours, latitude), rained,
                boards == null ? Rack.EMPTY : Rack.read(name(boards), text("--boards", boards)));
        return new Settled(outfit, new Watching(waits, since()), stock.isEmpty() ? List.of() : lengths());
    }

    private List<Double> lengths() {
        try {
            return Quantity.readList(stock, Kind.LENGTH).stream().map(Quantity::own).toList();
        } catch (Refused refused) {
            throw refused.at("--stock");
        }
    }

    private Since since() {
        Since all = Since.NOTHING;
        for (Path path : since) all = all.with(Since.read(name(path), text("--since", path)));
        return all;
    }

    private static String name(Path path) { return path.getFileName().toString(); }

    private static String text(String option, Path path) {
        try {
            return Files.readString(path);
        } catch (IOException e) {
            throw new Refused(option + " " + path, "the file cannot be read", "name a file that is there and is text");
        }
    }
}
