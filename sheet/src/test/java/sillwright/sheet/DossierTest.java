package sillwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import sillwright.Assessment;
import sillwright.measure.Units;

/// The dossier as another reader of PDF sees it.
@DisplayNameGeneration(ReplaceUnderscores.class)
class DossierTest {
    private static final Assessment porchAssessment = Porch.assessment(Units.US);
    private static PDDocument porch;
    private static final List<String> SAID = new ArrayList<>();

    private static PDDocument set(Assessment assessment) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Dossier.write(assessment, out, SAID::add);
        return Loader.loadPDF(out.toByteArray());
    }

    private static String text(PDDocument pdf, int from, int to) throws Exception {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(from);
        stripper.setEndPage(to);
        return stripper.getText(pdf).replaceAll("\\s+", " ");
    }

    @BeforeAll
    static void set_the_porch() throws Exception { porch = set(porchAssessment); }

    @AfterAll
    static void put_it_away() throws Exception { porch.close(); }

    @Test
    void the_first_page_answers_first() throws Exception {
        String page = text(porch, 1, 1);
        for (String words : List.of("10 of 22 members have soft wood: 1 hollow, 8 decayed, 1 softened; 8 were not probed.", "The water to stop first",
                "W1 A clogged gutter", "What cannot wait", "R1 porch post 3 from the left: scarf splice 1:5, after W1",
                "What to order", "When", "What to watch", "Autumn round, from 20 October 2026 and every year: 2 checks",
                        "2 of 214 entries were set aside", "Screening, not engineering", "page 1 of " + porch.getNumberOfPages()))
            assertTrue(page.contains(words), words + " in " + page);
        assertFalse(page.contains("W5"), "water that is hardly likely is not for the first page");
    }

    @Test
    void every_part_is_there() throws Exception {
        String all = text(porch, 1, porch.getNumberOfPages());
        for (String words : List.of("Hardly likely: ice at the eave", "The next look worth taking", "for: a gutter full of leaves was seen (+2.1)",
                "against: no icicles were seen in winter (-0.4)", "Porch post 3 from the left, south ", "R9 Scarf splice 1:8",
                "filled wood is counted as carrying nothing", "Cut list", "another layout might save up to 14 %", "Let the posts dry",
                        "Working safely", "The federal lead rule covers this work", "Spring round, first on 15 April 2027", "should be",
                        "Gaps and faults",
                "142 mm is not within the probe's reach of 120 mm", "the load on the porch beam was not given", "From memory",
                        "Common practice, no source", "40 CFR 745"))
            assertTrue(all.toLowerCase(java.util.Locale.ROOT).contains(words.toLowerCase(java.util.Locale.ROOT)), words);
    }

    @Test
    void every_page_has_its_number_and_none_is_empty() throws Exception {
        int pages = porch.getNumberOfPages();
        for (int page = 1; page <= pages; page++) {
            String words = text(porch, page, page);
            assertTrue(words.contains("page " + page + " of " + pages), "page " + page);
            boolean drawing = porch.getPage(page - 1).getMediaBox().getWidth() > porch.getPage(page - 1).getMediaBox().getHeight();
            assertTrue(drawing || words.length() > 260, "page " + page + " is all but empty: " + words);
        }
    }

    @Test
    void the_paper_is_letter_for_us_readers_and_a4_for_the_rest() throws Exception {
        PDRectangle us = porch.getPage(0).getMediaBox();
        assertEquals(612, us.getWidth(), 0.5);
        assertEquals(792, us.getHeight(), 0.5);
        try (PDDocument si = set(Porch.assessment(Units.SI))) {
            assertEquals(595.28, si.getPage(0).getMediaBox().getWidth(), 0.5);
            assertTrue(text(si, 1, si.getNumberOfPages()).contains("8534 mm long"));
        }
    }

    @Test
    void an_elevation_lies_only_where_a_standing_page_would_make_it_smaller() {
        List<Integer> lying = new ArrayList<>();
        for (PDPage page : porch.getPages()) if (page.getMediaBox().getWidth() > page.getMediaBox().getHeight()) lying.add(porch.getPages().indexOf(page) + 1);
        long wanted = porchAssessment.survey().sides().keySet().stream().filter(side -> Elevation.wantsALyingSheet(porchAssessment, side)).count();
        assertEquals(wanted, lying.size(), lying.toString());
        assertEquals(1, wanted);
    }

    @Test
    void the_file_is_tagged_titled_and_in_a_language() {
        var catalog = porch.getDocumentCatalog();
        assertTrue(catalog.getMarkInfo().isMarked());
        assertNotNull(catalog.getStructureTreeRoot());
        assertEquals("en-US", catalog.getLanguage());
        assertEquals("Dossier: Pond Lane house (invented)", porch.getDocumentInformation().getTitle());
        assertTrue(catalog.getViewerPreferences().displayDocTitle());
    }

    @Test
    void every_drawing_is_a_figure_with_words_for_one_who_cannot_see_it() {
        List<String> alternatives = new ArrayList<>();
        figures(porch.getDocumentCatalog().getStructureTreeRoot().getCOSObject().getDictionaryObject(COSName.K), alternatives, 0);
        int bars = porchAssessment.work().cuts().stream().mapToInt(plan -> plan.bars().size()).sum();
        assertEquals(2 + 10 + 10 + bars + 1 + 2 + 4, alternatives.size(), alternatives.toString());
        assertTrue(alternatives.stream().allMatch(words -> words.length() > 20), alternatives.toString());
    }

    private static void figures(COSBase node, List<String> found, int deep) {
        if (deep > 60) return;
        if (node instanceof COSArray many) for (int i = 0; i < many.size(); i++) figures(many.getObject(i), found, deep + 1);
        if (!(node instanceof COSDictionary element)) return;
        if (COSName.getPDFName("Figure").equals(element.getDictionaryObject(COSName.S))) found.add(String.valueOf(element.getString(COSName.ALT)));
        figures(element.getDictionaryObject(COSName.K), found, deep + 1);
    }

    @Test
    void every_font_is_inside_the_file() throws Exception {
        int fonts = 0;
        for (PDPage page : porch.getPages())
            for (COSName name : page.getResources().getFontNames()) {
                PDFont font = page.getResources().getFont(name);
                assertTrue(font.isEmbedded(), font.getName());
                fonts++;
            }
        assertTrue(fonts > porch.getNumberOfPages());
    }

    @Test
    void the_bookmarks_lead_to_every_side_member_and_repair() throws Exception {
        List<String> names = new ArrayList<>();
        for (PDOutlineItem item : porch.getDocumentCatalog().getDocumentOutline().children()) {
            names.add(item.getTitle());
            assertNotNull(item.findDestinationPage(porch), item.getTitle());
            for (PDOutlineItem child : item.children()) {
                names.add(child.getTitle());
                assertNotNull(child.findDestinationPage(porch), child.getTitle());
            }
        }
        assertTrue(names.containsAll(List.of("The answer", "Water", "South side, porch", "Wood", "porch post 3 from the left", "Repairs",
                "R1 scarf splice 1:5, porch post 3 from the left", "Watch", "Method and sources")), names.toString());
    }

    @Test
    void sixty_members_fit_on_forty_pages() throws Exception {
        try (PDDocument crowd = set(Crowd.assessment(Units.US, 3))) {
            assertTrue(crowd.getNumberOfPages() <= 40, crowd.getNumberOfPages() + " pages");
            assertTrue(text(crowd, 1, 1).contains("20 of 60 members have soft wood"));
        }
    }

    @Test
    void an_empty_book_still_gives_a_dossier_that_says_so() throws Exception {
        try (PDDocument empty = set(Porch.empty())) {
            assertTrue(text(empty, 1, 1).contains("No member has been described yet"));
            assertTrue(text(empty, 1, empty.getNumberOfPages()).contains("No repair is called for"));
        }
    }

    @Test
    void the_long_work_says_how_far_it_is() { assertTrue(SAID.containsAll(List.of("dossier: the answer", "dossier: repairs",
            "dossier: setting the pages")), SAID.toString()); }
}
