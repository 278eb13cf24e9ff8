package sillwright.sheet;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import sillwright.sheet.Canvas.Anchor;
import sillwright.work.WorkFindings;
import sillwright.work.WorkFindings.Task;
import sillwright.work.WorkFindings.TaskKind;
import sillwright.work.schedule.Timetable.Stint;

/// The order of work as a chart for the wall: a line for each lot of repairs that goes together, one for what stops water and one for the rest, the days worked as bars, time running right.
///
/// Where for weeks nothing goes on but drying, time runs faster, and the days are not ruled.
public final class WallChart {
    private static final double WIDTH = 178, NAMES = 66, ROW = 4.1;
    private static final int ROWS = 44;
    /// So many days about a worked one are drawn at full width; an idle one has a tenth of it.
    private static final int ABOUT = 6;
    private static final double IDLE = 0.1;

    private final LocalDate first;
    /// Where each day begins, in mm; one more than there are days.
    private final double[] x;
    private final boolean[] full;

    /// A run of days of one kind of work.
    private record Bar(TaskKind kind, LocalDate from, LocalDate to) {}

    private WallChart(LocalDate first, LocalDate last, boolean[] worked) {
        this.first = first;
        int days = worked.length;
        full = new boolean[days];
        x = new double[days + 1];
        double wide = 0;
        for (int d = 0; d < days; d++) {
            for (int k = Math.max(0, d - ABOUT); k <= Math.min(days - 1, d + ABOUT); k++) full[d] |= worked[k];
            wide += full[d] ? 1 : IDLE;
        }
        x[0] = NAMES;
        for (int d = 0; d < days; d++) x[d + 1] = x[d] + (WIDTH - NAMES - 2) * (full[d] ? 1 : IDLE) / wide;
    }

    /// As many sheets as the lines want; none where there are no tasks.
    public static List<Drawing> draw(WorkFindings work) {
        List<Drawing> sheets = new ArrayList<>();
        List<Task> tasks = work.tasks();
        if (tasks.isEmpty()) return sheets;
        LocalDate first = tasks.stream().map(Task::start).min(LocalDate::compareTo).orElseThrow(), last = tasks.stream().map(Task::end).max(LocalDate::compareTo).orElseThrow();
        List<Stint> stints = work.plan().timetable().map(known -> known.stints()).orElse(List.of());
        for (Stint stint : stints) if (stint.day().isAfter(last)) last = stint.day();
        boolean[] worked = new boolean[(int) ChronoUnit.DAYS.between(first, last) + 1];
        for (Stint stint : stints) worked[(int) ChronoUnit.DAYS.between(first, stint.day())] = true;
        if (stints.isEmpty()) java.util.Arrays.fill(worked, true);
        List<Map.Entry<String, List<Bar>>> lines = List.copyOf(lines(tasks, stints).entrySet());
        WallChart chart = new WallChart(first, last, worked);
        for (int from = 0; from < lines.size(); from += ROWS) sheets.add(chart.sheet(lines.subList(from, Math.min(lines.size(), from + ROWS)), last, sheets.size() + 1));
        return List.copyOf(sheets);
    }

    /// Waits first, so that work stands before them.
    private static Map<String, List<Bar>> lines(List<Task> tasks, List<Stint> stints) {
        Map<String, List<Bar>> lines = new LinkedHashMap<>();
        for (Task task : tasks) {
            List<Bar> line = lines.computeIfAbsent(line(task), _ -> new ArrayList<>());
            if (task.kind() == TaskKind.DRY || stints.isEmpty()) line.addFirst(new Bar(task.kind(), task.start(), task.end()));
        }
        Map<Task, List<Bar>> runs = new LinkedHashMap<>();
        for (Stint stint : stints) {
            Task task = tasks.get(stint.activity());
            List<Bar> run = runs.computeIfAbsent(task, _ -> new ArrayList<>());
            boolean goesOn = !run.isEmpty() && ChronoUnit.DAYS.between(run.getLast().to(), stint.day()) <= (stint.day().getDayOfWeek() == DayOfWeek.MONDAY ? 3 : 1);
            LocalDate from = goesOn ? run.removeLast().from() : stint.day();
            run.add(new Bar(task.kind(), from, stint.day()));
        }
        runs.forEach((task, run) -> lines.get(line(task)).addAll(run));
        return lines;
    }

    private static String line(Task task) { return !task.lot().isEmpty() ? task.lot() : task.kind() == TaskKind.STOP_WATER ? "Stop the water" : task.title(); }

    private Drawing sheet(List<Map.Entry<String, List<Bar>>> lines, LocalDate last, int number) {
        double top = 10;
        Canvas canvas = new Canvas(WIDTH, top + lines.size() * ROW + 2);
        double bottom = canvas.height() - 1;
        months(canvas, top);
        weeks(canvas, top, bottom);
        for (int i = 0; i < lines.size(); i++) {
            double y = top + i * ROW;
            canvas.line(0, y + ROW, WIDTH - 2, y + ROW, new Ink.Pen(Ink.GREY, 0.06, ""));
            canvas.write(0.5, y + 3.1, Lettering.fitted(lines.get(i).getKey(), Ink.SMALL, NAMES - 3), Ink.SMALL, Anchor.START, Ink.BLACK);
            for (Bar bar : lines.get(i).getValue()) {
                double from = x[at(bar.from())], wide = Math.max(0.5, x[at(bar.to()) + 1] - from), in = bar.kind() == TaskKind.DRY ? 1.5 : 0.7;
                bar(canvas, bar.kind(), new Box(from, y + in, wide, ROW - 2 * in));
            }
        }
        canvas.line(NAMES, top, NAMES, bottom, Ink.THIN);
        return canvas.done("order-of-work-" + number, "Order of work", "Order of work as a chart, " + Said.day(first) + " to " + Said.day(last)
                + "; the table beside it says the same in words.", 0.6);
    }

    private int at(LocalDate day) { return (int) ChronoUnit.DAYS.between(first, day); }

    /// Waiting is dotted, water is filled with the acting colour, all other work stands in firm outline.
    private static void bar(Canvas canvas, TaskKind kind, Box box) {
        switch (kind) {
            case STOP_WATER -> canvas.rect(box, Ink.ACT, Ink.ACTING);
            case DRY -> canvas.rect(box, Hatch.HOLLOW.fill(), Ink.HIDDEN);
            case SHORE -> canvas.rect(box, Hatch.DECAYED.fill(), Ink.FIRM);
            case OPEN_TO_DRY, OPEN_AND_CUT, CONSOLIDATE, JOIN, FILL -> canvas.rect(box, Hatch.NEW_LEVEL.fill(), Ink.FIRM);
            case SET_UP, PRIME, COAT, CLEAN_UP -> canvas.rect(box, Ink.PAPER, Ink.FIRM);
        }
    }

    /// A line each Monday at full width, and each first of the month; days named where there is room.
    private void weeks(Canvas canvas, double top, double bottom) {
        boolean weekly = 7 * widest() >= 3.2;
        for (int d = 0; d < full.length; d++) {
            LocalDate day = first.plusDays(d);
            boolean month = day.getDayOfMonth() == 1 || d == 0, monday = weekly && full[d] && day.getDayOfWeek() == DayOfWeek.MONDAY;
            if (monday || month) canvas.line(x[d], top - (month ? 5 : 0.8), x[d], bottom, month ? Ink.THIN : Ink.HAIR);
            if (monday) tryWrite(canvas, x[d] + 0.4, top - 1.2, String.valueOf(day.getDayOfMonth()));
        }
    }

    /// Months that are worked in are named first, each over its first day of work; those that only dry where room is left. The year is said where it begins.
    private void months(Canvas canvas, double top) {
        for (boolean worked : new boolean[] {true, false}) {
            int year = 0;
            for (LocalDate month = first.withDayOfMonth(1); at(month) < full.length; month = month.plusMonths(1)) {
                int from = Math.max(0, at(month)), to = Math.min(full.length, at(month.plusMonths(1))), begins = from;
                while (begins < to && !full[begins]) begins++;
                if (begins < to != worked) continue;
                tryWrite(canvas, x[worked ? begins : from] + 0.6, top - 5.6, month.getMonth().getDisplayName(TextStyle.SHORT, Locale.ENGLISH) + (worked && month.getYear() != year ? " " + month.getYear() : ""));
                year = month.getYear();
            }
        }
    }

    private double widest() {
        double wide = 0;
        for (int d = 0; d < full.length; d++) wide = Math.max(wide, x[d + 1] - x[d]);
        return wide;
    }

    private static void tryWrite(Canvas canvas, double x, double y, String words) {
        Box box = Canvas.covers(x, y, words, Ink.SMALL, Anchor.START);
        if (canvas.free(box.grown(0.5)) && box.right() < WIDTH) canvas.write(x, y, words, Ink.SMALL, Anchor.START, Ink.BLACK);
    }
}
