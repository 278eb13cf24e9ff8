package sillwright.water.net;

import java.util.List;

import sillwright.measure.Answer;
import sillwright.measure.Figure;
import sillwright.measure.Inputs;
import sillwright.measure.Key;
import sillwright.measure.Kind;
import sillwright.measure.Refused;

/// The figure that weighs any network of sources and sightings.
public final class NetFigure {
    private NetFigure() {}

    public static Figure net() {
        return new Figure("net", "water", "How likely is each source, once some sightings were looked for and seen or not seen?",
                List.of(Key.text("file", "JSON: \"sources\": [{\"id\", \"prior\"}], \"sightings\": [{\"id\", \"leak\", \"strengths\": {source id: probability}, \"seen\": true | false | left out where "
                        + "nobody looked}]; its schema: sillwright schema net", "network.json")),
                Figure.gives("SOURCE-ID", "one result for each source, under its id: the probability that it is at work, 0 to 1", NetFile.EVIDENCE, "the probability of exactly these sightings, seen and not seen"),
                List.of(Network.NOISY_OR, Network.TWO_LAYERS, Network.ELIMINATION), "file=examples/porch-corner.net.json", NetFigure::work);
    }

    private static void work(Inputs in, Answer.Sheet out) {
        Network.Posterior posterior;
        NetFile net;
        try {
            net = NetFile.read(in.contents("file"));
            posterior = net.network().given(net.looks());
        } catch (Refused refused) {
            throw in.refuse("file", refused);
        }
        for (int i = 0; i < net.ids().size(); i++) out.put(net.ids().get(i), posterior.sources().get(i), Kind.FRACTION);
        out.put(NetFile.EVIDENCE, posterior.evidence(), Kind.FRACTION);
        out.beware("odds are as good as the priors and strengths put in: what was seen with one's own eyes goes before them");
    }
}
