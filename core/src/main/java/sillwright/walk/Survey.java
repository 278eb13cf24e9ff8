package sillwright.walk;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// What a field book says when it is folded: the building as last described, and everything read on it.
///
/// @param building  empty where nobody described it yet
/// @param sides     by id, in the order they were described
/// @param members   by id, in the order they were described
/// @param probes    in the order they were taken
/// @param moistures in the order they were taken
/// @param sightings in the order they were made
/// @param photos    in the order they were taken
/// @param works     what was done, in the order it was written down
/// @param checks    groups of open checks, in the order they were measured
/// @param profiles  outlines of mouldings, in the order they were taken
/// @param decisions what was settled about recommendations, the last about each place
/// @param faults    every entry that could not be used, or was used in spite of something
/// @param entries   how many entries the book holds
public record Survey(Optional<Building> building, Map<String, Side> sides, Map<String, Member> members, List<Noted<ProbeReading>> probes,
                     List<Noted<MoistureReading>> moistures, List<Noted<Sighting>> sightings, List<Noted<Photo>> photos, List<Noted<WorkDone>> works,
                     List<Noted<OpenChecks>> checks, List<Noted<Profile>> profiles, List<Noted<Decision>> decisions, List<Fault> faults, int entries) {
    public Survey {
        sides = Collections.unmodifiableMap(new LinkedHashMap<>(sides));
        members = Collections.unmodifiableMap(new LinkedHashMap<>(members));
        probes = List.copyOf(probes);
        moistures = List.copyOf(moistures);
        sightings = List.copyOf(sightings);
        photos = List.copyOf(photos);
        works = List.copyOf(works);
        checks = List.copyOf(checks);
        profiles = List.copyOf(profiles);
        decisions = List.copyOf(decisions);
        faults = List.copyOf(faults);
    }

    /// A survey in which nothing was decided yet.
    public Survey(Optional<Building> building, Map<String, Side> sides, Map<String, Member> members, List<Noted<ProbeReading>> probes, List<Noted<MoistureReading>> moistures,
                  List<Noted<Sighting>> sightings, List<Noted<Photo>> photos, List<Noted<WorkDone>> works, List<Noted<OpenChecks>> checks, List<Noted<Profile>> profiles,
                  List<Fault> faults, int entries) {
        this(building, sides, members, probes, moistures, sightings, photos, works, checks, profiles, List.of(), faults, entries);
    }

    /// A survey in which nothing was done yet, without open checks or profiles.
    public Survey(Optional<Building> building, Map<String, Side> sides, Map<String, Member> members, List<Noted<ProbeReading>> probes, List<Noted<MoistureReading>> moistures,
                  List<Noted<Sighting>> sightings, List<Noted<Photo>> photos, List<Fault> faults, int entries) {
        this(building, sides, members, probes, moistures, sightings, photos, List.of(), List.of(), List.of(), faults, entries);
    }

    /// Without open checks or profiles.
    public Survey(Optional<Building> building, Map<String, Side> sides, Map<String, Member> members, List<Noted<ProbeReading>> probes, List<Noted<MoistureReading>> moistures,
                  List<Noted<Sighting>> sightings, List<Noted<Photo>> photos, List<Noted<WorkDone>> works, List<Fault> faults, int entries) {
        this(building, sides, members, probes, moistures, sightings, photos, works, List.of(), List.of(), faults, entries);
    }

    /// The same survey of a building described otherwise.
    public Survey with(Building other) {
        return new Survey(Optional.of(other), sides, members, probes, moistures, sightings, photos, works, checks, profiles, decisions, faults, entries);
    }

    /// What is known of one member, its side and the building: all that the member's own condition may rest on.
    public Survey about(Member member) {
        Map<String, Side> side = new LinkedHashMap<>();
        if (sides.containsKey(member.side())) side.put(member.side(), sides.get(member.side()));
        return new Survey(building, side, Map.of(member.id(), member), probes.stream().filter(noted -> noted.what().spot().member().equals(member.id())).toList(),
                moistures.stream().filter(noted -> noted.what().spot().member().equals(member.id())).toList(),
                sightings.stream().filter(noted -> noted.what().side().equals(member.side()) && noted.what().member().filter(other -> !other.equals(member.id())).isEmpty()).toList(),
                List.of(), works.stream().filter(noted -> noted.what().member().filter(member.id()::equals).isPresent()).toList(), List.of(), 0);
    }

    /// What was described, sighted, done and decided about water, without readings and photos.
    public Survey unread() {
        return new Survey(building, sides, members, List.of(), List.of(), sightings, List.of(), works, List.of(), List.of(), decisions.stream().filter(noted -> noted.what().about() instanceof Decision.About.Water).toList(), List.of(), 0);
    }

    /// Something noted, with the entry and the time that it was noted.
    ///
    /// @param entry  id of the entry
    /// @param wallMs milliseconds since 1970 UTC
    public record Noted<T extends Body>(String entry, long wallMs, T what) {
        /// When it was so: for work the end of the day it was finished, as milliseconds since 1970 UTC; else when it was noted.
        public long dayMs() { return what instanceof WorkDone work ? (work.on().toEpochDay() + 1) * DAY_MS - 1 : wallMs; }
    }

    public static final long DAY_MS = 86_400_000L;
    /// Stations no further apart are one place, as a meter is put there again, mm: 6 in.
    public static final double ONE_PLACE_MM = 152.4;
    /// What is read within a fortnight is one walk's.
    public static final long ONE_WALK_MS = 14 * DAY_MS;

    /// The building's name, or what stands in for it.
    public String name() { return building.map(Building::name).orElse("a building not yet described"); }

    /// The year built, or 1900 where it is not known: old enough for every caution.
    public int yearBuilt() { return building.map(Building::yearBuilt).orElse(1900); }

    public List<Member> membersOn(String side) {
        return members.values().stream().filter(member -> member.side().equals(side)).toList();
    }

    /// The probe readings that stand on one face: the later of two at the same spot, and none in wood that was taken out or
    /// made hard since.
    public List<ProbeReading> probesOn(String member, Member.Face face) {
        List<ProbeReading> stands = new ArrayList<>();
        for (Noted<ProbeReading> noted : probes) {
            ProbeReading probe = noted.what();
            if (!probe.spot().member().equals(member) || probe.spot().face() != face || mendedSince(probe.spot(), noted.wallMs())) continue;
            stands.removeIf(earlier -> sameSpot(earlier.spot(), probe.spot()));
            stands.add(probe);
        }
        return List.copyOf(stands);
    }

    private static boolean sameSpot(Spot a, Spot b) {
        return Math.abs(a.alongMm() - b.alongMm()) < 1 && Math.abs(a.acrossMm() - b.acrossMm()) < 1;
    }

    /// Whether the wood at a spot was taken out or made hard after a time.
    public boolean mendedSince(Spot spot, long wallMs) {
        return works.stream().anyMatch(work -> work.what().done().endsTheDamage() && work.what().reaches(spot.member(), spot.alongMm()) && work.dayMs() > wallMs);
    }

    /// The readings that stand on a member: of those at one place only the last walk's, and none of wood that was taken out since.
    public List<MoistureReading> moisturesOn(String member) {
        List<Noted<MoistureReading>> here = moistures.stream().filter(noted -> noted.what().spot().member().equals(member)).toList();
        return here.stream().filter(noted -> !mendedSince(noted.what().spot(), noted.wallMs())
                && here.stream().noneMatch(later -> later.wallMs() > noted.wallMs() + ONE_WALK_MS && samePlace(later.what().spot(), noted.what().spot())))
                .map(Noted::what).toList();
    }

    /// Whether two readings were taken at the same place of a member, as a meter is put there again: on one face, within 6 in.
    public static boolean samePlace(Spot a, Spot b) {
        return a.member().equals(b.member()) && a.face() == b.face() && Math.abs(a.alongMm() - b.alongMm()) <= ONE_PLACE_MM + 1e-6;
    }

    /// Open checks on a member, the later of two groups that start at the same spot.
    public List<OpenChecks> checksOn(String member) {
        List<OpenChecks> stand = new ArrayList<>();
        for (Noted<OpenChecks> noted : checks) {
            OpenChecks group = noted.what();
            if (!group.spot().member().equals(member)) continue;
            stand.removeIf(earlier -> earlier.spot().face() == group.spot().face() && sameSpot(earlier.spot(), group.spot()));
            stand.add(group);
        }
        return List.copyOf(stand);
    }

    /// The outline of a member that was taken last.
    public Optional<Profile> profileOf(String member) {
        return profiles.stream().map(Noted::what).filter(profile -> profile.member().equals(member)).reduce((_, later) -> later);
    }

    public List<Sighting> sightingsOn(String side) {
        return sightings.stream().map(Noted::what).filter(sighting -> sighting.side().equals(side)).toList();
    }

    /// The day the walk was done, as the last reading's or sighting's milliseconds since 1970 UTC; 0 for an empty book.
    public long walkedMs() {
        long last = 0;
        for (Noted<ProbeReading> noted : probes) last = Math.max(last, noted.wallMs());
        for (Noted<MoistureReading> noted : moistures) last = Math.max(last, noted.wallMs());
        for (Noted<Sighting> noted : sightings) last = Math.max(last, noted.wallMs());
        return last;
    }
}
