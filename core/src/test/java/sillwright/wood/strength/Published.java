package sillwright.wood.strength;

import module java.base;

import sillwright.measure.Csv;
import sillwright.measure.Unit;

/// The published values of this part of the stage.
final class Published {
    private Published() {}

    static List<Csv.Row> rows(String name) {
        try (var in = Published.class.getResourceAsStream("/checks/wood/" + name + ".csv")) {
            return Csv.read(new String(in.readAllBytes(), StandardCharsets.UTF_8)).rows();
        } catch (IOException trouble) {
            throw new UncheckedIOException(trouble);
        }
    }

    static double inches(double value) { return Unit.INCH.toOwn(value); }

    static double psi(double value) { return Unit.PSI.toOwn(value); }

    static double toPsi(double mpa) { return Unit.PSI.fromOwn(mpa); }
}
