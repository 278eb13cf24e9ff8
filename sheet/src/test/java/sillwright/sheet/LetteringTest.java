package sillwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Base64;

import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayNameGeneration(ReplaceUnderscores.class)
class LetteringTest {
    @ParameterizedTest
    @ValueSource(strings = {"″", "′", "°", "²", "–", "×", "é", "µ"})
    void the_drawing_letter_has_the_signs_of_measure(String sign) { assertTrue(Lettering.has(sign.codePointAt(0)), sign); }

    @Test
    void signs_that_the_drawing_letter_lacks_are_written_out() {
        assertEquals("at least 15 °C, 1/3, 3/8 in, ?", Lettering.sayable("≥15 °C, ⅓, ⅜ in, 🪵"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"CharisSIL-Regular", "CharisSIL-Bold", "CharisSIL-Italic"})
    void the_text_letter_has_every_sign_of_the_dossier(String file) throws Exception {
        try (TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(Lettering.bytes("/fonts/" + file + ".ttf")))) {
            for (int c : "½¼¾⅛⅜⅝⅞⅓⅔″′°²³≥≤–—×±≈µ−…".codePoints().toArray()) assertNotEquals(0, font.getUnicodeCmapLookup().getGlyphId(c),
                    Character.toString(c));
        }
    }

    @Test
    void words_cut_to_a_width_fit_it() {
        String cut = Lettering.fitted("a title that goes on and on and on", Ink.SMALL, 30);
        assertTrue(Lettering.widthMm(cut, Ink.SMALL) <= 30 && cut.endsWith("..."), cut);
        assertEquals("short", Lettering.fitted("short", Ink.SMALL, 30));
    }

    @Test
    void the_least_capital_on_a_drawing_stands_2_2_mm() { assertTrue(Ink.SMALL * Lettering.CAPITAL >= 2.2); }

    @Test
    void a_drawing_carries_the_letters_it_uses_and_few_others() throws Exception {
        String face = Lettering.fontFace("R1 butt splice 4-1/2 in");
        byte[] font = Base64.getDecoder().decode(face.substring(face.indexOf("base64,") + 7, face.indexOf(") format")));
        assertTrue(font.length < 16_000, "bytes: " + font.length);
        try (TrueTypeFont read = new TTFParser().parse(new RandomAccessReadBuffer(font))) {
            for (int c : "R1 butspliecn4-/2".codePoints().toArray()) assertNotEquals(0, read.getUnicodeCmapLookup().getGlyphId(c),
                    Character.toString(c));
            assertEquals(0, read.getUnicodeCmapLookup().getGlyphId('Z'));
        }
    }
}
