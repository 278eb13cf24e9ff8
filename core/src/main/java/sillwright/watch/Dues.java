package sillwright.watch;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import sillwright.measure.Basis;
import sillwright.measure.Quantity;
import sillwright.measure.Words;
import sillwright.walk.Member;
import sillwright.walk.Side;
import sillwright.walk.Survey;
import sillwright.walk.WorkDone;
import sillwright.walk.WorkDone.Coating;
import sillwright.work.Estimate;
import sillwright.work.Outfit;
import sillwright.work.cost.Bill;

/// What falls due on this building, in order: coats by their sort, their exposure and their record, joints and fills after their first and second year, end grain, roof.
final class Dues {
    static final List<Basis> BASIS = List.of(Basis.read("Preservation Brief 10; Preservation Brief 47", "repaint every 5 to 8 years, windows and shutters 5 to 7; porch end grain again every 1 to 2 years; roof yearly, a roofer every 5"),
            Basis.own("within that: sooner on south and west sides and on level tops, with one coat, or over wood wetter than 15 %; stains and oil half as long"));
    private static final double DAYS = 365.25;

    private final Survey survey;
    private final LocalDate today;
    private final List<Due> all = new ArrayList<>();

    private final Outfit outfit;

    private Dues(Survey survey, LocalDate today, Outfit outfit) {
        this.survey = survey;
        this.today = today;
        this.outfit = outfit;
    }

    static List<Due> of(Survey survey, LocalDate today, Outfit outfit) {
        Dues dues = new Dues(survey, today, outfit);
        for (Survey.Noted<WorkDone> noted : survey.works()) if (!overtaken(noted, survey)) dues.work(noted.what());
        for (Member member : survey.members().values()) if (member.coat() == Member.Coat.FAILING) dues.put(today, "scrape, let dry and recoat {}", member.side(), Optional.of(member.id()), "its coat fails now", Estimate.recoat(member, true, outfit));
        if (!survey.sides().isEmpty()) dues.put(LocalDate.of(today.getYear() + 1, 5, 15), "have a roofer look over roof and flashings", "", Optional.empty(), "every five years, sooner where no record is", dues.task("roof-look", ""));
        return dues.all.stream().sorted(Comparator.comparing(Due::on).thenComparing(Due::words)).toList();
    }

    /// A later work of the same sort on the same piece begins its time anew.
    private static boolean overtaken(Survey.Noted<WorkDone> noted, Survey survey) {
        return noted.what().member().isPresent() && survey.works().stream().anyMatch(other -> other.dayMs() > noted.dayMs() && other.what().member().equals(noted.what().member())
                && (other.what().done() == WorkDone.Done.REPLACE || other.what().done() == noted.what().done() || noted.what().done() == WorkDone.Done.RECOAT && other.what().coat().isPresent()));
    }

    private void work(WorkDone work) {
        Optional<Member> member = work.member().map(id -> survey.members().get(id));
        member.ifPresent(on -> work.coat().ifPresent(coat -> {
            double years = lifeYears(coat, on, survey.sides().get(on.side()));
            put(work.on().plusDays(Math.round(years * DAYS)), "recoat {}", on.side(), work.member(), "coated " + work.on() + ", lasts about " + Words.number(Math.round(2 * years) / 2.0, 1) + " years there", Estimate.recoat(on, false, outfit));
            if (coat.ends() && on.contact() != Member.Contact.NONE) put(work.on().plusYears(2), "treat the end grain of {} again", on.side(), work.member(), "sealed " + work.on() + ", again every 1 to 2 years", ends(on));
        }));
        if (member.isPresent() && work.done().endsTheDamage()) for (int year : new int[] {1, 2, 5}) {
            LocalDate on = work.on().plusYears(year);
            if (!on.isBefore(today) || year == 5) {
                put(on, "look over the " + work.said() + " of {}" + (year == 5 ? ", and push an awl in beside it" : ""), work.side(), work.member(), work.said() + " " + work.on(), task("look-over", member.get().id()));
                break;
            }
        }
        if (work.done() == WorkDone.Done.CLEAN || work.against().filter("gutter-clogged"::equals).isPresent()) {
            LocalDate on = work.on().plusMonths(6);
            put(on, "clear the gutters again, " + work.side() + " side", work.side(), Optional.empty(), "cleared " + work.on() + ", every six months", task("clear-gutter", ""));
        }
    }

    /// Years a coat lasts where it is.
    static double lifeYears(Coating coat, Member member, Side side) {
        double years = switch (coat.film()) {
            case OIL_PAINT, WATER_PAINT, SOLID_STAIN -> 7;
            case STAIN, OIL -> 3.5;
            case LIMEWASH -> 4;
            case OTHER -> 5;
        };
        double bearing = side.bearing().own();
        if (bearing >= 135 && bearing <= 315) years -= 1;
        switch (member.kind()) {
            case WINDOW_SILL, THRESHOLD, TREAD, FLOORBOARD, RAIL, WATER_TABLE -> years -= 1.5;
            default -> {}
        }
        if (coat.primer() + coat.coats() < 2) years *= 0.6;
        if (coat.primer() == 0 && coat.film() != WorkDone.Film.STAIN && coat.film() != WorkDone.Film.OIL) years *= 0.85;
        if (coat.moisture().map(Quantity::own).filter(moisture -> moisture > 0.15).isPresent()) years *= 0.6;
        return Math.max(1, years);
    }

    private Bill task(String task, String ref) { return Estimate.task(task, 1, ref, outfit); }

    private Bill ends(Member member) {
        List<String> gaps = new ArrayList<>();
        return task("treat-ends", member.id()).with(outfit.materials().lines(outfit.prices(), "treat-end", 0, member.id(), gaps), gaps);
    }

    /// @param sort what, with `{}` for the member's title
    private void put(LocalDate on, String sort, String side, Optional<String> member, String because, Bill bill) {
        String words = member.map(id -> sort.replace("{}", survey.members().get(id).title())).orElse(sort);
        all.add(new Due(on, words, sort, side, member, because, bill.likelyHours(), bill.money(on.toEpochDay())));
    }
}
