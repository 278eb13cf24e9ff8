package sillwright.walk;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import sillwright.measure.Quantity;
import sillwright.measure.Refused;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Survey.Noted;

/// The entries of one building, and the fold that makes a survey of them.
///
/// The fold depends on the entries alone, never on the order they arrived in: two phones that worked apart are merged
/// by union.
public final class FieldBook {
    private final String file;
    private final List<Entry> entries = new ArrayList<>();
    private final List<Fault> faults = new ArrayList<>();

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

    /// By the clock and the id; two that share both are still put in an order of their own, whichever came first.
    private static final Comparator<Entry> ORDER =
            Entry.ORDER.thenComparing(entry -> entry.body().toString()).thenComparing(Entry::device).thenComparing(Entry::author);

    private void take(Collection<Entry> arrived) {
        List<Entry> sorted = new ArrayList<>(new LinkedHashSet<>(arrived));
        sorted.sort(ORDER);
        Set<String> ids = new HashSet<>();
        for (Entry entry : sorted) {
            if (ids.add(entry.id())) entries.add(entry);
            else fault(entry, "id", "another entry has the same id and says something else; the earlier one stands", "give this entry an id of its own", true);
        }
    }

    private List<Standing> standing() {
        Standing.Outcome outcome = Standing.of(entries);
        for (Standing.Wrong wrong : outcome.wrongs()) fault(wrong.entry(), wrong.field(), wrong.what(), wrong.mend(), wrong.grave());
        return outcome.all();
    }

    private Survey survey() {
        List<Standing> stands = standing();
        Optional<Building> building = Optional.empty();
        Map<String, Side> sides = new LinkedHashMap<>();
        for (Standing standing : stands) {
            switch (standing.body()) {
                case Building b -> {
                    if (building.isPresent()) fault(standing.entry(), "", "the building is described twice; the later description stands", "amend the first instead", false);
                    building = Optional.of(b);
                }
                case Side side -> {
                    if (sides.put(side.id(), side) != null) twice(standing.entry(), "side", side.id());
                }
                case Member _, ProbeReading _, MoistureReading _, Sighting _, Photo _, WorkDone _, OpenChecks _, Profile _, Decision _, Body.Amended _, Body.Struck _ -> {}
            }
        }
        Map<String, Member> members = members(stands, sides);
        List<Noted<ProbeReading>> probes = new ArrayList<>();
        List<Noted<MoistureReading>> moistures = new ArrayList<>();
        List<Noted<Sighting>> sightings = new ArrayList<>();
        List<Noted<Photo>> photos = new ArrayList<>();
        List<Noted<OpenChecks>> checks = new ArrayList<>();
        List<Noted<Profile>> profiles = new ArrayList<>();
        List<Noted<WorkDone>> works = new ArrayList<>();
        List<Noted<Decision>> decisions = new ArrayList<>();
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
                    case OpenChecks group -> {
                        Member member = on(group.spot(), members);
                        notDeeper("depth", group.depth(), group.spot(), member);
                        if (group.toMm() > member.lengthMm() + 1e-6)
                            throw new Refused("length", "{} runs past the member, which is {} long", "measure one check from where the group starts", group.length(), member.length());
                        checks.add(noted(entry, group));
                    }
                    case Profile profile -> {
                        known("member", profile.member(), members);
                        profiles.add(noted(entry, profile));
                    }
                    case WorkDone work -> {
                        known("side", work.side(), sides);
                        work.member().ifPresent(id -> onMember(work, id, members));
                        notYet(work, entry);
                        works.add(noted(entry, work));
                    }
                    case Decision decision -> {
                        about(decision.about(), members, sides);
                        decisions.removeIf(earlier -> earlier.what().about().same(decision.about()));
                        decisions.add(noted(entry, decision));
                    }
                    case Building _, Side _, Member _, Body.Amended _, Body.Struck _ -> {}
                }
            } catch (Refused refused) {
                fault(entry, refused.where(), refused.what(Units.US), refused.mend(), true);
            }
        }
        return new Survey(building, sides, coated(members, stands, works), probes, moistures, sightings, photos, works, checks, profiles, decisions, faults, entries.size());
    }

    private void about(Decision.About about, Map<String, Member> members, Map<String, Side> sides) {
        switch (about) {
            case Decision.About.Wood(var id, var along) -> {
                known("member", id, members);
                Member member = members.get(id);
                if (along.own() > member.lengthMm() + 1e-6) throw new Refused("along", "{} is off the member, which is {} long", "measure from its lower or left end", along, member.length());
            }
            case Decision.About.Water(_, var side, _) -> known("side", side, sides);
        }
    }

    private void twice(Entry entry, String what, String id) {
        fault(entry, "id", "the " + what + " '" + id + "' is described twice; the later description stands", "amend the first, or give this one an id of its own", false);
    }

    /// The members on sides that somebody described, each as it was last described there.
    private Map<String, Member> members(List<Standing> stands, Map<String, Side> sides) {
        Map<String, Member> members = new LinkedHashMap<>();
        Map<String, Entry> by = new LinkedHashMap<>();
        for (Standing standing : stands) {
            if (!(standing.body() instanceof Member member)) continue;
            if (!sides.containsKey(member.side()))
                fault(standing.entry(), "side", "the member '" + member.id() + "' is on a side that nobody described: '" + member.side() + "'",
                        sides.isEmpty() ? "describe the side" : "describe the side, or name one of " + String.join(", ", sides.keySet()), true);
            else {
                if (members.put(member.id(), member) != null) twice(standing.entry(), "member", member.id());
                by.put(member.id(), standing.entry());
            }
        }
        members.forEach((id, member) -> check(by.get(id), member, sides.get(member.side())));
        return members;
    }

    private void check(Entry entry, Member member, Side side) {
        try {
            Species.named(member.species());
        } catch (Refused refused) {
            fault(entry, "species", refused.what(Units.US) + "; counted as " + Species.orCareful(member.species()).name() + ", on the careful side",
                    refused.mend(), false);
        }
        if (member.left().own() < -1e-6 || member.left().own() > side.lengthMm() + 1e-6)
            fault(entry, "left", member.left().text() + " is off the side, which is " + side.length().text() + " long", "measure from the side's left end", false);
    }

    private static Member on(Spot spot, Map<String, Member> members) {
        known("member", spot.member(), members);
        Member member = members.get(spot.member());
        spot.on(member);
        return member;
    }

    private static void onMember(WorkDone work, String id, Map<String, Member> members) {
        known("member", id, members);
        Member member = members.get(id);
        if (!member.side().equals(work.side()))
            throw new Refused("side", "{} is not on the side '" + work.side() + "'", "name the side '" + member.side() + "'", id);
        for (Quantity along : List.of(work.from(), work.to()).stream().flatMap(Optional::stream).toList())
            if (along.own() > member.lengthMm() + 1e-6)
                throw new Refused(work.from().filter(along::equals).isPresent() ? "from" : "to", "{} is off the member, which is {} long", "measure from its lower or left end", along, member.length());
    }

    /// A day of grace, for zones of time.
    private static void notYet(WorkDone work, Entry entry) {
        if (work.on().toEpochDay() > Math.floorDiv(entry.stamp().wallMs(), 86_400_000L) + 1)
            throw new Refused("on", "'{}' lies after the day on which it was written down", "write the day it was finished", work.on().toString());
    }

    /// The members with the coats that were put on since they were described.
    private static Map<String, Member> coated(Map<String, Member> members, List<Standing> stands, List<Noted<WorkDone>> works) {
        Map<String, Member> coated = new LinkedHashMap<>(members);
        Map<String, Long> described = new LinkedHashMap<>();
        for (Standing standing : stands) if (standing.body() instanceof Member member) described.put(member.id(), standing.entry().stamp().wallMs());
        for (Noted<WorkDone> work : works) work.what().coat().ifPresent(coat -> work.what().member().ifPresent(id -> {
            if (work.wallMs() >= described.get(id)) coated.computeIfPresent(id, (_, member) -> member.coated(coat));
        }));
        return coated;
    }

    private static void notDeeper(String field, Quantity depth, Spot spot, Member member) {
        double through = member.throughMm(spot.face());
        if (depth.own() > through + 1e-6)
            throw new Refused(field, "{} is deeper than the member, which is {} through from its " + Choice.said(spot.face()) + " face",
                    "read the depth again, or mend the member's size", depth, through == member.widthMm() ? member.width() : member.depth());
    }

    private static void known(String field, String id, Map<String, ?> all) {
        if (all.containsKey(id)) return;
        List<String> near = Words.near(id, all.keySet());
        throw new Refused(field, "'{}' is not described in this book", near.isEmpty() ? "describe it, or mend the name" : "did you mean " + String.join(", ", near) + "?", id);
    }

    private static <T extends Body> Noted<T> noted(Entry entry, T what) { return new Noted<>(entry.id(), entry.stamp().wallMs(), what); }

    private void fault(Entry entry, String field, String what, String mend, boolean grave) {
        faults.add(new Fault(file, "entry " + entry.id(), field, what, mend, grave));
    }
}
