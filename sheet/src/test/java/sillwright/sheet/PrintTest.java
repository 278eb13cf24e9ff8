package sillwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import sillwright.Assessment;
import sillwright.measure.Units;
import sillwright.work.Repair;

/// What each reader gets.
@DisplayNameGeneration(ReplaceUnderscores.class)
class PrintTest {
    private static final Assessment PORCH = Porch.assessment(Units.US);

    private static String said(Print.Reader reader) { return Dossier.page(PORCH, Print.whole(Units.US).read(reader), part -> {}, one -> one).xml(); }

    @Test
    void the_crew_gets_every_step_with_a_box_and_no_prose() {
        String crew = said(Print.Reader.CREW);
        for (Repair repair : PORCH.work().repairs())
            for (String step : repair.steps()) assertTrue(crew.contains("<td>[  ]</td>") && crew.contains(Markup.escaped(step)), step);
        for (Repair repair : PORCH.work().repairs()) for (String reason : repair.reasons()) assertFalse(crew.contains(Markup.escaped(reason)), reason);
        assertFalse(crew.contains("What is wrong"), "the answer is the owner's");
    }

    @Test
    void the_board_gets_every_alternative_in_full_and_the_standards_by_their_section() {
        String board = said(Print.Reader.BOARD);
        for (Repair repair : PORCH.work().repairs())
            for (Repair.Alternative other : repair.alternatives()) assertTrue(board.contains(Markup.escaped(other.against())), other.against());
        for (String words : List.of("36 CFR 68.3", "68.3(a)(6), 68.3(b)(6)", "stays in place")) assertTrue(board.contains(words), words);
    }

    @Test
    void the_owner_gets_the_answer_first_and_lists_to_walk_with() {
        String owner = said(Print.Reader.OWNER);
        assertTrue(owner.indexOf("What is wrong") < owner.indexOf("id=\"water\""));
        assertTrue(owner.contains("Walked by ____"));
    }

    @Test
    void a_bookmark_leads_only_to_what_is_printed() {
        for (Print.Reader reader : Print.Reader.values()) {
            String said = said(reader);
            java.util.regex.Matcher links = java.util.regex.Pattern.compile("<bookmark [^>]*href=\"#([^\"]+)\"").matcher(said);
            int found = 0;
            while (links.find()) {
                assertTrue(said.contains("id=\"" + links.group(1) + "\""), reader + ": " + links.group(1));
                found++;
            }
            assertTrue(found > 5, reader.toString());
        }
    }

    @Test
    void the_reason_is_told_without_its_measures() {
        assertEquals("soft to ..., where ... is shallow", ChoiceSheet.pattern("soft to 2-15/16 in, where 3/16 in is shallow"));
        assertEquals("it would renew ... of ...", ChoiceSheet.pattern("it would renew 6 ft 1-1/2 in of 6 ft 8 in"));
        assertEquals("it bears load and keeps ... of its area", ChoiceSheet.pattern("it bears load and keeps 23 % of its area"));
    }
}
