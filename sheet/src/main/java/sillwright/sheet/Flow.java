package sillwright.sheet;

import java.util.ArrayList;
import java.util.List;

import static sillwright.sheet.Text.*;

/// Entries that run down the left half of a page, then down the right, then on to the next: planned by what each is reckoned to take, a table to a page.
final class Flow {
    /// Kept free at the foot of a page for what the reckoning is out by, mm. Own choice.
    private static final double SPARE = 5;

    /// The last page is shortened by so much at a time until its columns end nearly level, mm. Own choice.
    private static final double STEP = 8;

    /// Two lines of notes and the white beneath them, mm, less a hair.
    private static final double TWO_LINES = 7.6;

    /// @param head   stands together
    /// @param steps  run on in a paragraph that may part between two of them
    /// @param behind what follows, each whole
    record Entry(Markup head, List<String> steps, List<Markup> behind) {}

    private final List<List<Markup>> columns = new ArrayList<>();
    private final double room;
    private final double first;
    private final double foot;
    private final int pages;
    private double left;

    private Flow(double room, double first, double foot, int pages) {
        this.room = room;
        this.first = first;
        this.foot = foot;
        this.pages = pages;
    }

    /// @param room of a page, mm; the first of them begins a page
    static Markup of(List<Entry> entries, double room) { return of(List.of(), 0, entries, room); }

    /// Beneath something that begins the page over both columns.
    ///
    /// @param over   stands at the head of the first page
    /// @param overMm what it takes at the most
    static Markup of(List<Markup> over, double overMm, List<Entry> entries, double room) {
        double first = room - overMm;
        Flow flow = planned(entries, room, first, room, Integer.MAX_VALUE / 2);
        int pages = (flow.columns.size() + 1) / 2;
        for (double last = room - STEP; last > 0; last -= STEP) {
            Flow closer = planned(entries, room, first, last, pages);
            if (closer.columns.size() > 2 * pages) break;
            flow = closer;
        }
        List<Markup> rows = new ArrayList<>();
        for (int i = 0; i < flow.columns.size(); i += 2)
            rows.add(Markup.of("table", Markup.of("tr", Markup.of("td", flow.columns.get(i)).with("class", "half"), Markup.of("td", i + 1 < flow.columns.size() ? flow.columns.get(i + 1) : ""))).with("class", i == 0 && overMm > 0 ? "grid" : "grid chapter"));
        return overMm > 0 ? div("flow", div("chapter", over), rows) : div("flow", rows);
    }

    /// @param foot how far down its last page may be filled, mm
    private static Flow planned(List<Entry> entries, double room, double first, double foot, int pages) {
        Flow flow = new Flow(room - SPARE, first - SPARE, foot - SPARE, pages);
        flow.open();
        for (Entry entry : entries) flow.set(entry);
        return flow;
    }

    private void open() {
        left = columns.size() < 2 * pages - 2 ? room : foot;
        if (columns.size() < 2) left = Math.min(left, first);
        columns.add(new ArrayList<>());
    }

    private void set(Entry entry) {
        List<Markup> started = new ArrayList<>(List.of(entry.head));
        double high = Extent.of(entry.head) + 1.2;
        int from = 0, to = fitting(entry.steps, 0, left - high);
        if (high > left || !entry.steps.isEmpty() && to == 0) {
            open();
            to = fitting(entry.steps, 0, left - high);
        }
        left -= high;
        String look = "repair";
        do {
            if (to > from) {
                Markup run = notes(numbered(entry.steps, from, to));
                left -= Extent.of(run);
                started.add(run);
            }
            if (to == entry.steps.size()) break;
            columns.getLast().add(div(look, started));
            look = "on";
            started = new ArrayList<>();
            open();
            from = to;
            to = Math.max(from + 1, fitting(entry.steps, from, left));
        } while (true);
        for (Markup part : entry.behind) {
            double takes = Extent.of(part);
            if (takes > left) {
                columns.getLast().add(div(look, started));
                look = "on";
                started = new ArrayList<>();
                open();
            }
            left -= takes;
            started.add(part);
        }
        if (!started.isEmpty()) columns.getLast().add(div(look, started));
    }

    /// The step behind the last that fits into what is left; all or at least two lines of them, for one line alone is lost at the foot of a page.
    private static int fitting(List<String> steps, int from, double room) {
        int to = from;
        while (to < steps.size() && Extent.of(notes(numbered(steps, from, to + 1))) <= room) to++;
        return to < steps.size() && Extent.of(notes(numbered(steps, from, to))) < TWO_LINES ? from : to;
    }

    /// Steps run on in one paragraph, each behind its number.
    private static List<Node> numbered(List<String> steps, int from, int to) {
        List<Node> all = new ArrayList<>();
        for (int i = from; i < to; i++) all.addAll(List.of(b((i + 1) + " "), new Node.Text(steps.get(i) + " ")));
        return all;
    }
}
