package sillwright.measure;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.junit.jupiter.api.Assertions.*;

@DisplayNameGeneration(ReplaceUnderscores.class)
class JsonTest {
    @Test
    void every_sort_of_value_is_read_with_its_place() {
        Json.Obj root = Json.read("\uFEFF { \"a\" : [ 1, -2.5e-1, 0 ], \"b\" : { \"c\" : \"x\\u00e9\\n\\\"\\\\\\/\" }, \"t\":true,\"f\":false, \"n\" : null, \"\":{} , \"e\":[]}\r\n").object();
        assertEquals(List.of(1.0, -0.25, 0.0), root.need("a", "").list().stream().map(Json::number).toList());
        assertEquals("a 2", root.need("a", "").list().get(1).place());
        assertEquals("xé\n\"\\/", root.need("b", "").object().need("c", "").text());
        assertEquals("b, c", root.need("b", "").object().need("c", "").place());
        assertTrue(root.need("t", "").yes() && !root.need("f", "").yes());
        assertTrue(root.get("n").isEmpty() && root.get("nowhere").isEmpty());
        assertEquals(7, root.fields().size());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "{\"a\": 1,}|line 1, column 9", "{\"a\" 1}|line 1, column 6", "{'a': 1}|line 1, column 2", "[1 2]|line 1, column 4", "[01]|line 1, column 3", "[1.]|line 1, column 2",
        "[.5]|line 1, column 2", "[+1]|line 1, column 2", "[NaN]|line 1, column 2", "[1e]|line 1, column 2", "[1e999]|line 1, column 2", "[tru]|line 1, column 2", "[\"a|line 1, column 4",
        "[\"\\x\"]|line 1, column 4", "[\"\\u12g4\"]|line 1, column 7", "{\"a\": 1, \"a\": 2}|\"a\" is given twice", "{}{}|more text after the end", "``|ends too early", "{\"a\": [1, 2}|line 1, column 12"})
    void what_is_no_json_is_refused_with_line_and_column(String text, String said) {
        String message = assertThrows(Refused.class, () -> Json.read(text)).getMessage();
        assertTrue(message.contains(said) && message.contains("; "), message);
    }

    @Test
    void a_text_nested_without_end_is_refused_and_does_not_overflow() {
        assertTrue(assertThrows(Refused.class, () -> Json.read("[".repeat(100_000))).getMessage().contains("nested"));
        Json.read("[".repeat(100) + "]".repeat(100));
        assertTrue(assertThrows(Refused.class, () -> Json.read("{\n \"a\":\n  tru }")).getMessage().startsWith("line 3, column 3"));
    }

    @Test
    void a_value_of_another_sort_is_refused_at_its_place() {
        Json.Obj root = Json.read("{\"list\": [{\"p\": \"0.5\"}], \"prio\": 1}").object();
        assertEquals("list 1, p: is the text \"0.5\"; write a number, without quotes", assertThrows(Refused.class, () -> root.need("list", "").list().getFirst().object().need("p", "").number()).getMessage());
        assertTrue(assertThrows(Refused.class, () -> root.only(Set.of("list", "prior"))).getMessage().contains("did you mean prior?"));
        assertTrue(assertThrows(Refused.class, () -> root.need("leak", "write it")).getMessage().contains("'leak' is missing; write it"));
    }
}
