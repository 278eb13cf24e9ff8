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
/// @param faults    every entry that could not be used, or was used in spite of something
/// @param entries   how many entries the book holds
public record Survey(Optional<Building> building, Map<String, Side> sides, Map<String, Member> members, List<Noted<ProbeReading>> probes,
                     List<Noted<MoistureReading>> moistures, List<Noted<Sighting>> sightings, List<Noted<Photo>> photos, List<Fault> faults,
                     int entries) {
    public Survey {
        sides = Collections.unmodifiableMap(new LinkedHashMap<>(sides));
        members = Collections.unmodifiableMap(new LinkedHashMap<>(members));
        probes = List.copyOf(probes);
        moistures = List.copyOf(moistures);
        sightings = List.copyOf(sightings);
        photos = List.copyOf(photos);
        faults = List.copyOf(faults);
    }

    /// Something noted, with the entry and the time that it was noted.
    ///
    /// @param entry  id of the entry
    /// @param wallMs milliseconds since 1970 UTC
    public record Noted<T extends Body>(String entry, long wallMs, T what) {}

    /// The building's name, or what stands in for it.
    public String name() { return building.map(Building::name).orElse("a building not yet described"); }

    /// The year built, or 1900 where it is not known: old enough for every caution.
    public int yearBuilt() { return building.map(Building::yearBuilt).orElse(1900); }

    public List<Member> membersOn(String side) {
        return members.values().stream().filter(member -> member.side().equals(side)).toList();
    }

    /// The probe readings on one face, the later of two at the same spot.
    public List<ProbeReading> probesOn(String member, Member.Face face) {
        List<ProbeReading> stands = new ArrayList<>();
        for (Noted<ProbeReading> noted : probes) {
            ProbeReading probe = noted.what();
            if (!probe.spot().member().equals(member) || probe.spot().face() != face) continue;
            stands.removeIf(earlier -> sameSpot(earlier.spot(), probe.spot()));
            stands.add(probe);
        }
        return List.copyOf(stands);
    }

    private static boolean sameSpot(Spot a, Spot b) {
        return Math.abs(a.alongMm() - b.alongMm()) < 1 && Math.abs(a.acrossMm() - b.acrossMm()) < 1;
    }

    public List<MoistureReading> moisturesOn(String member) {
        return moistures.stream().map(Noted::what).filter(reading -> reading.spot().member().equals(member)).toList();
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
