package gudgeon.bench.web.about;

import gg.jte.Content;
import java.util.List;
import java.util.regex.Pattern;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Heading;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;

/** A text that ships with the program, made into a part of a page. Markup in it is shown, never obeyed. */
final class Markdown {
    private static final Parser PARSER = Parser.builder().build();
    private static final HtmlRenderer RENDERER =
            HtmlRenderer.builder().escapeHtml(true).sanitizeUrls(true).build();
    private static final Pattern PAGE = Pattern.compile("([a-z-]+)\\.md");

    private final Node document;

    private Markdown(Node document) {
        this.document = document;
    }

    static Markdown of(String text) {
        Node document = PARSER.parse(text);
        document.accept(new Addresses());
        return new Markdown(document);
    }

    /** The first heading's words, which become the page's title. */
    String title() {
        Node first = document.getFirstChild();
        return first instanceof Heading && first.getFirstChild() instanceof Text words ? words.getLiteral() : "";
    }

    /** All of it but that heading. */
    Content content() {
        Node first = document.getFirstChild();
        if (first instanceof Heading) {
            first.unlink();
        }
        String html = RENDERER.render(document);
        return output -> output.writeContent(html);
    }

    /** Links between files become links between pages; what is not in the program keeps its words and loses its link. */
    private static final class Addresses extends AbstractVisitor {
        private static final List<String> INSIDE = List.of("/", "#");

        @Override
        public void visit(Link link) {
            visitChildren(link);
            var page = PAGE.matcher(link.getDestination());
            if (page.matches()) {
                link.setDestination("/handbook/" + page.group(1));
            } else if (INSIDE.stream().noneMatch(link.getDestination()::startsWith)) {
                while (link.getFirstChild() != null) {
                    link.insertBefore(link.getFirstChild());
                }
                link.unlink();
            }
        }

        @Override
        public void visit(Image image) {
            image.setDestination("/handbook/" + image.getDestination());
        }
    }
}
