package sillwright.sheet;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

import sillwright.Assessment;
import sillwright.measure.Units;
import sillwright.walk.Side;

/// The whole assessment on paper: a tagged PDF that carries its fonts, the answer on its first page.
public final class Dossier {
    private Dossier() {}

    /// @param progress told each part as it begins
    public static void write(Assessment assessment, Path file, Consumer<String> progress) throws IOException {
        try (OutputStream out = Files.newOutputStream(file)) {
            write(assessment, out, progress);
        }
    }

    public static void write(Assessment assessment, OutputStream out, Consumer<String> progress) throws IOException {
        XRLog.setLoggingEnabled(false);
        String page = xhtml(assessment, progress);
        progress.accept("dossier: setting the pages");
        try (PDDocument document = new PDDocument()) {
            PdfRendererBuilder builder = new PdfRendererBuilder();
            builder.usePDDocument(document);
            builder.useSVGDrawer(new BatikSVGDrawer());
            font(builder, document, "CharisSIL-Regular", 400, FontStyle.NORMAL);
            font(builder, document, "CharisSIL-Bold", 700, FontStyle.NORMAL);
            font(builder, document, "CharisSIL-Italic", 400, FontStyle.ITALIC);
            builder.useUnicodeLineBreaker(new Breaks());
            builder.usePdfUaAccessibility(true);
            builder.withProducer("Sillwright");
            builder.withHtmlContent(page, null);
            builder.toStream(out);
            builder.run();
        }
    }

    /// A letter without its ligatures: a reader of PDF would find no f and no i where one glyph stands for both.
    private static void font(PdfRendererBuilder builder, PDDocument document, String file, int weight, FontStyle style) throws IOException {
        TrueTypeFont letters = new TTFParser().parse(new RandomAccessReadBuffer(Lettering.bytes("/fonts/" + file + ".ttf")));
        letters.setEnableGsub(false);
        builder.useFont(new PDFontSupplier(PDType0Font.load(document, letters, true)), "Charis SIL", weight, style, true);
    }

    /// The pages as XHTML, before they are set.
    static String xhtml(Assessment assessment, Consumer<String> progress) {
        List<Markup> body = new ArrayList<>();
        progress.accept("dossier: the answer");
        body.add(AnswerSheet.page(assessment));
        progress.accept("dossier: water");
        body.add(WaterSheet.page(assessment));
        progress.accept("dossier: sides");
        body.addAll(WalkSheet.pages(assessment));
        progress.accept("dossier: wood");
        body.add(WoodSheet.page(assessment));
        progress.accept("dossier: repairs");
        body.add(WorkSheet.repairs(assessment));
        progress.accept("dossier: order, plan and safety");
        body.add(WorkSheet.orders(assessment));
        body.add(WorkSheet.plan(assessment));
        body.add(WorkSheet.safety(assessment));
        progress.accept("dossier: watch");
        body.add(WatchSheet.page(assessment));
        body.add(GapSheet.page(assessment));
        body.add(SourceSheet.page(assessment));
        String title = "Dossier: " + assessment.survey().name();
        Markup head = Markup.of("head", Markup.of("title", title), Markup.of("meta").with("name", "subject")
                .with("content", "Survey, water, wood, repairs and watch of " + assessment.survey().name() + ". " + Said.SCREENING + "."),
                Markup.of("style", style(assessment)), Markup.of("bookmarks", bookmarks(assessment)));
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + Markup.of("html", head, Markup.of("body", turned(body)))
                .with("xmlns", "http://www.w3.org/1999/xhtml").with("lang", "en-US").with("xml:lang", "en-US").xml();
    }

    /// Every standing part on a new page, but for the short ones that run on. Where the paper turns to lie, that alone breaks the page, and another break would leave
    /// one empty; where it turns upright again, the break must be asked for.
    private static List<Markup> turned(List<Markup> parts) {
        List<Markup> all = new ArrayList<>();
        for (Markup part : parts) all.add(all.isEmpty() || !part.get("class").equals("upright") ? part : part.with("class", "upright chapter"));
        return all;
    }

    private static String style(Assessment assessment) {
        String css = new String(Lettering.bytes("/sillwright/sheet/dossier.css"), StandardCharsets.UTF_8);
        return css.replace("PAPER", assessment.settings().units() == Units.US ? "letter" : "A4").replace("LETTER",
                String.valueOf(Dossier.class.getResource(Lettering.FILE))).replace("RUNNING", quoted(assessment.survey().name())).replace("DATED",
                quoted(Said.walkedWords(assessment.survey())));
    }

    /// Words that may stand between the quotes of a style sheet, cut to what a margin holds.
    private static String quoted(String words) {
        StringBuilder said = new StringBuilder();
        words.codePoints().forEach(c -> said.append(c == '"' || c == '\\' || c < 0x20 || c == '<' || c == '&' ? " " : Character.toString(c)));
        return Lettering.fitted(said.toString(), 2.8, 110);
    }

    private static List<Markup> bookmarks(Assessment assessment) {
        List<Markup> all = new ArrayList<>(List.of(bookmark("The answer", "answer"), bookmark("Water", "water")));
        List<Markup> sides = new ArrayList<>();
        for (Side side : assessment.survey().sides().values()) sides.add(bookmark(Said.title(side), "elevation-" + side.id()));
        if (!sides.isEmpty()) all.add(bookmark("Sides", sides.getFirst().get("href").substring(1)).has(sides));
        List<Markup> members = assessment.wood().all().stream().filter(condition -> condition.needsWork())
                .map(condition -> bookmark(Said.title(condition.member()), "wood-" + condition.member().id())).toList();
        all.add(bookmark("Wood", "wood").has(members));
        List<Markup> repairs = assessment.work().repairs().stream().map(repair -> bookmark(repair.id() + " " + repair.treatment().words() + ", "
                + Said.title(repair.damage().member()), "repair-text-" + repair.id())).toList();
        all.add(bookmark("Repairs", "work").has(repairs));
        all.addAll(List.of(bookmark("What to order and saw", "order"), bookmark("Order of work", "plan"), bookmark("Working safely", "safety"),
                bookmark("Watch", "watch"), bookmark("Gaps and faults", "gaps"),
                bookmark("Method and sources", "sources")));
        return all;
    }

    private static Markup bookmark(String name, String id) { return Markup.of("bookmark").with("name", name).with("href", "#" + id); }
}
