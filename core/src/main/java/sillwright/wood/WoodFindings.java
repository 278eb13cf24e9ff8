package sillwright.wood;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/// What the wood stage found.
///
/// @param conditions by member id, in the order of the survey
/// @param gaps       what could not be worked, and what would let it be
public record WoodFindings(Map<String, Condition> conditions, List<String> gaps) {
    public WoodFindings {
        conditions = Collections.unmodifiableMap(new LinkedHashMap<>(conditions));
        gaps = List.copyOf(gaps);
    }

    public Collection<Condition> all() { return conditions.values(); }

    public Condition of(String member) { return conditions.get(member); }

    public List<Damage> damages() { return conditions.values().stream().flatMap(condition -> condition.damages().stream()).toList(); }
}
