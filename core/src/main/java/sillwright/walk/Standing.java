package sillwright.walk;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/// An entry that stands, and what it was last amended to say.
record Standing(Entry entry, Body body) {
    /// What came of a whole book: what stands, and what could not be used, each in the order of the book.
    record Outcome(List<Standing> all, List<Wrong> wrongs) {}

    /// A strike or an amendment that could not be used, or was used in vain.
    record Wrong(Entry entry, String field, String what, String mend, boolean grave) {}

    /// Which entries stand. From the last to the first, because whether a strike or an amendment itself stands is then
    /// known when its turn comes.
    ///
    /// @param entries in the order of the fold, no id twice
    static Outcome of(List<Entry> entries) {
        Map<String, Integer> place = new HashMap<>();
        for (int i = 0; i < entries.size(); i++) place.put(entries.get(i).id(), i);
        Map<Integer, Integer> amendedBy = new HashMap<>(), struckFirstBy = new HashMap<>();
        List<Wrong> wrongs = new ArrayList<>();
        for (int i = entries.size() - 1; i >= 0; i--) {
            if (struckFirstBy.containsKey(i)) continue;
            Entry entry = entries.get(i);
            switch (entry.body()) {
                case Body.Struck(var target, _) -> {
                    if (earlier(entry, target, place, i, wrongs)) struckFirstBy.put(place.get(target), i);
                }
                case Body.Amended(var target, var instead) -> {
                    if (earlier(entry, target, place, i, wrongs) && sameKind(entry, entries.get(place.get(target)).body(), instead, wrongs))
                        amendedBy.putIfAbsent(place.get(target), i);
                }
                case Building _, Side _, Member _, ProbeReading _, MoistureReading _, Sighting _, Photo _, WorkDone _, OpenChecks _, Profile _, Decision _ -> {}
            }
        }
        List<Standing> all = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            Integer amendment = amendedBy.get(i), strike = struckFirstBy.get(i);
            if (strike == null) all.add(new Standing(entries.get(i), amendment == null ? entries.get(i).body() : insteadOf(entries.get(amendment))));
            else if (amendment != null && strike < amendment)
                wrongs.add(new Wrong(entries.get(amendment), "entry", "amends an entry that was struck before, and stays struck",
                        "strike the strike to bring the entry back", false));
        }
        wrongs.sort((a, b) -> Integer.compare(place.get(a.entry.id()), place.get(b.entry.id())));
        return new Outcome(Collections.unmodifiableList(all), Collections.unmodifiableList(wrongs));
    }

    private static Body insteadOf(Entry amendment) { return ((Body.Amended) amendment.body()).instead(); }

    private static boolean earlier(Entry entry, String target, Map<String, Integer> place, int here, List<Wrong> wrongs) {
        Integer at = place.get(target);
        if (at != null && at < here) return true;
        wrongs.add(new Wrong(entry, "entry", at == null ? "names an entry that is not in this book: '" + target + "'" : "names an entry that is not earlier than itself",
                "name the id of an earlier entry", true));
        return false;
    }

    private static boolean sameKind(Entry entry, Body said, Body instead, List<Wrong> wrongs) {
        if (said.getClass() == instead.getClass()) return true;
        boolean ofAnEntry = said instanceof Body.Amended || said instanceof Body.Struck;
        wrongs.add(ofAnEntry
                ? new Wrong(entry, "entry", "amends an amendment or a strike", "amend the first entry again, or strike the amendment", true)
                : new Wrong(entry, "instead", "the amendment says another kind of thing than the entry it amends", "strike the entry and write a new one", true));
        return false;
    }
}
