package sillwright.desk;

import java.io.PrintWriter;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.Callable;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import sillwright.Assessment;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Choice;
import sillwright.walk.Member;
import sillwright.walk.Side;
import sillwright.walk.Species;
import sillwright.walk.Survey;
import sillwright.watch.LookAhead;
import sillwright.watch.WatchFindings;
import sillwright.water.WaterFindings;
import sillwright.wood.Change;
import sillwright.wood.Condition;
import sillwright.wood.Damage;
import sillwright.work.DesignWords;
import sillwright.work.Repair;
import sillwright.work.WorkFindings;

/// One command for each stage: what it found, in words.
final class StageCommands {
    private StageCommands() {}

    /// Reads a survey, runs the road, and says one stage's part of it.
    abstract static class Stage implements Callable<Integer> {
        @Mixin
        private Road road;

        @CommandLine.Spec
        private CommandLine.Model.CommandSpec spec;

        @Override
        public Integer call() {
            Road.Walked walked = road.walk(spec.commandLine().getErr());
            walked.progress().done();
            say(walked.assessment(), spec.commandLine().getOut(), walked.assessment().settings().units());
            return walked.code();
        }

        abstract void say(Assessment a, PrintWriter out, Units units);
    }

    @Command(name = "walk", description = "What is there, and what was seen, probed and measured.", mixinStandardHelpOptions = true, sortOptions = false)
    static final class Walk extends Stage {
        @Override
        void say(Assessment a, PrintWriter out, Units units) {
            Survey survey = a.survey();
            out.println(CheckCommand.counts(survey));
            for (Side side : survey.sides().values()) {
                out.println("\n" + side.id() + ": " + side.title() + ", " + Words.length(side.lengthMm(), units) + " long, looks to " + Words.number(side.bearing().own(), 0) + "°");
                for (Member member : survey.membersOn(side.id()))
                    out.println("  " + FigureCommand.pad(member.id(), 22) + FigureCommand.pad(Words.length(member.widthMm(), units) + " x " + Words.length(member.depthMm(), units) + " x "
                            + Words.length(member.lengthMm(), units), 38) + member.title() + ", " + Choice.said(member.role()) + ", " + Species.said(member.species()));
            }
        }
    }

    @Command(name = "water", description = "Where the water comes from, and what stops it.", mixinStandardHelpOptions = true, sortOptions = false)
    static final class Water extends Stage {
        @Override
        void say(Assessment a, PrintWriter out, Units units) {
            WaterFindings water = a.water();
            List<Change> all = Change.all(water, a.wood());
            Brief.water(water, out);
            for (WaterFindings.RankedSource source : water.sources()) {
                out.println(source.id() + "  " + Words.sentence(source.words()) + ": " + Words.chance(source.probability()) + " likely, " + Words.percent(source.prior()) + " before the sightings");
                for (WaterFindings.Evidence e : source.evidence()) out.println("      " + FigureCommand.pad((e.weight() >= 0 ? "+" : "") + Words.number(e.weight(), 1), 6) + e.words());
                for (WaterFindings.Remedy r : source.remedies())
                    Brief.wrap(out, "      stop it: ", r.words() + " (" + a.work().plan().cost().band(source.id(), r.word()).orElse(r.band()) + (r.touches().isEmpty() ? "" : "; touches: " + r.touches()) + ")");
                source.ruling().ifPresent(ruling -> Brief.wrap(out, "      decided: ", Words.sentence(ruling.words()) + "." + (ruling.caution().isEmpty() ? "" : " " + ruling.caution())));
                changes(a, all, source, out);
            }
            for (WaterFindings.Round round : water.rounds()) round(round, out);
            for (WaterFindings.InTheWood life : water.lives()) life(life, a.survey(), out);
            out.println();
            for (WaterFindings.GutterCheck g : water.gutters()) Brief.wrap(out, "", g.words());
            for (WaterFindings.SplashCheck s : water.splashes()) Brief.wrap(out, "", s.words());
            water.cold().ifPresent(cold -> Brief.wrap(out, "", cold.words()));
            for (WaterFindings.RainCheck r : water.rains()) Brief.wrap(out, "", Words.sentence(r.side()) + " side: " + r.words());
            for (String gap : water.gaps()) Brief.wrap(out, "not known: ", gap);
        }

        /// What stopping a source is expected to change, member by member, the most wetted first.
        private static void changes(Assessment a, List<Change> all, WaterFindings.RankedSource source, PrintWriter out) {
            List<Change> changes = all.stream().filter(change -> change.source().equals(source.id())).sorted(Comparator.comparingDouble(change -> change.hoursThen() - change.hours())).toList();
            for (Change change : changes.stream().limit(MOST_CHANGES).toList())
                Brief.wrap(out, "      then: ", a.survey().members().get(change.member()).title() + ": " + change.words() + (change.with().isEmpty() ? "" : ", with " + Words.list(change.with()) + " stopped as well; " + change.aloneWords()));
            if (changes.size() > MOST_CHANGES) out.println("      and " + (changes.size() - MOST_CHANGES) + " members more; findings.json has them all.");
        }

        private static final int MOST_CHANGES = 5;

        private static void round(WaterFindings.Round round, PrintWriter out) {
            out.println("\nA round " + round.when().words() + ", about " + Words.number(round.minutes(), 0) + " min, until the leading source of each side passes " + Words.percent(WaterFindings.SETTLED));
            int number = 0;
            for (WaterFindings.Step step : round.steps()) Brief.wrap(out, "  " + ++number + ". ", step.side() + (step.place().isEmpty() ? "" : ", " + step.place()) + ": " + step.words() + " ("
                    + Words.number(step.minutes(), 0) + " min, " + Words.number(step.bits(), 2) + " bits, " + Words.chance(step.seen()) + " likely to be seen)");
            Brief.wrap(out, "  ", round.outcome());
        }

        private static void life(WaterFindings.InTheWood life, Survey survey, PrintWriter out) {
            String where = life.side() + " side" + (life.member().isEmpty() ? "" : ", " + survey.members().get(life.member()).title());
            out.println("\nIn the wood, " + where + ": " + life.life().words() + ", " + Words.chance(life.probability()) + " likely");
            Brief.wrap(out, "  by: ", String.join("; ", life.signs()));
            Brief.wrap(out, "  ", Words.sentence(life.active()) + ". It needs " + Character.toLowerCase(life.needs().charAt(0)) + life.needs().substring(1) + ".");
            if (!life.call().isEmpty()) Brief.wrap(out, "  call: ", life.call() + ".");
            Brief.wrap(out, "  water: ", life.water() + (life.sources().isEmpty() ? "" : " (" + Words.list(life.sources()) + ")") + ".");
        }
    }

    @Command(name = "wood", description = "How far the decay has gone, and what is left.", mixinStandardHelpOptions = true, sortOptions = false)
    static final class Wood extends Stage {
        @Override
        void say(Assessment a, PrintWriter out, Units units) {
            sillwright.wood.Climate.words(a.survey().building()).ifPresent(out::println);
            for (Condition c : a.wood().all()) {
                out.println(FigureCommand.pad(c.member().id(), 22) + FigureCommand.pad(Choice.said(c.state()), 12)
                        + FigureCommand.pad(c.wettest().map(Words::percent).orElse("-"), 7) + c.words());
                for (Damage d : c.damages())
                    out.println("    " + d.id() + ": from " + Words.length(d.fromMm(), units) + " to " + Words.length(d.toMm(), units) + ", deepest " + Words.length(d.deepestMm(), units)
                            + ", soft " + Words.wood(d.volumeMl().median(), units) + " (" + Words.wood(d.volumeMl().low(), units) + " to " + Words.wood(d.volumeMl().high(), units)
                            + "), section left " + Words.percent(d.section().areaKept()));
                if (!c.needsWork()) continue;
                for (Damage d : c.damages()) Brief.wrap(out, "    ", d.id() + ": " + d.doubtWords(units));
                c.next().ifPresent(next -> Brief.wrap(out, "    ", next.words(units)));
                a.wood().capacity(c.member().id()).ifPresent(capacity -> {
                    Brief.wrap(out, "    ", capacity.words() + capacity.governs(units).map(said -> " " + said).orElse(""));
                    capacity.alert().ifPresent(alert -> Brief.wrap(out, "    beware: ", alert + " A shore there bears about " + Words.force(capacity.shore().loadN(), units) + ", on a pad "
                            + Words.length(capacity.shore().padSideMm(), units) + " square on ordinary ground."));
                });
                a.wood().outlook(c.member().id()).ifPresentOrElse(outlook -> Brief.wrap(out, "    ", outlook.words()), () -> {
                    if (!a.wood().outlooks().isEmpty()) Brief.wrap(out, "    ", sillwright.wood.Outlook.NO_SOURCE);
                });
            }
            if (!a.wood().outlooks().isEmpty()) Brief.wrap(out, "beware: ", sillwright.wood.Outlook.CAUTION);
            for (String gap : a.wood().gaps()) Brief.wrap(out, "not known: ", gap);
        }
    }

    @Command(name = "work", description = "The least that will hold, and how it is made.", mixinStandardHelpOptions = true, sortOptions = false)
    static final class Work extends Stage {
        @Override
        void say(Assessment a, PrintWriter out, Units units) {
            for (Repair r : a.work().repairs()) {
                out.println(r.id() + "  " + Words.sentence(r.damage().member().title()) + ": " + r.treatment().words() + (r.urgent() ? ", cannot wait" : "")
                        + (r.waterFirst().isEmpty() ? "" : ", after " + Words.list(r.waterFirst())));
                r.ruling().ifPresent(ruling -> out.println("      decided, entry of kind decision: " + Choice.said(ruling.decision().verdict()) + " by the " + Choice.said(ruling.decision().by()) + "; recommended was " + ruling.recommended().words()));
                for (String reason : r.reasons()) Brief.wrap(out, "      because ", reason);
                WorkBrief.compared(r, out);
                for (String line : DesignWords.of(r.design(), units)) Brief.wrap(out, "      design: ", line);
                for (int i = 0; i < r.steps().size(); i++) Brief.wrap(out, "      " + (i + 1) + ". ", r.steps().get(i));
                for (String caution : r.cautions()) Brief.wrap(out, "      beware: ", caution);
            }
            out.println();
            WorkBrief.order(a.work(), out, units);
            Brief.cost(a.work(), out);
            Brief.when(a.work(), out);
            for (WorkFindings.Task t : a.work().tasks()) out.println(FigureCommand.pad(t.id(), 5) + t.start() + " to " + t.end() + "  " + t.title());
            out.println();
            WorkBrief.safety(a.work(), id -> java.util.Optional.ofNullable(a.survey().sides().get(id)).map(sillwright.walk.Side::title).filter(title -> !title.isBlank()).orElse(id + " side"), out, units);
            for (String gap : a.work().gaps()) Brief.wrap(out, "not known: ", gap);
        }
    }

    @Command(name = "watch", description = "What to look at twice a year, and what it should be.", mixinStandardHelpOptions = true, sortOptions = false)
    static final class Watch extends Stage {
        @Override
        void say(Assessment a, PrintWriter out, Units units) {
            for (sillwright.watch.Verdict verdict : a.watch().verdicts()) Brief.wrap(out, verdict.id() + "  ", verdict.words());
            for (sillwright.watch.Trend trend : a.watch().trends()) Brief.wrap(out, "trend  ", trend.words());
            for (sillwright.watch.Gathered due : sillwright.watch.Gathered.of(a.watch().due(), a.survey(), a.settings().start())) Brief.wrap(out, "due    ", due.on().map(Object::toString).orElse("now") + ": " + due.words() + ", about " + Words.number(due.hours(), 1)
                    + " h" + (due.money().draws() > 0 ? ", " + a.work().plan().cost().words(due.money()) : "") + "; " + due.because());
            a.watch().ahead().ifPresent(ahead -> ahead(ahead, out, units));
            if (!a.watch().verdicts().isEmpty() || !a.watch().trends().isEmpty()) out.println();
            for (WatchFindings.Round round : a.watch().rounds()) {
                out.println(round.first().map(day -> day + "  ").orElse("") + round.title() + ", about " + Words.number(round.minutes(), 0) + " minutes: " + round.why());
                for (WatchFindings.Check check : round.checks())
                    Brief.wrap(out, "  [ ] ", (check.side().isEmpty() ? "" : check.side() + ": ") + check.words() + (check.last().isEmpty() ? "" : "; last " + check.last())
                            + (check.expected().isEmpty() ? "" : "; should be: " + check.expected()) + (check.because().isEmpty() ? "" : " (" + check.because() + ")"));
            }
        }

        private static void ahead(LookAhead ahead, PrintWriter out, Units units) {
            out.println("\nTen years ahead");
            Brief.wrap(out, "  ", ahead.words(units));
            out.println("  " + FigureCommand.pad("", 27) + FigureCommand.pad("soft or cut by then", 21) + FigureCommand.pad("lost once all is mended", 25) + FigureCommand.pad("spent", 14) + FigureCommand.pad("with mending then", 19)
                    + "at its limit, in 100");
            for (LookAhead.Course course : ahead.courses()) {
                LookAhead.Year last = course.years().getLast();
                LookAhead.Spent cost = ahead.cost(last);
                out.println("  " + FigureCommand.pad(course.title(), 27) + FigureCommand.pad(Words.wood(last.goneMl().median(), units), 21) + FigureCommand.pad(Words.wood(last.lostMl().median(), units), 25)
                        + FigureCommand.pad(ahead.sum(cost.spent().median()), 14) + FigureCommand.pad(ahead.sum(cost.all().median()), 19) + Words.number(100 * last.risk(), 0));
            }
            for (String left : ahead.left()) Brief.wrap(out, "  not in it: ", left);
            Brief.wrap(out, "  beware: ", sillwright.wood.Outlook.CAUTION);
            out.println();
        }
    }
}
