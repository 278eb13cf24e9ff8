package sillwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.List;
import java.util.Random;

import javax.xml.parsers.DocumentBuilderFactory;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

@DisplayNameGeneration(ReplaceUnderscores.class)
class MarkupTest {
    @Test
    void text_comes_back_from_a_parser_as_it_went_in() throws Exception {
        String words = "Smith & Daughters <\"3/4\"> it's ½ ″ ′ ° ² ≥ – 🪵";
        Markup element = Markup.of("p", words).with("title", words);
        var root = Xml.parse(element.xml()).getDocumentElement();
        assertEquals(words, root.getTextContent());
        assertEquals(words, root.getAttribute("title"));
    }

    @Test
    void whatever_marks_a_text_holds_the_element_can_be_parsed() throws Exception {
        for (long seed = 1; seed <= 200; seed++) {
            Random random = new Random(seed);
            StringBuilder words = new StringBuilder();
            for (int i = 0; i < 40; i++) words.append((char) (random.nextInt(8) == 0 ? 0xD800 + random.nextInt(0x900) : random.nextInt(8) == 0
                    ? 0xFFF0 + random.nextInt(16) : random.nextInt(0x180)));
            String xml = Markup.of("p", words).with("title", words).xml();
            assertEquals("p", Xml.parse(xml).getDocumentElement().getTagName(), "seed " + seed);
        }
    }

    @Test
    void the_tree_that_is_laid_out_is_the_one_that_a_reader_of_the_text_finds() throws Exception {
        Markup page = Markup.of("div", "before ", Markup.of("p", "a & b\u0001 ", Markup.of("b", "½\" <c>")).with("title", "\uD800x\"y"), Markup.of("svg").with("xmlns", "http://www.w3.org/2000/svg")).with("xmlns", "http://www.w3.org/1999/xhtml");
        var parser = DocumentBuilderFactory.newInstance();
        parser.setNamespaceAware(true);
        var read = parser.newDocumentBuilder().parse(new InputSource(new StringReader(page.xml()))).getDocumentElement();
        for (var declared : List.of(read, read.getLastChild())) ((Element) declared).removeAttributeNS("http://www.w3.org/2000/xmlns/", "xmlns");
        var made = page.dom(parser.newDocumentBuilder().newDocument());
        assertTrue(made.isEqualNode(read), made.getTextContent());
    }

    @Test
    void an_attribute_given_twice_stands_once_as_last_given() {
        assertEquals("<a x=\"2\"/>", Markup.of("a").with("x", 1).with("x", 2).xml());
    }

    @Test
    void numbers_are_written_without_exponent_or_needless_zeros() {
        assertEquals("<a w=\"0.1\" h=\"1200000\" d=\"-0.33\"/>", Markup.of("a").with("w", 0.1).with("h", 1.2e6).with("d", -1.0 / 3).xml());
    }

    @Test
    void changing_an_element_leaves_the_first_as_it_was() {
        Markup first = Markup.of("g");
        first.with("id", "x").has("words");
        assertEquals("<g/>", first.xml());
    }
}
