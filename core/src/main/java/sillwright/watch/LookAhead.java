package sillwright.watch;

import java.util.List;

import sillwright.measure.Basis;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.wood.Interval;
import sillwright.work.Costing;

/// Ten years under each course that may be taken.
///
/// What is soft must be cut out some day, and a repair takes sound wood with it. So courses are compared by what is lost once all is mended: at the start they are equal, and they part as decay goes on.
///
/// @param courses  nothing, water only, the recommended work, the same put off
/// @param left     what the forecast leaves out, each a sentence
/// @param priced   whether money stands beside the hours
/// @param currency of the money; empty where the price book names none
public record LookAhead(List<Course> courses, List<String> left, boolean priced, String currency, List<Basis> basis) {
    public static final int YEARS = 10;

    public LookAhead {
        courses = List.copyOf(courses);
        left = List.copyOf(left);
        basis = List.copyOf(basis);
    }

    public enum Kind { NOTHING, WATER_ONLY, WORK, POSTPONED }

    /// @param delay years until the work is done, where it is put off
    /// @param years now first, then the end of each year
    public record Course(Kind kind, int delay, List<Year> years) {
        public Course { years = List.copyOf(years); }

        public String title() {
            return switch (kind) {
                case NOTHING -> "do nothing";
                case WATER_ONLY -> "stop the water only";
                case WORK -> "the recommended work";
                case POSTPONED -> "the same work in " + Words.count(delay, "year");
            };
        }
    }

    /// How it stands at the end of a year; each interval holds nine in ten of the draws.
    ///
    /// @param goneMl original wood soft or cut away by then
    /// @param lostMl original wood lost once all that is soft then has been mended too
    /// @param hours  spent by then, and what mending the rest then would take
    /// @param money  the same in money; nothing where there is no price book
    /// @param risk   probability that some member that bears load has come to its limit by then
    public record Year(Interval goneMl, Interval lostMl, Spent hours, Spent money, double risk) {}

    /// @param spent by then
    /// @param all   with what mending the rest then would take
    public record Spent(Interval spent, Interval all) {}

    public Course course(Kind kind) { return courses.stream().filter(one -> one.kind == kind).findFirst().orElseThrow(); }

    /// What waiting costs, in two or three sentences for whoever owns the building.
    public String words(Units units) {
        Year work = course(Kind.WORK).years.getLast(), nothing = course(Kind.NOTHING).years.getLast();
        double more = nothing.lostMl.median() - work.lostMl.median();
        String wood = more > 0.02 * Math.max(1, work.lostMl.median()) ? "Ten years of doing nothing cost " + Words.wood(more, units) + " more of the original wood than the work now"
                : "Ten years of doing nothing cost hardly more original wood than the work now, which takes what is soft already and what must be cut with it";
        Spent now = priced ? work.money : work.hours, then = priced ? nothing.money : nothing.hours;
        String sum = then.all.median() > now.all.median() * 1.02 ? ", and mending then takes about " + sum(then.all.median()) + " where it takes " + sum(now.all.median()) + " now" : "";
        return wood + sum + ". " + (nothing.risk >= 0.005 ? "Left alone, a piece that bears load is at its limit within ten years in " + Words.number(100 * nothing.risk, 0) + " of 100 draws, with the work in "
                + Words.number(100 * work.risk, 0) + "." : "No piece that bears load comes to its limit in the draws.");
    }

    /// Hours, or money where it is priced.
    public String sum(double amount) { return priced ? Costing.sum(amount) + (currency.isEmpty() ? "" : " " + currency) : Words.number(amount, 0) + " h"; }

    /// `640 dollars (510 to 800)`, or the same in hours.
    public String sum(Interval amount) {
        return amount.high() <= 0 ? "0" : sum(amount.median()) + " (" + (priced ? Costing.sum(amount.low()) + " to " + Costing.sum(amount.high()) : Words.number(amount.low(), 0) + " to " + Words.number(amount.high(), 0)) + ")";
    }

    /// What a year's course costs, in money where it is priced.
    public Spent cost(Year year) { return priced ? year.money : year.hours; }
}
