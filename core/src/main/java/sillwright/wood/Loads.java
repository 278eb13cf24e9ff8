package sillwright.wood;

import java.util.List;
import java.util.Optional;

import sillwright.measure.Quantity;
import sillwright.walk.Building;
import sillwright.walk.Member;
import sillwright.walk.MemberKind;
import sillwright.walk.Side;
import sillwright.walk.Survey;
import sillwright.wood.strength.UnitLoads;

/// What the damaged members of a building are asked to bear, by the sizes that the survey gives.
///
/// The bay is the mean spacing of the posts of a side, the depth of a porch how far its roof edge stands out, snow the
/// building's ground snow taken whole; where one of them was not recorded the usual size or load stands in.
public final class Loads {
    private Loads() {}

    /// Empty for a member that bears nothing, is not damaged, or is of a kind that cannot be checked so.
    static Optional<Capacity> capacity(Survey survey, Condition condition) {
        Member member = condition.member();
        Optional<Damage> worst = condition.damages().stream().min((a, b) -> Double.compare(a.section().areaKept(), b.section().areaKept()));
        if (!member.bearsLoad() || worst.isEmpty()) return Optional.empty();
        boolean hollow = condition.state() == Condition.State.HOLLOW;
        SectionLeft left = worst.get().section();
        return demand(survey, member).flatMap(demand -> condition.governing().isPresent()
                ? Capacity.of(member, condition.governing().get(), left.shapes().flatMap(shapes -> Capacity.largest(shapes.most())), hollow, demand)
                : Capacity.of(member, left, hollow, demand));
    }

    /// What a member is asked to bear; empty for one that bears nothing that can be told from its kind.
    public static Optional<Demand> demand(Survey survey, Member member) {
        return member.bearsLoad() ? Demand.usual(member, layout(survey, member), unit(survey.building())) : Optional.empty();
    }

    private static UnitLoads unit(Optional<Building> building) {
        UnitLoads usual = UnitLoads.usual();
        return building.flatMap(Building::groundSnow).map(Quantity::own)
                .map(snow -> new UnitLoads(usual.roofDeadMPa(), usual.roofLiveMPa(), snow, usual.floorDeadMPa(), usual.floorLiveMPa(), usual.wallDeadMPa())).orElse(usual);
    }

    private static Demand.Layout layout(Survey survey, Member member) {
        Demand.Layout usual = Demand.Layout.USUAL;
        List<Double> posts = survey.membersOn(member.side()).stream().filter(other -> other.kind() == MemberKind.POST || other.kind() == MemberKind.COLUMN)
                .map(post -> post.left().own()).sorted().toList();
        double bay = posts.size() > 1 ? (posts.getLast() - posts.getFirst()) / (posts.size() - 1) : usual.bayMm();
        Side side = survey.sides().get(member.side());
        double deep = side == null ? usual.deepMm() : side.edges().stream().flatMap(edge -> edge.projects().stream()).map(Quantity::own).max(Double::compare).orElse(usual.deepMm());
        return usual.withBay(Math.max(600, bay), Math.max(600, deep));
    }
}
