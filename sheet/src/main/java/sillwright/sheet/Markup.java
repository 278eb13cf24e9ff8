package sillwright.sheet;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

import javax.xml.XMLConstants;

import org.w3c.dom.Document;
import org.w3c.dom.Element;

import sillwright.measure.Words;

/// One element of XML: what SVG and XHTML are written with, so that no text is ever set down unescaped.
///
/// @param name       of the element
/// @param attributes in the order given
/// @param children   elements and text, in order
public record Markup(String name, List<Attribute> attributes, List<Node> children) implements Node {
    public Markup {
        attributes = List.copyOf(attributes);
        children = List.copyOf(children);
    }

    public record Attribute(String name, String value) {}

    /// @param children elements, text, numbers, or collections of them
    public static Markup of(String name, Object... children) { return new Markup(name, List.of(), List.of()).has(children); }

    /// This with one more attribute; a number is written to a hundredth.
    public Markup with(String attribute, Object value) {
        List<Attribute> more = new ArrayList<>(attributes);
        more.removeIf(one -> one.name.equals(attribute));
        more.add(new Attribute(attribute, value instanceof Number number ? number(number.doubleValue()) : String.valueOf(value)));
        return new Markup(name, more, children);
    }

    /// This with more children behind those it has.
    public Markup has(Object... more) {
        List<Node> all = new ArrayList<>(children);
        for (Object one : more) add(all, one);
        return new Markup(name, attributes, all);
    }

    private static void add(List<Node> all, Object one) {
        switch (one) {
            case Node child -> all.add(child);
            case Collection<?> many -> many.forEach(each -> add(all, each));
            case Number number -> all.add(new Node.Text(number(number.doubleValue())));
            default -> all.add(new Node.Text(String.valueOf(one)));
        }
    }

    /// A coordinate on paper: a hundredth of a millimetre is finer than any press.
    static String number(double value) { return number(value, 2); }

    static String number(double value, int decimals) { return Words.number(value, decimals); }

    /// The value of an attribute; empty where it has none.
    public String get(String attribute) {
        for (Attribute one : attributes) if (one.name.equals(attribute)) return one.value;
        return "";
    }

    /// The text in it and in all beneath it.
    public String text() {
        StringBuilder all = new StringBuilder();
        for (Node child : children) all.append(switch (child) {
            case Markup element -> element.text();
            case Node.Text(var words) -> words;
        });
        return all.toString();
    }

    /// Every element of a name in it, itself among them.
    public List<Markup> all(String called) {
        List<Markup> found = new ArrayList<>();
        if (name.equals(called)) found.add(this);
        for (Node child : children) if (child instanceof Markup element) found.addAll(element.all(called));
        return found;
    }

    /// Collects the values of an attribute, in it and in all beneath it.
    void attributes(String attribute, java.util.Set<String> into) {
        if (!get(attribute).isEmpty()) into.add(get(attribute));
        for (Node child : children) if (child instanceof Markup element) element.attributes(attribute, into);
    }

    public String xml() {
        StringBuilder out = new StringBuilder();
        write(out);
        return out.toString();
    }

    void write(StringBuilder out) {
        out.append('<').append(name);
        for (Attribute attribute : attributes) out.append(' ').append(attribute.name).append("=\"").append(escaped(attribute.value)).append('"');
        if (children.isEmpty()) {
            out.append("/>");
            return;
        }
        out.append('>');
        for (Node child : children) {
            switch (child) {
                case Markup element -> element.write(out);
                case Node.Text(var words) -> out.append(escaped(words));
            }
        }
        out.append("</").append(name).append('>');
    }

    /// The same as a tree of the standard library, each element in the nearest name space that is declared above it.
    Element dom(Document document) { return dom(document, ""); }

    private Element dom(Document document, String outside) {
        String space = get("xmlns").isEmpty() ? outside : get("xmlns");
        Element element = document.createElementNS(space, name);
        for (Attribute attribute : attributes) if (!attribute.name.equals("xmlns")) element.setAttributeNS(attribute.name.startsWith("xml:") ? XMLConstants.XML_NS_URI : null, attribute.name, allowed(attribute.value));
        for (Node child : children) element.appendChild(switch (child) {
            case Markup one -> one.dom(document, space);
            case Node.Text(var words) -> document.createTextNode(allowed(words));
        });
        return element;
    }

    /// Escapes what XML 1.0 gives a meaning, and drops what it forbids.
    static String escaped(String words) {
        StringBuilder out = new StringBuilder(words.length());
        allowed(words).codePoints().forEach(c -> {
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                default -> out.appendCodePoint(c);
            }
        });
        return out.toString();
    }

    /// Without the control marks and lone surrogates that XML 1.0 forbids.
    private static String allowed(String words) {
        if (words.codePoints().allMatch(Markup::allowed)) return words;
        StringBuilder out = new StringBuilder(words.length());
        words.codePoints().filter(Markup::allowed).forEach(out::appendCodePoint);
        return out.toString();
    }

    private static boolean allowed(int c) { return c == '\t' || c == '\n' || c == '\r' || c >= 0x20 && c < 0xD800 || c >= 0xE000 && c < 0xFFFE || c >= 0x10000; }
}
