package sillwright.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import sillwright.sheet.Pages;
import sillwright.measure.Words;
import sillwright.sheet.Markup;
import sillwright.water.WaterFindings;
import sillwright.water.WaterFindings.RankedSource;
import sillwright.wood.Outlook;

/// Where the water comes from, and what stops it.
final class WaterPage implements StagePage {
    private record Shown(WaterFindings water, Map<String, Outlook> outlooks) {}

    @Override
    public String question() { return "Where does the water come from, and what stops it?"; }

    @Override
    public List<Part> parts(Desk.Opened open, Remembered memory) {
        Part sources = memory.of(new Shown(open.assessment().water(), open.assessment().wood().outlooks()), () -> Part.of("water-sources", Pages.water(open.assessment())));
        List<Markup> choices = new ArrayList<>(List.of(Html.h(2, "Choose what stops it"), Html.small("The simplest is recommended. What is taken here goes into the order of work and the cost.")));
        for (RankedSource source : open.assessment().water().toStop()) {
            Markup choice = Html.of("details", Html.of("summary", source.id() + "  " + Words.sentence(source.words()) + ": " + source.remedies().getFirst().word().replace('-', ' ')),
                    Choosing.remedies(source, Choosing.entry(open.survey(), source.ruling().map(ruling -> ruling.decision()))));
            choices.add(source.ruling().isPresent() ? choice.with("open", "") : choice);
        }
        return List.of(sources, Part.of("water-choices", choices), Part.of("water-sightings", Html.h(2, "Change what was seen"), Html.small("Each sighting speaks for some sources and against others; looked for and not seen tells as much."),
                Readings.sightings(open)));
    }
}
