package sillwright.page;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.CRC32;

import sillwright.sheet.Markup;

/// A part of a page that is shown anew when what it shows has changed, and is left alone otherwise.
final class Part {
    /// Tags that are counted differ from those of a server that was begun another time.
    private static final String BEGUN = Long.toHexString(System.nanoTime()) + "-";
    private static final AtomicLong COUNTED = new AtomicLong();

    private final String id, tag;
    private Optional<Supplier<String>> writes;
    private String html = "";

    private Part(String id, String tag, Supplier<String> writes) {
        this.id = id;
        this.tag = tag;
        this.writes = Optional.of(writes);
    }

    static Part of(String id, Object... inside) { return of("part", id, inside); }

    /// A part that follows a change only once the whole road is walked: until then the page says so beside it.
    static Part later(String id, Object... inside) { return of("part later", id, inside); }

    /// A part that takes a while to draw, and is drawn once somebody wants to see it: whoever makes it keeps it for as long as it would show the same.
    static Part drawn(String id, Supplier<List<Markup>> inside) { return new Part(id, BEGUN + COUNTED.incrementAndGet(), () -> html("part", id, inside.get())); }

    private static Part of(String look, String id, Object[] inside) {
        String html = html(look, id, List.of(inside));
        CRC32 sum = new CRC32();
        sum.update(html.getBytes(StandardCharsets.UTF_8));
        return new Part(id, Long.toHexString(sum.getValue()) + Integer.toHexString(html.length()), () -> html);
    }

    private static String html(String look, String id, List<?> inside) { return Html.text(id, Markup.of("section", inside).with("class", look).with("id", id), 2); }

    /// The same whenever the page is asked for.
    String id() { return id; }

    /// Changes whenever what is shown does.
    String tag() { return tag; }

    synchronized String html() {
        writes.ifPresent(write -> html = write.get());
        writes = Optional.empty();
        return html;
    }

    private static final Pattern DRAWN = Pattern.compile("(<div class=\"sheet\" tabindex=\"0\")><svg .*?</svg></div>", Pattern.DOTALL);

    private static final Pattern FORMS = Pattern.compile("(<details data-forms=\"[^\"]*\")(>\\s*<summary>.*?</summary>).*?</details>", Pattern.DOTALL);

    /// The part without the forms of its readings, of which a building has hundreds: a list of them is asked for when it is opened.
    String closed() { return FORMS.matcher(tagged()).replaceAll("$1 data-later=\"\"$2</details>"); }

    /// The same without its drawings, which are most of its weight: the page asks for them when they come near the window.
    String light() {
        String bare = DRAWN.matcher(closed()).replaceAll("$1 data-later=\"\"><p class=\"small\">The drawing comes when it is scrolled to.</p></div>");
        return bare.contains("tabindex=\"0\" data-later=") ? "<section data-light=\"\"" + bare.substring("<section".length()) : bare;
    }

    private static final Pattern HEAD = Pattern.compile("<h2[^>]*>([^<]*)</h2>");

    /// The heading that it begins with, where it has one of its own.
    Optional<String> head() {
        Matcher head = HEAD.matcher(html());
        return head.find() ? Optional.of(head.group(1).replace("&quot;", "\"").replace("&lt;", "<").replace("&gt;", ">").replace("&amp;", "&")) : Optional.empty();
    }

    /// The part with its tag on it, as a page holds it.
    String tagged() { return "<section data-tag=\"" + tag + "\"" + html().substring("<section".length()); }
}
