package sillwright.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

/// docs/asvs.md against itself and the sources: one verdict to a line, numbers in order, sums that agree, and no class named that is not there.
@DisplayNameGeneration(ReplaceUnderscores.class)
class AsvsTest {
    private static final Path HOME = Path.of("..");
    private static final Pattern LINE = Pattern.compile("\\| (\\d+)\\.(\\d+)\\.(\\d+) \\| ([12]) \\| ([^|]+) \\| \\*\\*(Met|n/a|Open)\\.\\*\\* ([^|]{3,}) \\|");
    private static final Pattern SUM = Pattern.compile("\\| (?:V(\\d+) ([^|]+)|all) \\| (\\d+) \\| (\\d+) \\| (\\d+) \\| (\\d+) \\|");
    private static final Comparator<int[]> ORDER = java.util.Arrays::compare;

    private record Line(int[] number, int level, String asked, String verdict, String why) {
        int chapter() { return number[0]; }
    }

    private static String doc() throws IOException { return Files.readString(HOME.resolve("docs/asvs.md")); }

    private static List<Line> lines(String doc) {
        List<Line> lines = new ArrayList<>();
        for (String line : doc.lines().filter(line -> line.matches("\\|\\s*V?\\d+\\.\\d.*")).toList()) {
            Matcher parts = LINE.matcher(line);
            assertTrue(parts.matches(), "neither met, n/a nor open, or without a reason: " + line);
            lines.add(new Line(new int[] {Integer.parseInt(parts.group(1)), Integer.parseInt(parts.group(2)), Integer.parseInt(parts.group(3))}, Integer.parseInt(parts.group(4)), parts.group(5), parts.group(6), parts.group(7)));
        }
        return lines;
    }

    private static void inOrder(List<Line> lines) {
        for (int i = 1; i < lines.size(); i++)
            assertTrue(ORDER.compare(lines.get(i - 1).number, lines.get(i).number) < 0, java.util.Arrays.toString(lines.get(i).number) + " stands twice, or out of order");
    }

    private static Map<String, List<Integer>> counted(List<Line> lines) {
        Map<String, List<Integer>> counted = new LinkedHashMap<>();
        Map<Integer, List<Line>> chapters = new TreeMap<>();
        for (Line line : lines) chapters.computeIfAbsent(line.chapter(), _ -> new ArrayList<>()).add(line);
        chapters.forEach((chapter, all) -> counted.put("V" + chapter, counts(all)));
        counted.put("all", counts(lines));
        return counted;
    }

    private static List<Integer> counts(List<Line> lines) {
        List<Integer> counts = new ArrayList<>();
        for (String verdict : List.of("Met", "n/a", "Open")) counts.add((int) lines.stream().filter(line -> line.verdict.equals(verdict)).count());
        counts.add(lines.size());
        return counts;
    }

    private static Map<String, List<Integer>> summed(String doc) {
        Map<String, List<Integer>> summed = new LinkedHashMap<>();
        for (Matcher sum = SUM.matcher(doc); sum.find(); )
            summed.put(sum.group(1) == null ? "all" : "V" + sum.group(1), List.of(Integer.parseInt(sum.group(3)), Integer.parseInt(sum.group(4)), Integer.parseInt(sum.group(5)), Integer.parseInt(sum.group(6))));
        return summed;
    }

    /// Source for the numbers of requirements: OWASP ASVS 5.0.0, its own table, 70 at level 1 and 183 more at level 2.
    @Test
    void every_requirement_of_levels_1_and_2_has_a_line_and_a_verdict_in_order() throws IOException {
        List<Line> lines = lines(doc());
        inOrder(lines);
        assertEquals(70, lines.stream().filter(line -> line.level == 1).count());
        assertEquals(183, lines.stream().filter(line -> line.level == 2).count());
        assertEquals(List.of(27, 11, 19, 10, 9, 35, 18, 7, 7, 29, 14, 9, 13, 9, 13, 16, 7), counted(lines).entrySet().stream().filter(one -> !one.getKey().equals("all")).map(one -> one.getValue().getLast()).toList());
    }

    @Test
    void the_sums_at_the_top_are_those_of_the_lines() throws IOException {
        String doc = doc();
        assertEquals(counted(lines(doc)), summed(doc));
        assertTrue(doc.contains("Each of the " + lines(doc).size() + " requirements"));
    }

    @Test
    void each_line_stands_in_its_own_chapter() throws IOException {
        int chapter = 0;
        for (String line : doc().lines().toList()) {
            Matcher head = Pattern.compile("## V(\\d+) .*").matcher(line), row = LINE.matcher(line);
            if (head.matches()) chapter = Integer.parseInt(head.group(1));
            if (row.matches()) assertEquals(chapter, Integer.parseInt(row.group(1)), line);
        }
    }

    @Test
    void what_matters_most_among_the_open_is_open() throws IOException {
        String doc = doc(), most = doc.substring(doc.indexOf("## What is open"), doc.indexOf("## V1 "));
        Set<String> open = new TreeSet<>();
        for (Line line : lines(doc)) if (line.verdict.equals("Open")) open.add(line.number[0] + "." + line.number[1] + "." + line.number[2]);
        List<String> named = Pattern.compile("\\d+\\.\\d+\\.\\d+").matcher(most).results().map(java.util.regex.MatchResult::group).toList();
        assertFalse(named.isEmpty());
        for (String number : named) assertTrue(open.contains(number), number + " is called open above, and is not");
    }

    @Test
    void every_class_that_is_named_is_there() throws IOException {
        Set<String> there = new TreeSet<>();
        for (String room : List.of("core", "solve", "store", "sheet", "page", "desk"))
            try (var files = Files.walk(HOME.resolve(room).resolve("src"))) { files.filter(file -> file.toString().endsWith(".java")).forEach(file -> there.add(file.getFileName().toString().replace(".java", ""))); }
        there.add("SecureRandom");
        List<String> named = new ArrayList<>();
        for (Line line : lines(doc())) Pattern.compile("`([A-Z][a-z]\\w+)`").matcher(line.why).results().forEach(one -> named.add(one.group(1)));
        named.removeAll(List.of("Origin"));
        assertTrue(named.size() > 150, named.size() + " classes are named");
        for (String one : named) assertTrue(there.contains(one), one + " is named, and is not there");
    }

    @Test
    void what_the_page_says_of_words_and_limits_is_what_the_program_holds() throws IOException {
        String doc = doc().replace("\n", " ");
        assertTrue(doc.contains(String.join(", ", Passphrase.WORDS) + "."), "the words that no passphrase is made of");
        assertTrue(doc.contains("| things in hand for one visitor, streams among them | " + InHand.MOST + " |"));
        assertTrue(doc.contains("Past " + (DoorLog.LARGEST >> 20) + " MB the file is put aside"));
        assertTrue(doc.contains("| the passphrase | " + Passphrase.SHORTEST + " letters at least"));
    }

    @Test
    void a_line_without_a_verdict_one_that_stands_twice_and_a_wrong_sum_would_be_noticed() throws IOException {
        String doc = doc(), line = doc.lines().filter(one -> one.startsWith("| 6.3.3 |")).findFirst().orElseThrow();
        assertThrows(AssertionError.class, () -> lines(doc.replace(line, line.replace("**Open.**", "**Partly.**"))));
        assertThrows(AssertionError.class, () -> inOrder(lines(doc.replace(line, line + "\n" + line))));
        String changed = doc.replace(line, line.replace("**Open.**", "**Met.**"));
        assertFalse(counted(lines(changed)).equals(summed(changed)));
    }
}
