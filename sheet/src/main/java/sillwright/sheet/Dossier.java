package sillwright.sheet;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.UnaryOperator;

import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PageSupplier;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.io.MemoryUsageSetting;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.w3c.dom.Document;

import sillwright.Assessment;
import sillwright.measure.Words;
import sillwright.walk.Side;

/// The whole assessment on paper: a tagged PDF that carries its fonts, the answer on its first page.
public final class Dossier {
    /// So many bytes of finished pages are held in memory, the rest in a file of the system's folder for such. Own choice.
    private static final long IN_MEMORY = 8 << 20;

    private Dossier() {}

    /// @param progress told each part as it begins
    public static void write(Assessment assessment, Print print, Path file, Consumer<String> progress) throws IOException {
        try (OutputStream out = Files.newOutputStream(file)) {
            write(assessment, print, out, progress);
        }
    }

    public static void write(Assessment assessment, Path file, Consumer<String> progress) throws IOException {
        write(assessment, Print.whole(assessment.settings().units()), file, progress);
    }

    public static void write(Assessment assessment, OutputStream out, Consumer<String> progress) throws IOException {
        write(assessment, Print.whole(assessment.settings().units()), out, progress);
    }

    public static void write(Assessment assessment, Print print, OutputStream out, Consumer<String> progress) throws IOException {
        set(plates -> {
            Markup page = page(assessment, print, progress, plates::without);
            progress.accept("dossier: setting the pages");
            return page;
        }, out);
    }

    /// One drawing on a page of its own size, for a template that is printed full size.
    static void page(Drawing drawing, Path file) throws IOException {
        double wide = Math.max(drawing.widthMm() + 20, 215.9), high = Math.max(drawing.heightMm() + 20, 279.4);
        String css = "@page { size: " + Markup.number(wide) + "mm " + Markup.number(high) + "mm; margin: 10mm; } body { margin: 0; font-family: 'Charis SIL'; } svg { display: block; }";
        Markup page = Markup.of("html", Markup.of("head", Markup.of("title", drawing.title()), Markup.of("meta").with("name", "subject").with("content", drawing.told()),
                Markup.of("style", css)), Markup.of("body", Text.drawing(drawing)));
        try (OutputStream out = Files.newOutputStream(file)) {
            set(plates -> plates.without(page), out);
        }
    }

    /// @param written the pages, their drawings and photos handed to the plates as each part is written
    private static void set(Function<Plates, Markup> written, OutputStream out) throws IOException {
        XRLog.setLoggingEnabled(false);
        try (PDDocument document = new PDDocument(MemoryUsageSetting.setupMixed(IN_MEMORY).streamCache)) {
            lay(document, written);
            Tags.mend(document);
            document.save(out);
        }
    }

    /// Lays out the pages, and lets go of what they were laid out from before they are saved: each takes as much memory.
    private static void lay(PDDocument document, Function<Plates, Markup> written) throws IOException {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.usePDDocument(document);
        font(builder, document, "CharisSIL-Regular", "Charis SIL", 400, FontStyle.NORMAL);
        font(builder, document, "CharisSIL-Bold", "Charis SIL", 700, FontStyle.NORMAL);
        font(builder, document, "CharisSIL-Italic", "Charis SIL", 400, FontStyle.ITALIC);
        font(builder, document, "routed-gothic-narrow", "Routed Gothic Narrow", 400, FontStyle.NORMAL);
        Plates plates = new Plates(document, font(builder, document, "routed-gothic", "Routed Gothic", 400, FontStyle.NORMAL));
        builder.useSVGDrawer(plates);
        builder.useProtocolsStreamImplementation(plates, Plates.PROTOCOL);
        builder.useUnicodeLineBreaker(new Breaks());
        builder.usePdfUaAccessibility(true);
        builder.usePdfAConformance(PdfRendererBuilder.PdfAConformance.PDFA_3_A);
        builder.useColorProfile(ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData());
        builder.withProducer("Sillwright");
        Fresh fresh = new Fresh();
        builder.usePageSupplier(fresh);
        builder.withW3cDocument(tree(written.apply(plates)), null);
        try (PdfBoxRenderer pages = builder.buildPdfRenderer()) {
            pages.createPDFWithoutClosing();
        }
        fresh.stands();
    }

    /// Gives one page after the other, and tidies the one before, which stands by then.
    private static final class Fresh implements PageSupplier {
        private final COSDictionary background = Tags.background();
        private Optional<PDPage> last = Optional.empty();

        @Override
        public PDPage requestPage(PDDocument document, float wide, float high, int number, int shadow) {
            stands();
            PDPage page = new PDPage(new PDRectangle(wide, high));
            document.addPage(page);
            last = Optional.of(page);
            return page;
        }

        /// The page that was given last is written.
        void stands() { last.ifPresent(page -> Tags.share(page, background)); }
    }

    private static Document tree(Markup page) {
        try {
            Document tree = DocumentBuilderFactory.newInstance().newDocumentBuilder().newDocument();
            tree.appendChild(page.with("xmlns", "http://www.w3.org/1999/xhtml").with("lang", "en-US").with("xml:lang", "en-US").dom(tree));
            return tree;
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException(e);
        }
    }

    /// A letter without its ligatures: a reader of PDF would find no f and no i where one glyph stands for both.
    private static PDFont font(PdfRendererBuilder builder, PDDocument document, String file, String family, int weight, FontStyle style) throws IOException {
        TrueTypeFont letters = new TTFParser().parse(new RandomAccessReadBuffer(Lettering.bytes("/fonts/" + file + ".ttf")));
        letters.setEnableGsub(false);
        PDFont font = PDType0Font.load(document, letters, true);
        builder.useFont(new PDFontSupplier(font), family, weight, style, true);
        return font;
    }

    /// The pages as XHTML, before they are set.
    ///
    /// @param kept what is held of a part once it is written
    static Markup page(Assessment assessment, Print print, Consumer<String> progress, UnaryOperator<Markup> kept) {
        List<Markup> body = new ArrayList<>();
        Parts.of(assessment, print).forEach((name, part) -> {
            progress.accept("dossier: " + name);
            part.get().forEach(one -> body.add(kept.apply(one)));
        });
        String title = Words.sentence(print.reader().file().replace(".pdf", "")) + ": " + assessment.survey().name();
        List<Markup> marks = bookmarks(assessment, body);
        if (marks.size() > 1) body.set(0, body.getFirst().has(contents(marks)));
        Markup head = Markup.of("head", Markup.of("title", title), Markup.of("meta").with("name", "subject")
                .with("content", "Survey, water, wood, repairs and watch of " + assessment.survey().name() + ". " + Said.SCREENING + "."),
                Markup.of("style", style(assessment, print)), Markup.of("bookmarks", marks));
        return Markup.of("html", head, Markup.of("body", turned(body)));
    }

    /// Every standing part on a new page, but for the short ones that run on. Where the paper turns to lie, that alone breaks the page, and another break would leave
    /// one empty; where it turns upright again, the break must be asked for.
    private static List<Markup> turned(List<Markup> parts) {
        List<Markup> all = new ArrayList<>();
        for (Markup part : parts) all.add(all.isEmpty() || !part.get("class").equals("upright") ? part : part.with("class", "upright chapter"));
        return all;
    }

    private static String style(Assessment assessment, Print print) {
        String css = new String(Lettering.bytes("/sillwright/sheet/dossier.css"), StandardCharsets.UTF_8);
        return css.replace("PAPER", print.paper().css()).replace("RUNNING", quoted(assessment.survey().name())).replace("DATED",
                quoted(Said.walkedWords(assessment.survey())));
    }

    /// Words that may stand between the quotes of a style sheet, cut to what a margin holds.
    private static String quoted(String words) {
        StringBuilder said = new StringBuilder();
        words.codePoints().forEach(c -> said.append(c == '"' || c == '\\' || c < 0x20 || c == '<' || c == '&' ? " " : Character.toString(c)));
        return Lettering.fitted(said.toString(), 2.8, 110);
    }

    /// Only those whose place is printed.
    private static List<Markup> bookmarks(Assessment assessment, List<Markup> body) {
        Set<String> there = new HashSet<>();
        for (Markup part : body) part.attributes("id", there);
        List<Markup> sides = new ArrayList<>();
        for (Side side : assessment.survey().sides().values()) sides.add(bookmark(Said.title(side), "elevation-" + side.id()));
        List<Markup> members = assessment.wood().all().stream().filter(condition -> condition.needsWork())
                .map(condition -> bookmark(Said.title(condition.member()), "wood-" + condition.member().id())).toList();
        List<Markup> repairs = assessment.work().repairs().stream().map(repair -> bookmark(repair.id() + " " + repair.treatment().words() + ", "
                + Said.title(repair.damage().member()), "repair-text-" + repair.id())).toList();
        List<Markup> all = new ArrayList<>(List.of(bookmark("The answer", "answer"), bookmark("What is kept, and why", "board"), bookmark("Water", "water")));
        if (!sides.isEmpty()) all.add(bookmark("Sides", sides.getFirst().get("href").substring(1)).has(sides));
        all.addAll(List.of(bookmark("Photos", "photos"), bookmark("Wood", "wood").has(members), bookmark("Repairs", "work").has(repairs),
                bookmark("What to order and saw", "order"), bookmark("Order of work", "plan"), bookmark("Day by day", "tasks"), bookmark("Working safely", "safety"),
                bookmark("Watch", "watch"), bookmark("Gaps and faults", "gaps"), bookmark("Method and sources", "sources")));
        return all.stream().filter(one -> leads(one, there)).map(one -> new Markup(one.name(), one.attributes(), one.children().stream()
                .filter(child -> child instanceof Markup mark && leads(mark, there)).toList())).toList();
    }

    /// The parts and their pages, at the foot of the first.
    private static Markup contents(List<Markup> marks) {
        List<Object> all = new ArrayList<>(List.of(Text.b("Where to find it: ")));
        for (Markup mark : marks.subList(1, marks.size())) {
            all.add(Markup.of("a", mark.get("name")).with("class", "found").with("href", mark.get("href")).with("title", mark.get("name")));
            all.add(new Node.Text(mark == marks.getLast() ? "." : "; "));
        }
        return Text.p(all);
    }

    private static boolean leads(Markup bookmark, Set<String> there) { return there.contains(bookmark.get("href").substring(1)); }

    private static Markup bookmark(String name, String id) { return Markup.of("bookmark").with("name", name).with("href", "#" + id); }
}
