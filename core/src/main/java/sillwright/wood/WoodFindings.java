package sillwright.wood;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// What the wood stage found.
///
/// @param conditions by member id, in the order of the survey
/// @param outlooks   by member id: what weather will do to each member; none without monthly normals, nor for wet wood whose water nobody found
/// @param capacities by member id: how much of what is left its load uses up, for each damaged member that bears load
/// @param alone      for each member that several likely sources wet: what stopping one of them alone leaves
/// @param gaps       what could not be worked, and what would let it be
public record WoodFindings(Map<String, Condition> conditions, Map<String, Outlook> outlooks, Map<String, Capacity> capacities, List<Alone> alone, List<String> gaps) {
    public WoodFindings {
        conditions = Collections.unmodifiableMap(new LinkedHashMap<>(conditions));
        outlooks = Collections.unmodifiableMap(new LinkedHashMap<>(outlooks));
        capacities = Collections.unmodifiableMap(new LinkedHashMap<>(capacities));
        alone = List.copyOf(alone);
        gaps = List.copyOf(gaps);
    }

    /// Of which no source was followed alone.
    public WoodFindings(Map<String, Condition> conditions, Map<String, Outlook> outlooks, Map<String, Capacity> capacities, List<String> gaps) { this(conditions, outlooks, capacities, List.of(), gaps); }

    /// Without a look at the weather to come, or at loads.
    public WoodFindings(Map<String, Condition> conditions, List<String> gaps) { this(conditions, Map.of(), Map.of(), gaps); }

    public Optional<Outlook> outlook(String member) { return Optional.ofNullable(outlooks.get(member)); }

    public Optional<Capacity> capacity(String member) { return Optional.ofNullable(capacities.get(member)); }

    public Collection<Condition> all() { return conditions.values(); }

    public Condition of(String member) { return conditions.get(member); }

    public List<Damage> damages() { return conditions.values().stream().flatMap(condition -> condition.damages().stream()).toList(); }
}
