package sillwright.desk;

import java.io.PrintWriter;
import java.util.concurrent.Callable;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import sillwright.measure.Basis;
import sillwright.measure.Words;
import sillwright.walk.Choice;
import sillwright.walk.Species;

/// `sillwright species [NAME]`: the woods of the table, or one with all that is known of it.
@Command(name = "species", description = "List the woods that the program knows, or tell of one.", mixinStandardHelpOptions = true, sortOptions = false)
final class SpeciesCommand implements Callable<Integer> {
    @Parameters(arity = "0..1", paramLabel = "NAME", description = "as in the list: pine-eastern-white")
    private String name;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        if (name != null) one(out, Species.named(name));
        else for (Species species : Species.all().values())
            out.println(FigureCommand.pad(species.name(), 28) + FigureCommand.pad(Choice.said(species.durability()), 16) + species.use());
        return 0;
    }

    private static void one(PrintWriter out, Species species) {
        out.println(species.name() + ", " + species.scientific());
        out.println("  heartwood against decay    " + Choice.said(species.durability()));
        out.println("  specific gravity           " + Words.number(species.gravityGreen(), 2) + " green, " + Words.number(species.gravityOvenDry(), 2) + " oven-dry");
        out.println("  shrinkage, green to dry    radial " + Words.number(100 * species.radial(), 1) + " %, tangential " + Words.number(100 * species.tangential(), 1) + " %, volume "
                + Words.number(100 * species.volumetric(), 1) + " %");
        out.println("  bending, small clear       " + Words.number(species.bendingPsi(), 0) + " psi, a mean and no design value");
        Brief.wrap(out, "  met as                     ", species.use());
        Brief.wrap(out, "  working it                 ", species.notes());
        out.println("\nRests on");
        for (Basis basis : species.basis()) Brief.wrap(out, "  ", basis.words());
    }
}
