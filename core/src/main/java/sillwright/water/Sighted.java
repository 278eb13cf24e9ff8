package sillwright.water;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Member;
import sillwright.walk.Side;
import sillwright.walk.Sighting;
import sillwright.walk.Sign;
import sillwright.walk.Survey;

/// A sighting with the box of wall it speaks of; what was not measured is taken as anywhere on the side.
///
/// @param placed whether it names a member or a place
/// @param wallMs when, milliseconds since 1970 UTC
/// @param told   as it is said where a verdict tells it; empty for what was sighted
record Sighted(Sighting sighting, Optional<Member> member, Box box, boolean placed, long wallMs, String told) {
    /// How far from a named point a sighting still speaks, mm.
    private static final double ABOUT_MM = 150;

    /// The sightings of one side, the last of those made at one place.
    static List<Sighted> on(Survey survey, Side side) {
        Map<String, Sighted> last = new LinkedHashMap<>();
        for (Survey.Noted<Sighting> noted : survey.sightings()) {
            Sighting sighting = noted.what();
            if (!sighting.side().equals(side.id())) continue;
            Optional<Member> member = sighting.member().map(id -> survey.members().get(id));
            String place = sighting.sign() + "|" + sighting.member().orElse("") + "|" + sighting.left().map(q -> q.own()).orElse(-1.0) + "|"
                    + sighting.above().map(q -> q.own()).orElse(-1.0);
            last.remove(place);
            last.put(place, of(sighting, member, side, noted.wallMs()));
        }
        return new ArrayList<>(last.values());
    }

    /// The same with what verdicts tell of places on this side: wood still wet, or dry, since a source was seen to.
    static List<Sighted> with(List<Sighted> sighted, List<Tested> tested, Survey survey, Side side) {
        List<Sighted> all = new ArrayList<>(sighted);
        for (Tested one : tested) {
            Member member = survey.members().get(one.member());
            if (member == null || !one.side().equals(side.id())) continue;
            Sighting sighting = new Sighting(Sign.WET_AFTER_RAIN, one.wet(), side.id(), Optional.of(member.id()), Optional.empty(), Optional.empty(), "");
            all.add(new Sighted(sighting, Optional.of(member), Box.of(member), true, Math.max(survey.walkedMs(), Remedied.endMs(one.since()) + 1), one.words()));
        }
        return all;
    }

    private static Sighted of(Sighting sighting, Optional<Member> member, Side side, long wallMs) {
        Box box = member.map(Box::of).orElse(whole(side));
        double from = box.fromMm(), to = box.toMm(), low = box.lowMm(), high = box.highMm();
        if (sighting.left().isPresent()) {
            from = sighting.left().get().own() - ABOUT_MM;
            to = from + 2 * ABOUT_MM;
        }
        if (sighting.above().isPresent()) {
            low = sighting.above().get().own() - ABOUT_MM;
            high = low + 2 * ABOUT_MM;
        }
        return new Sighted(sighting, member, new Box(from, to, low, high), member.isPresent() || sighting.left().isPresent() || sighting.above().isPresent(), wallMs, "");
    }

    /// The whole side, its roof edge and what overhangs its ends with it.
    static Box whole(Side side) { return new Box(-1000, side.lengthMm() + 1000, -500, side.topMm() + 1000); }

    /// `a band of dirt or splash marks on the lowest wood, south side, porch post 3`
    String words(Units units) {
        if (!told.isEmpty()) return told;
        String at = member.map(Member::title).or(() -> sighting.left().map(left -> Words.length(left.own(), units) + " from the left")).map(place -> ", " + place).orElse("");
        String where = ", " + sighting.side() + " side" + at;
        return sighting.seen() ? sighting.sign().words() + where : "looked for and not there: " + sighting.sign().words() + where;
    }
}
