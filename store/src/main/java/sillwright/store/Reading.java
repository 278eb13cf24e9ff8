package sillwright.store;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

import sillwright.walk.Entry;
import sillwright.walk.Fault;

/// Lines of a book on their way to entries: one that cannot be read is set aside and named.
final class Reading {
    private final String building;
    private final List<Entry> entries = new ArrayList<>();
    private final List<Fault> faults = new ArrayList<>();
    private final List<String> asides = new ArrayList<>();

    Reading(String building) { this.building = building; }

    void line(Line line) {
        try {
            entries.add(line.entry());
        } catch (Fields.Wrongs wrongs) {
            for (Fields.Wrong wrong : wrongs.all()) fault(line.id(), wrong.field(), wrong.what(), wrong.mend());
            asides.add(line.said());
        }
    }

    void aside(Ledger.Aside aside) {
        String text = new String(aside.bytes(), StandardCharsets.UTF_8);
        fault("set aside " + aside.sha256().substring(0, 12), "", "could not be read when it arrived: " + (text.length() <= 80 ? text : text.substring(0, 77) + "..."),
                "write it again rightly, with an id of its own");
        asides.add(text);
    }

    int faults() { return faults.size(); }

    private void fault(String entry, String field, String what, String mend) { faults.add(new Fault(building, entry, field, what, mend, true)); }

    SurveyFile.Held held() { return new SurveyFile.Held(building, entries, faults, asides); }
}
