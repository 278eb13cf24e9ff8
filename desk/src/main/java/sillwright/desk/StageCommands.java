package sillwright.desk;

import java.io.PrintWriter;
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
import sillwright.walk.Survey;
import sillwright.watch.WatchFindings;
import sillwright.water.WaterFindings;
import sillwright.wood.Condition;
import sillwright.wood.Damage;
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
                            + Words.length(member.lengthMm(), units), 38) + member.title() + ", " + Choice.said(member.role()) + ", " + member.species());
            }
        }
    }

    @Command(name = "water", description = "Where the water comes from, and what stops it.", mixinStandardHelpOptions = true, sortOptions = false)
    static final class Water extends Stage {
        @Override
        void say(Assessment a, PrintWriter out, Units units) {
            WaterFindings water = a.water();
            Brief.water(water, out);
            for (WaterFindings.RankedSource source : water.sources()) {
                out.println(source.id() + "  " + Words.sentence(source.words()) + ": " + Words.chance(source.probability()) + " likely, " + Words.percent(source.prior()) + " before the sightings");
                for (WaterFindings.Evidence e : source.evidence()) out.println("      " + FigureCommand.pad((e.weight() >= 0 ? "+" : "") + Words.number(e.weight(), 1), 6) + e.words());
                for (WaterFindings.Remedy r : source.remedies()) Brief.wrap(out, "      stop it: ", r.words());
            }
            out.println();
            for (WaterFindings.GutterCheck g : water.gutters()) Brief.wrap(out, "", g.words());
            for (WaterFindings.SplashCheck s : water.splashes()) Brief.wrap(out, "", s.words());
            for (String gap : water.gaps()) Brief.wrap(out, "not known: ", gap);
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
                            + ", soft " + Words.volume(d.volumeMl().median(), units) + " (" + Words.volume(d.volumeMl().low(), units) + " to " + Words.volume(d.volumeMl().high(), units)
                            + "), section left " + Words.percent(d.section().areaKept()));
                if (!c.needsWork()) continue;
                a.wood().capacity(c.member().id()).ifPresent(capacity -> {
                    Brief.wrap(out, "    ", capacity.words());
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
                for (String reason : r.reasons()) Brief.wrap(out, "      because ", reason);
                for (Repair.Alternative other : r.alternatives()) Brief.wrap(out, "      not " + other.treatment().words() + ": ", other.against());
                for (int i = 0; i < r.steps().size(); i++) Brief.wrap(out, "      " + (i + 1) + ". ", r.steps().get(i));
                for (String caution : r.cautions()) Brief.wrap(out, "      beware: ", caution);
            }
            out.println();
            for (WorkFindings.Task t : a.work().tasks()) out.println(FigureCommand.pad(t.id(), 5) + t.start() + " to " + t.end() + "  " + t.title());
            for (String gap : a.work().gaps()) Brief.wrap(out, "not known: ", gap);
        }
    }

    @Command(name = "watch", description = "What to look at twice a year, and what it should be.", mixinStandardHelpOptions = true, sortOptions = false)
    static final class Watch extends Stage {
        @Override
        void say(Assessment a, PrintWriter out, Units units) {
            for (WatchFindings.Round round : a.watch().rounds()) {
                out.println(round.first() + "  " + round.title() + ": " + round.why());
                for (WatchFindings.Check check : round.checks())
                    Brief.wrap(out, "  [ ] ", (check.side().isEmpty() ? "" : check.side() + ": ") + check.words() + (check.last().isEmpty() ? "" : "; last " + check.last())
                            + (check.expected().isEmpty() ? "" : "; should be " + check.expected()) + (check.because().isEmpty() ? "" : " (" + check.because() + ")"));
            }
        }
    }
}
