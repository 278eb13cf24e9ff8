package sillwright.work;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import sillwright.walk.Building;
import sillwright.walk.Decision;
import sillwright.walk.OpenChecks;
import sillwright.walk.Profile;
import sillwright.wood.Demand;

/// What bears on a repair besides the wood: the load, the weather of the year, and what else was measured there.
///
/// @param demand  what the member is asked to bear, where that can be told
/// @param checks  open checks within the damage
/// @param profile of the member's moulding, where one was taken
/// @param months  monthly normals; empty where none are known
/// @param start   the first day that work may begin
/// @param outfit  who does the work, and what things cost there
/// @param decision what somebody settled about it
record Site(Optional<Demand> demand, List<OpenChecks> checks, Optional<Profile> profile, List<Building.Month> months, LocalDate start, Outfit outfit, Optional<Decision> decision) {
    Site {
        checks = List.copyOf(checks);
        months = List.copyOf(months);
    }
}
