package sillwright.sheet;

import java.util.ArrayList;
import java.util.List;

import sillwright.Assessment;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Member;
import sillwright.walk.Side;
import sillwright.wood.Damage;
import sillwright.work.Repair;
import sillwright.work.WorkFindings;

/// What the dossier is made of, for others who set the same things on a screen: its parts, and its way of saying things.
public final class Pages {
    private Pages() {}

    public static Markup answer(Assessment assessment) { return AnswerSheet.page(assessment); }

    public static Markup water(Assessment assessment) { return WaterSheet.page(assessment); }

    public static Markup orders(Assessment assessment) { return WorkSheet.orders(assessment); }

    public static Markup plan(Assessment assessment) { return WorkSheet.plan(assessment); }

    public static Markup safety(Assessment assessment) { return SafeSheet.page(assessment); }

    /// The first days of the plan, each folded up; all of them are printed for the crew.
    public static Markup days(Assessment assessment) { return DaySheet.folded(assessment, 10); }

    public static Markup watch(Assessment assessment) { return Text.div("upright", WatchSheet.told(assessment)); }

    public static Markup gaps(Assessment assessment) { return GapSheet.page(assessment); }

    /// What stands beneath the elevation of a side: its members and what was seen there.
    public static List<Markup> side(Assessment assessment, Side side) { return new ArrayList<>(WalkSheet.table(assessment, side)); }

    public static String title(Member member) { return Said.title(member); }

    public static String title(Side side) { return Said.title(side); }

    /// Where a damage lies, in words: `up to 14 in from the foot`.
    public static String stretch(Damage damage, Units units) { return Said.stretch(damage, units); }

    /// A volume of wood, in cubic inches or feet, millilitres or litres.
    public static String wood(double mL, Units units) { return Words.wood(mL, units); }

    /// What a repair uses up.
    public static String need(Repair.Need need, Units units) { return Counted.words(need, units); }

    /// What is to be bought of one line.
    public static String buy(WorkFindings.OrderLine line, Units units) { return Counted.buy(line, units); }

    /// What a member's start is called: the foot of an upright one.
    public static String start(Member member) { return Said.startName(member); }
}
