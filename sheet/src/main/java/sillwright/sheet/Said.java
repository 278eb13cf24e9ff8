package sillwright.sheet;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import sillwright.measure.Quantity;
import sillwright.measure.Unit;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Choice;
import sillwright.walk.Member;
import sillwright.walk.Side;
import sillwright.walk.Survey;
import sillwright.wood.Condition;
import sillwright.wood.Damage;

/// Things of the survey as they are said on paper.
final class Said {
    private Said() {}

    static final String SCREENING = "Screening, not engineering";

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter DAY_OF_YEAR = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);

    static LocalDate walked(Survey survey) { return Instant.ofEpochMilli(survey.walkedMs()).atZone(ZoneOffset.UTC).toLocalDate(); }

    /// The day of the walk, or that none is known.
    static String walkedWords(Survey survey) { return survey.walkedMs() == 0 ? "no reading is dated" : "walked " + day(walked(survey)); }

    static String day(LocalDate day) { return DAY.format(day); }

    static String shortDay(LocalDate day) { return Words.day(day); }

    /// `8 – 9 Jun 2026`, `28 May – 2 Jun 2026`.
    static String days(LocalDate from, LocalDate to) {
        if (from.equals(to)) return shortDay(from);
        String start = from.getYear() != to.getYear() ? shortDay(from) : from.getMonth() != to.getMonth() ? DAY_OF_YEAR.format(from) : String.valueOf(from.getDayOfMonth());
        return start + " – " + shortDay(to);
    }

    static String length(double mm, Units units) { return Words.length(mm, units); }

    static String length(Optional<Quantity> value, Units units) { return value.map(v -> length(v.own(), units)).orElse("not measured"); }

    /// `3-1/2 × 3-1/2 × 8 ft`, lengths in the reader's units.
    static String size(double widthMm, double depthMm, double lengthMm, Units units) {
        return length(widthMm, units) + " × " + length(depthMm, units) + " × " + length(lengthMm, units);
    }

    /// The title of a member, or its kind and id where it was given none.
    static String title(Member member) { return member.title().isBlank() ? Choice.said(member.kind()) + " " + member.id() : member.title(); }

    static String title(Side side) { return side.title().isBlank() ? side.id() + " side" : side.title(); }

    /// The title of the side of an id, or the id where nobody described it.
    static String sideTitle(Survey survey, String id) { return Optional.ofNullable(survey.sides().get(id)).map(Said::title).orElse(id.isEmpty()
            ? "whole building" : id); }

    static String state(Condition.State state) { return Choice.said(state); }

    /// What a member's start and far end are called: `foot` and `head` of an upright one.
    static String startName(Member member) {
        return switch (member.run()) {
            case UPRIGHT -> "foot";
            case LEVEL -> "left end";
            case RAKING -> falls(member) ? "upper end" : "lower end";
            case OUTWARD -> "near end";
        };
    }

    static String farName(Member member) {
        return switch (member.run()) {
            case UPRIGHT -> "head";
            case LEVEL -> "right end";
            case RAKING -> falls(member) ? "lower end" : "upper end";
            case OUTWARD -> "far end";
        };
    }

    private static boolean falls(Member member) { return member.slant().map(Quantity::own).orElse(0.0) < 0; }

    /// `up to 14 in from the foot`, `from 12 in to 27 in from the left end`, `from 3 ft to the head`.
    static String stretch(Damage damage, Units units) {
        Member member = damage.member();
        if (damage.atStart() && damage.atFarEnd()) return "over its whole length";
        if (damage.atStart()) return "up to " + length(damage.toMm(), units) + " from the " + startName(member);
        String from = "from " + length(damage.fromMm(), units);
        return damage.atFarEnd() ? from + " to the " + farName(member) : from + " to " + length(damage.toMm(), units) + " from the "
                + startName(member);
    }

    private static final List<String> POINTS = List.of("N", "NE", "E", "SE", "S", "SW", "W", "NW");

    static String point(double degrees) { return POINTS.get((int) Math.round(degrees / 45) % 8); }
}
