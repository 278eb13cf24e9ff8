package sillwright.desk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import sillwright.measure.Quantity;
import sillwright.measure.Refused;
import sillwright.measure.Unit;
import sillwright.measure.Words;
import sillwright.walk.Building;
import sillwright.walk.Survey;
import sillwright.wood.weather.HourlyFile;
import sillwright.wood.weather.Normals;

/// Monthly normals for a building out of an hourly weather file.
final class Hourly {
    private Hourly() {}

    /// The survey with the file's temperatures, humidity and wind; with the survey's own rain where the file has none.
    ///
    /// @throws Refused where the file cannot be read, or neither gives rain
    static Survey laid(Survey survey, Path path) {
        Building building = survey.building().orElseThrow(() -> new Refused("--weather", "no building is described to give the weather to", "describe the building in the survey"));
        HourlyFile file;
        try {
            file = HourlyFile.read(Files.readString(path, StandardCharsets.ISO_8859_1));
        } catch (IOException e) {
            throw new Refused("--weather " + path, "the file cannot be read", "name a file in the EPW layout");
        } catch (Refused refused) {
            throw refused.at(path.getFileName().toString());
        }
        List<Building.Month> own = building.months();
        if (file.rainIsMissing() && own.isEmpty())
            throw new Refused(path.getFileName().toString(), "gives no rain for most of its hours, and the survey gives no monthly rain", "give the building its monthly rain and rain days");
        List<Double> rain = new ArrayList<>(), days = new ArrayList<>();
        if (file.rainIsMissing()) for (Building.Month month : own) {
            rain.add(month.rain().own());
            days.add(month.rainDays());
        }
        else monthly(file, rain, days);
        Normals normals = file.normals(rain, days);
        List<Building.Month> months = new ArrayList<>();
        for (int m = 0; m < 12; m++) {
            Normals.Month n = normals.month(m);
            months.add(new Building.Month(celsius(n.highC()), celsius(n.lowC()), of(n.rainMm(), Unit.MILLIMETRE), n.rainDays(), of(n.humidity(), Unit.PERCENT),
                    of(n.windMs(), Unit.METRE_PER_SECOND), own.isEmpty() ? of(0, Unit.MILLIMETRE) : own.get(m).snow()));
        }
        Building with = new Building(building.id(), building.name(), building.note(), building.yearBuilt(), building.designRain(), building.groundSnow(), months);
        return survey.with(with);
    }

    private static void monthly(HourlyFile file, List<Double> rain, List<Double> days) {
        double[] sums = new double[12], wet = new double[12];
        for (int day = 0; day < 365; day++) {
            double sum = 0;
            for (int h = 0; h < 24; h++) sum += file.weather().rainMm(day * 24 + h);
            int month = Normals.monthOf(day);
            sums[month] += sum;
            if (sum >= 0.254) wet[month]++;
        }
        for (int m = 0; m < 12; m++) {
            rain.add(sums[m]);
            days.add(wet[m]);
        }
    }

    private static Quantity celsius(double value) { return of(value, Unit.CELSIUS); }

    private static Quantity of(double own, Unit unit) { return new Quantity(own, unit, Words.number(unit.fromOwn(own), 2) + " " + unit.symbol()); }
}
