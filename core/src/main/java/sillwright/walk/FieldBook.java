package sillwright.walk;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import sillwright.measure.Quantity;
import sillwright.measure.Refused;
import sillwright.walk.Survey.Noted;

/// The entries of one building, and the fold that makes a survey of them.
///
/// The fold depends on the entries alone, never on the order they arrived in: two phones that worked apart are merged
/// by union.
public final class FieldBook {
    private final String file;
    private final List<Entry> entries = new ArrayList<>();
    private final List<Fault> faults = new ArrayList<>();

    /// What an entry came to say, and where it says it.
    private record Standing(Entry entry, Body body) {}

    private FieldBook(String file) { this.file = file; }

    /// @param file    where the entries came from, for the faults; empty for a store
    /// @param entries in any order, repeats allowed
    public static Survey fold(String file, Collection<Entry> entries) { return fold(file, entries, List.of()); }

    /// @param already faults found while the entries were read
    public static Survey fold(String file, Collection<Entry> entries, List<Fault> already) {
        FieldBook book = new FieldBook(file);
        book.faults.addAll(already);
        book.take(entries);
        return book.survey();
    }

    private void take(Collection<Entry> arrived) {
        List<Entry> sorted = new ArrayList<>(arrived);
        sorted.sort(Entry.ORDER.thenComparing(Comparator.comparing(entry -> entry.body().toString())));
        Map<String, Entry> byId = new LinkedHashMap<>();
        for (Entry entry : sorted) {
            Entry before = byId.putIfAbsent(entry.id(), entry);
            if (before == null) entries.add(entry);
            else if (!before.equals(entry))
                fault(entry, "id", "another entry has the same id and says something else; the earlier one stands", "give this entry an id of its own", true);
        }
    }

    /// Every entry that stands, saying what it was last amended to say.
    private List<Standing> standing() {
        Map<String, Integer> place = new HashMap<>();
        for (int i = 0; i < entries.size(); i++) place.put(entries.get(i).id(), i);
        Map<Integer, Body> amended = new HashMap<>();
        Set<Integer> struck = new HashSet<>();
        // From the last entry to the first: whether a strike or an amendment itself stands is known when its turn comes.
        for (int i = entries.size() - 1; i >= 0; i--) {
            if (struck.contains(i)) continue;
            Entry entry = entries.get(i);
            switch (entry.body()) {
                case Body.Struck(var target, _) -> earlier(entry, target, place, i).ifPresent(struck::add);
                case Body.Amended(var target, var instead) -> earlier(entry, target, place, i).ifPresent(t -> amended.putIfAbsent(t, instead));
                case Building _, Side _, Member _, ProbeReading _, MoistureReading _, Sighting _, Photo _ -> {}
            }
        }
        List<Standing> all = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            if (struck.contains(i)) continue;
            Entry entry = entries.get(i);
            Body said = amended.getOrDefault(i, entry.body());
            if (said.getClass() != entry.body().getClass()) {
                fault(entry, "instead", "the amendment says another kind of thing than the entry it amends", "strike the entry and write a new one", true);
                said = entry.body();
            }
            all.add(new Standing(entry, said));
        }
        return all;
    }

    private Optional<Integer> earlier(Entry entry, String target, Map<String, Integer> place, int here) {
        Integer at = place.get(target);
        if (at != null && at < here) return Optional.of(at);
        fault(entry, "entry", at == null ? "names an entry that is not in this book: '" + target + "'" : "names an entry that is not earlier than itself",
                "name the id of an earlier entry", true);
        return Optional.empty();
    }

    private Survey survey() {
        List<Standing> stands = standing();
        Optional<Building> building = Optional.empty();
        Map<String, Side> sides = new LinkedHashMap<>();
        Map<String, Member> members = new LinkedHashMap<>();
        for (Standing standing : stands) {
            switch (standing.body()) {
                case Building b -> {
                    if (building.isPresent()) fault(standing.entry(), "", "the building is described twice; the later description stands", "amend the first instead", false);
                    building = Optional.of(b);
                }
                case Side side -> {
                    if (sides.put(side.id(), side) != null) twice(standing.entry(), "side", side.id());
                }
                case Member member -> {
                    if (members.put(member.id(), member) != null) twice(standing.entry(), "member", member.id());
                }
                case ProbeReading _, MoistureReading _, Sighting _, Photo _, Body.Amended _, Body.Struck _ -> {}
            }
        }
        for (Standing standing : stands) if (standing.body() instanceof Member member) check(standing.entry(), member, sides, members);
        List<Noted<ProbeReading>> probes = new ArrayList<>();
        List<Noted<MoistureReading>> moistures = new ArrayList<>();
        List<Noted<Sighting>> sightings = new ArrayList<>();
        List<Noted<Photo>> photos = new ArrayList<>();
        for (Standing standing : stands) {
            Entry entry = standing.entry();
            try {
                switch (standing.body()) {
                    case ProbeReading probe -> {
                        Member member = on(probe.spot(), members);
                        notDeeper("depth", probe.depth(), probe.spot(), member);
                        probes.add(noted(entry, probe));
                    }
                    case MoistureReading reading -> {
                        on(reading.spot(), members);
                        moistures.add(noted(entry, reading));
                    }
                    case Sighting sighting -> {
                        known("side", sighting.side(), sides);
                        sighting.member().ifPresent(member -> known("member", member, members));
                        sightings.add(noted(entry, sighting));
                    }
                    case Photo photo -> {
                        known("side", photo.side(), sides);
                        photo.pin().ifPresent(pin -> on(pin, members));
                        photos.add(noted(entry, photo));
                    }
                    case Building _, Side _, Member _, Body.Amended _, Body.Struck _ -> {}
                }
            } catch (Refused refused) {
                fault(entry, refused.where(), refused.what(sillwright.measure.Units.US), refused.mend(), true);
            }
        }
        return new Survey(building, sides, members, probes, moistures, sightings, photos, faults, entries.size());
    }

    private void twice(Entry entry, String what, String id) {
        fault(entry, "id", "the " + what + " '" + id + "' is described twice; the later description stands", "amend the first, or give this one an id of its own", false);
    }

    private void check(Entry entry, Member member, Map<String, Side> sides, Map<String, Member> members) {
        if (members.get(member.id()) != member) return;
        Side side = sides.get(member.side());
        if (side == null) {
            fault(entry, "side", "the member '" + member.id() + "' is on a side that nobody described: '" + member.side() + "'",
                    "describe the side, or name one of " + String.join(", ", sides.keySet()), true);
            members.remove(member.id());
            return;
        }
        try {
            Species.named(member.species());
        } catch (Refused refused) {
            fault(entry, "species", refused.what(sillwright.measure.Units.US) + "; counted as " + Species.orCareful(member.species()).name()
                    + ", on the careful side", refused.mend(), false);
        }
        boolean below = member.left().own() < -1e-6 || member.left().own() > side.lengthMm() + 1e-6;
        if (below)
            fault(entry, "left", member.left().text() + " is off the side, which is " + side.length().text() + " long", "measure from the side's left end", false);
    }

    private static Member on(Spot spot, Map<String, Member> members) {
        known("member", spot.member(), members);
        Member member = members.get(spot.member());
        spot.on(member);
        return member;
    }

    private static void notDeeper(String field, Quantity depth, Spot spot, Member member) {
        double through = member.throughMm(spot.face());
        if (depth.own() > through + 1e-6)
            throw new Refused(field, "{} is deeper than the member, which is {} through from its " + Choice.said(spot.face()) + " face",
                    "read the depth again, or mend the member's size", depth, through == member.widthMm() ? member.width() : member.depth());
    }

    private static void known(String field, String id, Map<String, ?> all) {
        if (all.containsKey(id)) return;
        List<String> near = sillwright.measure.Words.near(id, all.keySet());
        throw new Refused(field, "'{}' is not described in this book", near.isEmpty() ? "describe it, or mend the name" : "did you mean " + String.join(", ", near) + "?", id);
    }

    private static <T extends Body> Noted<T> noted(Entry entry, T what) { return new Noted<>(entry.id(), entry.stamp().wallMs(), what); }

    private void fault(Entry entry, String field, String what, String mend, boolean grave) {
        faults.add(new Fault(file, "entry " + entry.id(), field, what, mend, grave));
    }
}
