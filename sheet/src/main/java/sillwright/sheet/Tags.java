package sillwright.sheet;

import java.io.IOException;
import java.util.List;
import java.util.Set;

import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;

/// Mends the tags of the finished pages, as PDF/UA wants them: a table without a head only sets things side by side, and to one who hears the page it is none; a link says
/// what it is.
final class Tags {
    private static final COSName TABLE = COSName.getPDFName("Table"), HEAD = COSName.getPDFName("TH"), ROW = COSName.getPDFName("TR"), CELL = COSName.getPDFName("TD"),
            LIST = COSName.getPDFName("L"), LINE = COSName.getPDFName("LI"), LINE_BODY = COSName.getPDFName("LBody"), DIVISION = COSName.getPDFName("Div");

    private static final Set<COSName> GROUPS = Set.of(COSName.getPDFName("THead"), COSName.getPDFName("TBody"), COSName.getPDFName("TFoot"));

    private static final COSName BACKGROUND = COSName.getPDFName("Background");

    private Tags() {}

    /// The lines and grounds of a finished page are no content, and each is marked so by a dictionary of its own: most of what a document of tables holds. One does for all.
    static void share(PDPage page, COSDictionary background) {
        COSDictionary marks = page.getResources().getCOSObject().getCOSDictionary(COSName.PROPERTIES);
        if (marks == null) return;
        for (COSName name : List.copyOf(marks.keySet())) {
            COSDictionary mark = marks.getCOSDictionary(name);
            if (mark != null && BACKGROUND.equals(mark.getCOSName(COSName.TYPE))) marks.setItem(name, background);
        }
    }

    static COSDictionary background() {
        COSDictionary background = new COSDictionary();
        background.setItem(COSName.TYPE, BACKGROUND);
        return background;
    }

    static void mend(PDDocument document) throws IOException {
        for (PDPage page : document.getPages())
            for (PDAnnotation mark : page.getAnnotations()) if (mark instanceof PDAnnotationLink && mark.getContents() == null) mark.setContents("to the part named here");
        if (document.getDocumentCatalog().getStructureTreeRoot() == null) return;
        walk(document.getDocumentCatalog().getStructureTreeRoot().getCOSObject().getDictionaryObject(COSName.K), null);
    }

    private static void walk(COSBase node, COSName parent) {
        if (node instanceof COSArray many) for (int i = 0; i < many.size(); i++) walk(many.getObject(i), parent);
        if (!(node instanceof COSDictionary element) || element.getCOSName(COSName.S) == null) return;
        COSName kind = element.getCOSName(COSName.S);
        if (kind.equals(TABLE) && !headed(element)) flatten(element);
        // The dash before a line of a list comes as a line of its own, with no list about it.
        if (kind.equals(LINE) && !LIST.equals(parent) || kind.equals(LINE_BODY) && !LINE.equals(parent)) element.setItem(COSName.S, DIVISION);
        walk(element.getDictionaryObject(COSName.K), element.getCOSName(COSName.S));
    }

    /// Whether a head belongs to this table, and not to one within it.
    private static boolean headed(COSDictionary element) { return holds(element.getDictionaryObject(COSName.K)); }

    private static boolean holds(COSBase node) {
        if (node instanceof COSArray many) {
            for (int i = 0; i < many.size(); i++) if (holds(many.getObject(i))) return true;
            return false;
        }
        if (!(node instanceof COSDictionary element) || element.getCOSName(COSName.S) == null || TABLE.equals(element.getCOSName(COSName.S))) return false;
        return HEAD.equals(element.getCOSName(COSName.S)) || headed(element);
    }

    private static void flatten(COSDictionary table) {
        table.setItem(COSName.S, DIVISION);
        rows(table.getDictionaryObject(COSName.K));
    }

    private static void rows(COSBase node) {
        if (node instanceof COSArray many) for (int i = 0; i < many.size(); i++) rows(many.getObject(i));
        if (!(node instanceof COSDictionary element)) return;
        COSName kind = element.getCOSName(COSName.S);
        if (!ROW.equals(kind) && !CELL.equals(kind) && !GROUPS.contains(kind)) return;
        element.setItem(COSName.S, DIVISION);
        element.removeItem(COSName.A);
        if (!CELL.equals(kind)) rows(element.getDictionaryObject(COSName.K));
    }
}
