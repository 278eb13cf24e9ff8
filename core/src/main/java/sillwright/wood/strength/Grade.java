package sillwright.wood.strength;

import sillwright.measure.Refused;

/// What a grader by eye made of a piece: from the best to the least that has design values.
public enum Grade {
    SELECT_STRUCTURAL("select-structural"), NO1("no1"), NO2("no2"), NO3("no3");

    private final String word;

    Grade(String word) { this.word = word; }

    /// As it is typed: `no2`.
    public String word() { return word; }

    /// As it is said: `No.2`.
    public String said() { return this == SELECT_STRUCTURAL ? "Select Structural" : "No." + word.charAt(2); }

    public static Grade of(String word) {
        for (Grade grade : values()) if (grade.word.equals(word)) return grade;
        throw new Refused("", "'{}' is not a grade of the table", "use select-structural, no1, no2 or no3", word);
    }
}
