package sillwright.sheet;

import java.io.ByteArrayInputStream;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.UncheckedIOException;
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
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.w3c.dom.Element;

/// The drawings and photos of a PDF, kept beside its pages while these are laid out: a page holds only how large each drawing is, and the number of each photo.
final class Plates implements SVGDrawer, FSStreamFactory {
    /// What the address of a photo begins with.
    static final String PROTOCOL = "plate";
    private static final String NUMBER = "data-plate", INSIDE = "data:image/jpeg;base64,";

    private final List<Markup> drawings = new ArrayList<>();
    private final List<String> photos = new ArrayList<>();
    private final PDFont letter;

    /// @param letter of the words on them, of the same document
    Plates(PDDocument document, PDFont letter) throws IOException {
        this.letter = letter;
        // The document learns that it is to keep of the letter what is used: a page that sets it tells so, a form drawn by hand would not.
        try (PDPageContentStream once = new PDPageContentStream(document, new PDPage())) {
            once.setFont(letter, 1);
        }
    }

    /// The page with every drawing and photo taken out, its place and its words for one who cannot see it left.
    Markup without(Markup page) {
        if (page.name().equals("svg")) {
            drawings.add(page);
            Markup place = Markup.of("svg").with(NUMBER, drawings.size() - 1);
            for (String kept : List.of("xmlns", "width", "height", "alt")) place = place.with(kept, page.get(kept));
            return place;
        }
        if (page.name().equals("img") && page.get("src").startsWith(INSIDE)) {
            photos.add(page.get("src").substring(INSIDE.length()));
            return page.with("src", PROTOCOL + ":/" + (photos.size() - 1));
        }
        return new Markup(page.name(), page.attributes(), page.children().stream().map(child -> child instanceof Markup one ? without(one) : child).toList());
    }

    @Override
    public FSStream getUrl(String address) {
        byte[] picture = Base64.getDecoder().decode(photos.get(Integer.parseInt(address.substring(address.lastIndexOf('/') + 1))));
        return new FSStream() {
            @Override
            public InputStream getStream() { return new ByteArrayInputStream(picture); }

            @Override
            public Reader getReader() { throw new IllegalStateException("a picture is not read as words"); }
        };
    }

    @Override
    public SVGImage buildSVGImage(Element place, Box box, CssContext css, double cssWidth, double cssHeight, double dotsPerPixel) {
        Markup svg = drawings.get(Integer.parseInt(place.getAttribute(NUMBER)));
        double wide = Plate.mm(svg.get("width")) * Plate.UNITS, high = Plate.mm(svg.get("height")) * Plate.UNITS;
        return new SVGImage() {
            @Override
            public int getIntrinsicWidth() { return (int) Math.ceil(wide * dotsPerPixel); }

            @Override
            public int getIntrinsicHeight() { return (int) Math.ceil(high * dotsPerPixel); }

            @Override
            public void drawSVG(OutputDevice page, RenderingContext context, double x, double y) {
                // The page places an empty form, which is drawn into when it stands.
                PdfBoxGraphics2D[] placed = {null};
                page.drawWithGraphics((float) x, (float) y, (float) wide, (float) high, graphics -> placed[0] = (PdfBoxGraphics2D) graphics);
                try {
                    Plate.draw(svg, letter, placed[0].getXFormObject());
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
