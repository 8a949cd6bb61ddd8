package gudgeon.bench.language;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.DataNode;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.Node;
import org.jsoup.nodes.TextNode;
import org.jsoup.parser.Parser;
import org.jsoup.select.NodeTraversor;
import org.jspecify.annotations.Nullable;

/** Pages, sheets and sentences as a reader of one language gets them. */
public final class Localization {
    /** As the program writes them. */
    public static final Localization ENGLISH = new Localization(Language.ENGLISH, Optional.empty());

    /** What a screen reader says of an element, and what a field shows while it is empty. */
    private static final List<String> SPOKEN = List.of(
            "aria-label",
            "aria-valuetext",
            "aria-description",
            "title",
            "alt",
            "placeholder",
            "data-warning",
            "data-head");
    /** Elements whose text is for a machine or the person's own. */
    private static final Set<String> MACHINE = Set.of("script", "style", "code", "pre", "textarea", "kbd", "samp");

    private static final Pattern CONTENT = Pattern.compile("content:[^;}]*");
    private static final Pattern QUOTED = Pattern.compile("\"([^\"]*)\"");

    private final Language language;
    private final Optional<Translator> translator;
    private final String scriptWords;

    private Localization(Language language, Optional<Translator> translator) {
        this.language = language;
        this.translator = translator;
        scriptWords = PhraseBook.of(language).map(Localization::scriptWords).orElse("");
    }

    private static String scriptWords(PhraseBook book) {
        Map<String, String> words = new LinkedHashMap<>();
        ScriptPhrases.all()
                .forEach(phrase -> words.put(phrase, book.template(phrase).orElse(phrase)));
        try {
            // no "<" may stand in it, or it could end the element that it stands in
            return new ObjectMapper().writeValueAsString(words).replace("<", "\\u003c");
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("words can't be written", impossible);
        }
    }

    /**
     * The localization in a language.
     *
     * @param names texts that are not the program's to translate, such as the names in an engine book; it may grow
     */
    public static Localization in(Language language, Set<String> names) {
        return new Localization(language, PhraseBook.of(language).map(book -> new Translator(book, names)));
    }

    /** Its language. */
    public Language language() {
        return language;
    }

    /** A sentence of the program in this language. */
    public String text(String english) {
        return translator.map(one -> one.of(english)).orElse(english);
    }

    /** A page, which is HTML, in this language; it brings along what its scripts say. */
    public String page(String html) {
        return translator
                .map(one -> {
                    Document document = Jsoup.parse(html);
                    document.head()
                            .appendElement("script")
                            .attr("type", "application/json")
                            .attr("id", "words")
                            .appendChild(new DataNode(scriptWords));
                    return translated(document, one);
                })
                .orElse(html);
    }

    /** A part of a page's body in this language. */
    public String part(String html) {
        return translator
                .map(one -> {
                    Document document = Jsoup.parseBodyFragment(html);
                    translate(document, one);
                    return document.body().html();
                })
                .orElse(html);
    }

    /** A sheet for paper, which is well-formed XHTML, in this language. */
    public String sheet(String xhtml) {
        return translator
                .map(one -> translated(Jsoup.parse(xhtml, "", Parser.xmlParser()), one))
                .orElse(xhtml);
    }

    private static void translate(Document document, Translator by) {
        document.outputSettings().prettyPrint(false);
        NodeTraversor.traverse((node, depth) -> translate(node, by::of), document);
    }

    private String translated(Document document, Translator by) {
        translate(document, by);
        document.select("style").forEach(style -> translateStyle(style, by));
        Element root = document.selectFirst("html");
        if (root != null) {
            root.attr("lang", language.tag());
        }
        return document.outerHtml();
    }

    private static void translate(Node node, UnaryOperator<String> by) {
        if (node instanceof TextNode text && !isOthers(text.parent())) {
            text.text(by.apply(text.getWholeText()));
        } else if (node instanceof Element element && !isOthers(element)) {
            // what is sent of a choice without a value of its own is its text, which is the program's to read, not the
            // reader's
            if (element.normalName().equals("option") && !element.hasAttr("value")) {
                element.attr("value", element.text());
            }
            for (String spoken : SPOKEN) {
                if (element.hasAttr(spoken)) {
                    element.attr(spoken, by.apply(element.attr(spoken)));
                }
            }
        }
    }

    /** What a page says to eyes and ears, piece by piece as it is translated. */
    static List<String> spoken(Document page) {
        List<String> all = new ArrayList<>();
        NodeTraversor.traverse(
                (node, depth) -> translate(node, text -> {
                    all.add(text);
                    return text;
                }),
                page);
        return all;
    }

    /** What a style sheet puts on paper by itself, such as the line at the foot of each sheet. */
    private static void translateStyle(Element style, Translator by) {
        String sheet = CONTENT.matcher(style.wholeText().isEmpty() ? style.data() : style.wholeText())
                .replaceAll(content -> Matcher.quoteReplacement(QUOTED.matcher(content.group())
                        .replaceAll(quoted -> Matcher.quoteReplacement('"' + by.of(quoted.group(1)) + '"'))));
        style.empty();
        style.appendChild(isXml(style) ? new TextNode(sheet) : new DataNode(sheet));
    }

    private static boolean isXml(Element element) {
        Document document = element.ownerDocument();
        return document != null && document.outputSettings().syntax() == Document.OutputSettings.Syntax.xml;
    }

    /** Whether it is not the program's own: marked so as HTML has it, or for a machine. */
    private static boolean isOthers(@Nullable Node node) {
        for (Node at = node; at instanceof Element element; at = at.parent()) {
            if (MACHINE.contains(element.normalName())
                    || element.attr("translate").equals("no")) {
                return true;
            }
        }
        return false;
    }
}
