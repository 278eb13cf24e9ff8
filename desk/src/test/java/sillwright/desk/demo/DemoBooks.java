package sillwright.desk.demo;

import module java.base;

import sillwright.walk.Entry;

/// All invented surveys, by the name of their file in `examples/`.
public final class DemoBooks {
    private DemoBooks() {}

    public static SortedMap<String, List<Entry>> all() {
        var books = new TreeMap<String, List<Entry>>();
        books.put("fallow-brook-house.survey.json", DemoHouse.entries());
        books.put("porch-alone.survey.json", SmallSurveys.porchAlone());
        books.put("one-sill.survey.json", SmallSurveys.oneSill());
        books.put("fascia-under-gutter.survey.json", SmallSurveys.fasciaUnderGutter());
        books.put("wash-house.survey.json", FiveYears.entries());
        return books;
    }
}
