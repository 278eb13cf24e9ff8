package sillwright.work;

import java.util.Optional;

import sillwright.walk.Member;
import sillwright.work.stock.Rings;
import sillwright.work.stock.Stock;

/// Which stock a treatment is made of, and how its rings lie.
final class Stocking {
    private Stocking() {}

    /// Empty where nothing is made new.
    static Optional<Stock> of(Job job, Treatment treatment) {
        return switch (treatment) {
            case Treatment.Watch _, Treatment.Recoat _, Treatment.Reseat _, Treatment.Consolidate _, Treatment.Fill _ -> Optional.empty();
            case Treatment.Dutchman(_, var width, var depth) -> Optional.of(stock(job, Math.min(width, depth), Math.max(width, depth), true));
            case Treatment.Sister(_, _, var thick) -> Optional.of(stock(job, Math.min(thick, job.wideMm()), Math.max(thick, job.wideMm()), false));
            case Treatment.ButtSplice _, Treatment.ScarfSplice _, Treatment.HalfLap _, Treatment.BuildUp _, Treatment.ReplacePart _, Treatment.Replace _ ->
                    Optional.of(stock(job, job.thinMm(), job.wideMm(), false));
        };
    }

    /// Its species alone, as it is named; that of the member where nothing is made new.
    static String species(Job job, Treatment treatment) {
        if (treatment.degree() < 5) return job.member().species();
        String taken = Stock.species(job.species(), job.staysDamp(), treatment instanceof Treatment.Dutchman).name();
        return taken.equals(job.species().name()) ? job.member().species() : taken;
    }

    private static Stock stock(Job job, double thinMm, double wideMm, boolean letIn) {
        return Stock.of(job.species(), job.member().species(), thinMm, wideMm, job.staysDamp(), letIn, job.units());
    }

    static Rings rings(Job job, Treatment treatment) {
        Member member = job.member();
        if (treatment instanceof Treatment.Dutchman) return Rings.AS_OLD;
        if (job.thinMm() > 76.2) return Rings.FREE_OF_HEART;
        boolean level = member.run() == Member.Run.LEVEL && member.role() == Member.Role.SHEDS_WATER;
        return switch (member.kind()) {
            case WINDOW_SILL, THRESHOLD, TREAD, FLOORBOARD, CLAPBOARD, SASH -> Rings.QUARTER;
            case SILL, POST, COLUMN, COLUMN_BASE, PLINTH, BEAM, JOIST, FASCIA, SOFFIT, FRIEZE, RAKE_BOARD, CORNER_BOARD, CASING, BRICKMOULD, HEAD_CASING, SHINGLE, WATER_TABLE, SKIRT_BOARD,
                 STRINGER, RAIL, BALUSTER, NEWEL, BRACKET, DOOR, SHUTTER, OTHER -> level && job.thinMm() > Limits.BOARD_MM ? Rings.QUARTER : Rings.BARK_OUT;
        };
    }
}
