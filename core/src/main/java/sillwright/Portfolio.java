package sillwright;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import sillwright.measure.Refused;
import sillwright.measure.Words;
import sillwright.walk.Building;
import sillwright.watch.LookAhead;
import sillwright.watch.Verdict;
import sillwright.watch.budget.Choices;
import sillwright.water.WaterFindings.RankedSource;
import sillwright.wood.Interval;
import sillwright.wood.Outlook;
import sillwright.work.Costing;
import sillwright.work.Repair;
import sillwright.work.cost.Range;

/// Several buildings side by side: which cannot wait, and what a limited budget buys most of.
///
/// A budget is money where every building was priced by one book, else hours. Worth is counted in litres of original wood. Stopping a source saves what would go on to rot in the members it wets; a
/// repair saves, on top, what is soft there and would be lost by cutting later, and where the piece bears load and cannot wait, the piece itself. Own choice; a repair is never chosen without the
/// sources that must be stopped first, and each bears its share of setting up and clearing its building. A pure function of the assessments, so that each of them can be worked elsewhere.
///
/// @param buildings what cannot wait first
/// @param chosen    what the budget buys, in the order of the buildings; empty without a budget
/// @param priced    whether sums are money
/// @param currency  of it; empty where the price book names none
/// @param spent     what is chosen comes to, in the middle, money or hours
public record Portfolio(List<Standing> buildings, List<Bought> chosen, boolean priced, String currency, double budget, double spent, double savedMl) {
    public Portfolio {
        buildings = List.copyOf(buildings);
        chosen = List.copyOf(chosen);
    }

    /// How one building stands.
    ///
    /// @param urgent repairs that cannot wait
    /// @param riskSoon probability that a member comes to its limit within two years with nothing done; 0 where it could not be worked
    /// @param lostMl wood that ten years of doing nothing cost more than the recommended work does, once all is mended; the middle
    /// @param failed remedies that do not hold
    /// @param hours  of all that is recommended, setting up and clearing with it
    /// @param money  the same; [Range#NOTHING] where there is no price book
    public record Standing(String id, String name, int urgent, double riskSoon, double lostMl, int failed, Range hours, Range money) {}

    /// A thing that the budget buys.
    ///
    /// @param ref   id of the source or the repair in its building
    /// @param needs refs of what must be bought with it
    public record Bought(String building, String ref, String words, double hours, double money, double savedMl, List<String> needs) {
        public Bought { needs = List.copyOf(needs); }
    }

    /// @param budget money where there is a price book, else hours; empty to rank only
    public static Portfolio of(List<Assessment> assessments, Optional<Double> budget) {
        boolean priced = !assessments.isEmpty() && assessments.stream().allMatch(one -> one.work().plan().cost().priced());
        String currency = assessments.isEmpty() ? "" : assessments.getFirst().work().plan().cost().currency();
        List<Standing> buildings = assessments.stream().map(Portfolio::standing).sorted(FIRST).toList();
        if (budget.isEmpty()) return new Portfolio(buildings, List.of(), priced, currency, 0, 0, 0);
        if (!(budget.get() >= 0 && Double.isFinite(budget.get()))) throw new Refused("budget", "{} is no budget", "write the money or the hours there are, such as 1200", budget.get());
        List<Choices.Thing> things = new ArrayList<>();
        List<Bought> offers = new ArrayList<>();
        for (Assessment one : assessments) offer(one, priced, things, offers);
        Choices.Best best = Choices.best(things, budget.get());
        List<String> order = buildings.stream().map(Standing::id).toList();
        List<Bought> chosen = best.chosen().stream().map(offers::get).sorted(Comparator.comparingInt(bought -> order.indexOf(bought.building))).toList();
        return new Portfolio(buildings, chosen, priced, currency, budget.get(), best.cost(), best.worth());
    }

    private static final Comparator<Standing> FIRST = Comparator.comparing((Standing one) -> one.urgent == 0).thenComparingDouble(one -> -one.riskSoon).thenComparingInt(one -> -one.urgent)
            .thenComparingInt(one -> -one.failed).thenComparingDouble(one -> -one.lostMl).thenComparing(Standing::id);

    /// `1,240 dollars`, or `38 h` where nothing is priced.
    public String sum(double amount) { return priced ? Costing.sum(amount) + (currency.isEmpty() ? "" : " " + currency) : Words.number(amount, amount < 10 ? 1 : 0) + " h"; }

    /// What a building's work comes to, in money where it is priced: `1,100 to 1,900 dollars`.
    public String cost(Standing of) {
        return priced ? Costing.sum(of.money.low()) + " to " + Costing.sum(of.money.high()) + (currency.isEmpty() ? "" : " " + currency) : Costing.hours(of.hours);
    }

    private static String id(Assessment one) { return one.survey().building().map(Building::id).orElse("building-not-described"); }

    private static Standing standing(Assessment one) {
        Costing cost = one.work().plan().cost();
        int failed = (int) one.watch().verdicts().stream().filter(verdict -> verdict.state() == Verdict.State.NOT_DRYING || verdict.state() == Verdict.State.WET_AGAIN).count();
        Optional<LookAhead> ahead = one.watch().ahead();
        double soon = ahead.map(look -> look.course(LookAhead.Kind.NOTHING).years().get(2).risk()).orElse(0.0);
        double lost = ahead.map(look -> lost(look, LookAhead.Kind.NOTHING) - lost(look, LookAhead.Kind.WORK)).orElse(0.0);
        return new Standing(id(one), one.survey().name(), one.work().urgent().size(), soon, Math.max(0, lost), failed, cost.hours(), cost.money());
    }

    private static double lost(LookAhead look, LookAhead.Kind kind) { return look.course(kind).years().getLast().lostMl().median(); }

    private static void offer(Assessment one, boolean priced, List<Choices.Thing> things, List<Bought> offers) {
        Map<String, Integer> at = new HashMap<>();
        Costing cost = one.work().plan().cost();
        double money = cost.repairs().stream().mapToDouble(part -> part.money().middle()).sum(), hours = cost.repairs().stream().mapToDouble(part -> part.hours().middle()).sum();
        double dearer = money > 0 ? 1 + cost.aroundMoney() / money : 1, longer = hours > 0 ? 1 + cost.aroundHours() / hours : 1;
        for (RankedSource source : one.water().toStop()) {
            double worth = 0;
            for (String member : source.members()) worth += grows(one, member) / Math.max(1, one.water().wetting(member).size());
            at.put(source.id(), things.size());
            add(one, source.id(), source.remedies().isEmpty() ? source.words() : source.remedies().getFirst().words(), 1, 1, worth, List.of(), priced, things, offers);
        }
        for (Repair repair : one.work().repairs()) {
            double whole = repair.damage().member().sectionMm2() * repair.damage().member().lengthMm() / 1000, soft = repair.damage().volumeMl().median();
            double worth = Math.min(soft, Math.max(0, whole - repair.woodLostMl())) + (repair.urgent() && repair.damage().member().bearsLoad() ? whole : 0);
            add(one, repair.id(), repair.treatment().words() + ", " + repair.damage().member().title(), longer, dearer, worth, repair.waterFirst().stream().filter(at::containsKey).map(at::get).toList(),
                    priced, things, offers);
        }
    }

    private static void add(Assessment one, String ref, String words, double longer, double dearer, double worth, List<Integer> needs, boolean priced, List<Choices.Thing> things, List<Bought> offers) {
        Optional<Costing.Part> part = one.work().plan().cost().part(ref);
        double hours = longer * part.map(of -> of.hours().middle()).orElse(0.0), money = dearer * part.map(of -> of.money().middle()).orElse(0.0);
        things.add(new Choices.Thing(id(one) + " " + ref, priced ? money : hours, worth, needs));
        offers.add(new Bought(id(one), ref, words, hours, money, worth, needs.stream().map(offers::get).map(Bought::ref).toList()));
    }

    /// Wood that ten more years of its water would make soft in a member, mL, the middle.
    private static double grows(Assessment one, String member) {
        Optional<Outlook> outlook = one.wood().outlook(member);
        if (outlook.isEmpty()) return 0;
        List<Interval> asIs = outlook.get().asIs().ratings(), stopped = outlook.get().stopped().ratings();
        double from = asIs.getFirst().median(), more = asIs.get(LookAhead.YEARS).median() - stopped.get(LookAhead.YEARS).median();
        double soft = one.wood().of(member).damages().stream().mapToDouble(damage -> damage.volumeMl().median()).sum();
        var described = one.wood().of(member).member();
        double end = described.sectionMm2() * Math.min(300, described.lengthMm()) / 1000;
        return Math.max(0, from > 0 ? soft * more / from : end * more / 4);
    }
}
