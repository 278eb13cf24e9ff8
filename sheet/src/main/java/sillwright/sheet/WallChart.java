package sillwright.sheet;

import java.time.LocalDate;
import java.time.format.TextStyle;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import sillwright.sheet.Canvas.Anchor;
import sillwright.work.WorkFindings.Task;
import sillwright.work.WorkFindings.TaskKind;

/// The order of work as a chart for the wall: a line for each task, its days as a bar, time running right.
public final class WallChart {
    private static final double WIDTH = 178;
    private static final double NAMES = 74;
    private static final double ROW = 4.7;
    private static final int ROWS = 42;

    private WallChart() {}

    /// As many sheets as the tasks want; none where there are no tasks.
    public static List<Drawing> draw(List<Task> tasks) {
        List<Drawing> sheets = new ArrayList<>();
        if (tasks.isEmpty()) return sheets;
        LocalDate first = tasks.stream().map(Task::start).min(LocalDate::compareTo).orElseThrow(), last = tasks.stream()
                .map(Task::end).max(LocalDate::compareTo).orElseThrow();
        for (int from = 0; from < tasks.size(); from += ROWS) sheets.add(sheet(tasks.subList(from, Math.min(tasks.size(), from + ROWS)), first, last,
                sheets.size() + 1));
        return List.copyOf(sheets);
    }

    private static Drawing sheet(List<Task> tasks, LocalDate first, LocalDate last, int number) {
        double days = ChronoUnit.DAYS.between(first, last) + 1, day = (WIDTH - NAMES - 2) / days, top = 10;
        Canvas canvas = new Canvas(WIDTH, top + tasks.size() * ROW + 2);
        double bottom = canvas.height() - 1;
        weeks(canvas, first, last, day, top, bottom);
        for (int i = 0; i < tasks.size(); i++) {
            Task task = tasks.get(i);
            double y = top + i * ROW, x = NAMES + ChronoUnit.DAYS.between(first, task.start()) * day,
                    wide = Math.max(0.8, (ChronoUnit.DAYS.between(task.start(), task.end()) + 1) * day);
            canvas.line(0, y + ROW, WIDTH - 2, y + ROW, new Ink.Pen(Ink.GREY, 0.06, ""));
            canvas.write(0.5, y + 3.5, Lettering.fitted(task.id() + " " + task.title(), Ink.SMALL, NAMES - 3), Ink.SMALL, Anchor.START, Ink.BLACK);
            bar(canvas, task.kind(), new Box(x, y + 0.9, wide, ROW - 1.8));
        }
        canvas.line(NAMES, top, NAMES, bottom, Ink.THIN);
        return canvas.done("order-of-work-" + number, "Order of work", "Order of work as a chart, " + Said.day(first) + " to " + Said.day(last)
                + "; the table beside it says the same in words.", 0.6);
    }

    /// Waiting is dotted, water is filled with the acting colour, all other work stands in firm outline.
    private static void bar(Canvas canvas, TaskKind kind, Box box) {
        switch (kind) {
            case STOP_WATER -> canvas.rect(box, Ink.ACT, Ink.ACTING);
            case DRY -> canvas.rect(box, Hatch.HOLLOW.fill(), Ink.HIDDEN);
            case SHORE -> canvas.rect(box, Hatch.DECAYED.fill(), Ink.FIRM);
            case OPEN_AND_CUT, CONSOLIDATE, JOIN, FILL -> canvas.rect(box, Hatch.NEW_LEVEL.fill(), Ink.FIRM);
            case SET_UP, PRIME, COAT, CLEAN_UP -> canvas.rect(box, Ink.PAPER, Ink.FIRM);
        }
    }

    /// A line each Monday, or each first of the month where weeks would crowd; days named where there is room.
    private static void weeks(Canvas canvas, LocalDate first, LocalDate last, double day, double top, double bottom) {
        boolean weekly = day * 7 >= 3.5;
        for (LocalDate at = first; !at.isAfter(last.plusDays(1)); at = at.plusDays(1)) {
            double x = NAMES + ChronoUnit.DAYS.between(first, at) * day;
            boolean month = at.getDayOfMonth() == 1 || at.equals(first);
            if (weekly && at.getDayOfWeek().getValue() == 1 || month) canvas.line(x, top - (month ? 5 : 0.8), x, bottom, month ? Ink.THIN : Ink.HAIR);
            if (month) tryWrite(canvas, x + 0.6, top - 5.6, at.getMonth().getDisplayName(TextStyle.SHORT, Locale.ENGLISH) + " " + at.getYear());
            if (weekly && at.getDayOfWeek().getValue() == 1) tryWrite(canvas, x + 0.4, top - 1.2, String.valueOf(at.getDayOfMonth()));
        }
    }

    private static void tryWrite(Canvas canvas, double x, double y, String words) {
        Box box = Canvas.covers(x, y, words, Ink.SMALL, Anchor.START);
        if (canvas.free(box.grown(0.5)) && box.right() < WIDTH) canvas.write(x, y, words, Ink.SMALL, Anchor.START, Ink.BLACK);
    }
}
