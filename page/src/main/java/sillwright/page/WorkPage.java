package sillwright.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import sillwright.Assessment;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.sheet.Markup;
import sillwright.sheet.Pages;
import sillwright.sheet.RepairDrawing;
import sillwright.walk.Side;
import sillwright.work.Repair;
import sillwright.work.WorkFindings;

/// The least that will hold, how it is made, what else was weighed; then what to buy, in what order, and how to work safely.
final class WorkPage implements StagePage {
    private record Shown(Repair repair, Units units, String building, Optional<String> decision) {}

    @Override
    public String question() { return "What is the least that will hold, and how is it made?"; }

    @Override
    public List<Part> parts(Desk.Opened open, Remembered memory) {
        Assessment a = open.assessment();
        List<Part> all = new ArrayList<>();
        for (Side side : open.survey().sides().values())
            if (a.work().repairs().stream().anyMatch(repair -> repair.damage().member().side().equals(side.id()))) all.add(Pointing.part(open, side, memory, "wood"));
        if (a.work().repairs().isEmpty()) all.add(Part.of("work-none", Html.p("No repair is called for.")));
        else all.addFirst(Part.of("work-list", Html.p(Words.sentence(Words.count(a.work().repairs().size(), "repair")) + ", the first to be done first."), Html.of("ul", a.work().repairs().stream().map(WorkPage::line).toList()).with("class", "repairs")));
        for (Repair repair : a.work().repairs()) {
            Shown shown = new Shown(repair, a.settings().units(), open.building(), Choosing.entry(open.survey(), repair.ruling().map(ruling -> ruling.decision())));
            all.add(memory.of(shown, () -> Part.of("repair-" + key(repair), repair(repair, shown.units, shown.decision))));
        }
        WorkFindings work = a.work();
        all.add(memory.of(List.of("order", work.order(), work.cuts(), work.plan().cost(), a.settings().units()), () -> Part.later("work-order", Pages.orders(a))));
        all.add(memory.of(List.of("plan", work.tasks(), work.plan().timetable()), () -> Part.later("work-plan", Pages.plan(a))));
        all.add(memory.of(List.of("days", work.tasks(), work.plan().timetable(), work.safety(), work.repairs().stream().map(one -> List.of(one.id(), one.treatment(), one.needs(), one.pieces())).toList(),
                a.settings().units()), () -> Part.later("work-days", Pages.days(a))));
        all.add(memory.of(List.of("safety", work.safety(), a.settings().units(), open.survey().sides()), () -> Part.later("work-safety", Pages.safety(a))));
        return all;
    }

    private static String choices(Repair repair) {
        long held = repair.comparison().all().stream().filter(one -> one.worked()).count();
        return held > 1 ? "What would hold, side by side: " + held + " ways; decide" : "Nothing else would hold; decide";
    }

    private static Markup line(Repair repair) {
        return Html.of("li", Html.a("#repair-" + key(repair), repair.id() + "  " + Pages.title(repair.damage().member())), ": " + repair.treatment().words(), repair.urgent() ? Html.of("span", ", cannot wait").with("class", "act") : List.of());
    }

    /// A repair's name on a page: that of its damage, which stays while repairs are numbered anew.
    static String key(Repair repair) { return repair.damage().id().replace('/', '-'); }

    private static Markup repair(Repair repair, Units units, Optional<String> decision) {
        List<Object> all = new ArrayList<>();
        all.add(Html.h(3, repair.id() + "  " + Words.sentence(repair.treatment().words()) + ": " + Pages.title(repair.damage().member())));
        all.add(Html.p(repair.urgent() ? List.of(Html.of("span", "Cannot wait. ").with("class", "act")) : List.of(), Words.sentence(Pages.stretch(repair.damage(), units)) + ". Original wood taken away: "
                + Pages.wood(repair.woodLostMl(), units) + "." + (repair.waterFirst().isEmpty() ? "" : " Stop first: " + Words.list(repair.waterFirst()) + ".")));
        for (String caution : repair.cautions()) all.add(Html.caution(caution));
        all.add(Html.div("sheet", RepairDrawing.draw(repair, units).svg()).with("tabindex", "0"));
        all.add(Html.h(4, "Why this one"));
        all.addAll(Html.list(repair.reasons()));
        all.add(Html.of("details", Html.of("summary", "How it is made"), Html.steps(repair.steps())));
        all.add(Html.of("details", Html.of("summary", "What it uses up"), Html.list(repair.needs().stream().map(need -> Pages.need(need, units)).toList())));
        if (!repair.comparison().all().isEmpty()) {
            Markup choice = Html.of("details", Html.of("summary", choices(repair)), Choosing.treatments(repair, decision, units));
            all.add(repair.ruling().isPresent() ? choice.with("open", "") : choice);
        }
        return Html.of("article", all).with("class", "repair");
    }
}
