package sillwright.water.net;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

import sillwright.measure.Json;
import sillwright.measure.Refused;
import sillwright.measure.Words;
import sillwright.water.net.Network.Finding;
import sillwright.water.net.Network.Link;
import sillwright.water.net.Network.Look;

/// A network of sources and sightings as a JSON text has it, with what is known of each sighting.
///
/// `sources`: each an `id` and a `prior`. `sightings`: each an `id`, a `leak` (0 where left out), `strengths` by source id, and `seen`:
/// true, false for looked for and not there, or left out (or null) where nobody looked. Any of them may carry a `note`.
///
/// @param ids of the sources, in the order of the network's priors
record NetFile(List<String> ids, Network network, List<Look> looks) {
    /// The result that is not a source.
    static final String EVIDENCE = "evidence";
    /// More than this is no building but a fault of what wrote the file.
    private static final int MOST = 10_000;

    NetFile {
        ids = List.copyOf(ids);
        looks = List.copyOf(looks);
    }

    /// @throws Refused naming the place in the text
    static NetFile read(String text) {
        Json.Obj root = Json.read(text).object();
        root.only(Set.of("sources", "sightings", "note"));
        Map<String, Integer> places = new LinkedHashMap<>();
        List<Double> priors = new ArrayList<>();
        for (Json one : items(root, "sources", "list the sources: \"sources\": [{\"id\": \"clogged-gutter\", \"prior\": 0.3}, ...]")) {
            Json.Obj source = one.object();
            source.only(Set.of("id", "prior", "note"));
            String id = id(source);
            if (id.equals(EVIDENCE)) throw new Refused(source.place(), "the id '{}' is kept for the probability of all the sightings together", "give the source another id", id);
            if (places.put(id, priors.size()) != null) throw new Refused(source.place(), "the id '{}' is taken by an earlier source", "give each source its own id", id);
            priors.add(probability(source.need("prior", "write \"prior\": 0.1, how likely the source is before anything is looked at")));
        }
        List<Finding> findings = new ArrayList<>();
        List<Look> looks = new ArrayList<>();
        Map<String, String> taken = new TreeMap<>();
        for (Json one : items(root, "sightings", "list the sightings: \"sightings\": [{\"id\": \"dirt-band\", \"leak\": 0.05, \"strengths\": {\"clogged-gutter\": 0.3}, \"seen\": true}, ...]")) {
            Json.Obj sighting = one.object();
            sighting.only(Set.of("id", "leak", "strengths", "seen", "note"));
            String id = id(sighting);
            if (taken.put(id, sighting.place()) != null) throw new Refused(sighting.place(), "the id '{}' is taken by an earlier sighting", "give each sighting its own id", id);
            findings.add(new Finding(sighting.get("leak").map(NetFile::probability).orElse(0.0), links(sighting.need("strengths", "write \"strengths\": {\"clogged-gutter\": 0.3}"), places)));
            looks.add(sighting.get("seen").map(seen -> seen.yes() ? Look.SEEN : Look.NOT_SEEN).orElse(Look.NOT_LOOKED));
        }
        return new NetFile(List.copyOf(places.keySet()), Network.of(priors, findings), looks);
    }

    private static List<Json> items(Json.Obj root, String name, String mend) {
        List<Json> items = root.need(name, mend).list();
        if (items.isEmpty() && name.equals("sources")) throw new Refused(name, "there is none", mend);
        if (items.size() > MOST) throw new Refused(name, "there are {}, more than {}", "give one building at a time", items.size(), MOST);
        return items;
    }

    private static String id(Json.Obj of) {
        String id = of.need("id", "write \"id\": \"clogged-gutter\"").text().strip();
        if (id.isEmpty()) throw new Refused(of.place(), "the id is empty", "write \"id\": \"clogged-gutter\"");
        return id;
    }

    private static List<Link> links(Json strengths, Map<String, Integer> places) {
        List<Link> links = new ArrayList<>();
        strengths.object().fields().forEach((id, strength) -> {
            Integer at = Optional.ofNullable(places.get(id)).or(() -> Optional.ofNullable(places.get(id.strip()))).orElseThrow(() -> {
                List<String> near = Words.near(id, places.keySet());
                return new Refused(strength.place(), "there is no source '{}'", near.isEmpty() ? "name one of the sources" : "did you mean " + String.join(", ", near) + "?", id);
            });
            double p = probability(strength);
            if (p > 0) links.add(new Link(at, p));
        });
        return links;
    }

    private static double probability(Json number) {
        double p = number.number();
        if (!(p >= 0 && p <= 1)) throw new Refused(number.place(), "{} is not a probability", "write 0 to 1", Words.significant(p, 6));
        return p;
    }
}
