package sillwright.sheet;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;

import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.FSStream;
import com.openhtmltopdf.extend.FSStreamFactory;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.RenderingContext;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.w3c.dom.Element;

/// The drawings and photos of a PDF, set into it before its pages are laid out: a page holds only how large each drawing is, and the number of each photo.
///
/// So neither is ever held as markup but for the part that is being written: a print of hundreds of drawings is many times as much markup as paper.
final class Plates implements SVGDrawer, FSStreamFactory {
    /// What the address of a photo begins with.
    static final String PROTOCOL = "plate";
    private static final String NUMBER = "data-plate", INSIDE = "data:image/jpeg;base64,";
    private static final COSName DRAWN = COSName.getPDFName("Drawn");

    private final PDDocument document;
    private final List<PDFormXObject> drawings = new ArrayList<>();
    /// Beside the pages, in the document's own store, which keeps only so much in memory; none is part of the document until a page shows it.
    private final List<COSStream> photos = new ArrayList<>();
    private final PDFont letter;

    /// @param letter of the words on them, of the same document
    Plates(PDDocument document, PDFont letter) throws IOException {
        this.document = document;
        this.letter = letter;
        // The document learns that it is to keep of the letter what is used: a page that sets it tells so, a form drawn by hand would not.
        try (PDPageContentStream once = new PDPageContentStream(document, new PDPage())) {
            once.setFont(letter, 1);
        }
    }

    /// The page with every drawing and photo taken out and set into the document, its place and its words for one who cannot see it left.
    Markup without(Markup page) {
        try {
            if (page.name().equals("svg")) return drawn(page);
            if (page.name().equals("img") && page.get("src").startsWith(INSIDE)) return kept(page);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new Markup(page.name(), page.attributes(), page.children().stream().map(child -> child instanceof Markup one ? without(one) : child).toList());
    }

    private Markup drawn(Markup svg) throws IOException {
        PDFormXObject form = new PDFormXObject(document);
        Plate.draw(svg, letter, form);
        drawings.add(form);
        Markup place = Markup.of("svg").with(NUMBER, drawings.size() - 1);
        for (String kept : List.of("xmlns", "width", "height", "alt")) place = place.with(kept, svg.get(kept));
        return place;
    }

    private Markup kept(Markup photo) throws IOException {
        COSStream beside = document.getDocument().createCOSStream();
        try (OutputStream to = beside.createRawOutputStream()) {
            to.write(Base64.getDecoder().decode(photo.get("src").substring(INSIDE.length())));
        }
        photos.add(beside);
        return photo.with("src", PROTOCOL + ":/" + (photos.size() - 1));
    }

    @Override
    public FSStream getUrl(String address) {
        COSStream picture = photos.get(Integer.parseInt(address.substring(address.lastIndexOf('/') + 1)));
        return new FSStream() {
            @Override
            public InputStream getStream() {
                try {
                    return picture.createRawInputStream();
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            }

            @Override
            public Reader getReader() { throw new IllegalStateException("a picture is not read as words"); }
        };
    }

    @Override
    public SVGImage buildSVGImage(Element place, Box box, CssContext css, double cssWidth, double cssHeight, double dotsPerPixel) {
        PDFormXObject drawing = drawings.get(Integer.parseInt(place.getAttribute(NUMBER)));
        double wide = drawing.getBBox().getWidth(), high = drawing.getBBox().getHeight();
        return new SVGImage() {
            @Override
            public int getIntrinsicWidth() { return (int) Math.ceil(wide * dotsPerPixel); }

            @Override
            public int getIntrinsicHeight() { return (int) Math.ceil(high * dotsPerPixel); }

            @Override
            public void drawSVG(OutputDevice page, RenderingContext context, double x, double y) {
                // The page places an empty form, which then shows the drawing.
                PdfBoxGraphics2D[] placed = {null};
                page.drawWithGraphics((float) x, (float) y, (float) wide, (float) high, graphics -> placed[0] = (PdfBoxGraphics2D) graphics);
                try {
                    PDFormXObject form = placed[0].getXFormObject();
                    form.setBBox(drawing.getBBox());
                    form.setResources(new PDResources());
                    form.getResources().put(DRAWN, drawing);
                    try (OutputStream to = form.getStream().createOutputStream()) {
                        to.write(("/" + DRAWN.getName() + " Do\n").getBytes(StandardCharsets.US_ASCII));
                    }
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            }
        };
    }

    @Override
    public void importFontFaceRules(List<FontFaceRule> faces, SharedContext shared) {}

    @Override
    public void addFontFile(File file, String family, Integer weight, FontStyle style) {}

    @Override
    public void close() {}
}
