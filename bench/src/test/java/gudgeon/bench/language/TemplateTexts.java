package gudgeon.bench.language;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.jsoup.parser.Parser;

/** Finds in a template what a person may read: texts between its tags and spoken attributes, and literals in its expressions. */
final class TemplateTexts {
    private static final String BREAK = "\u0002";
    private static final Pattern SPOKEN =
            Pattern.compile("(?:aria-label|aria-valuetext|title|alt|placeholder|data-warning)=\"([^\"]*)\"");
    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");
    private static final List<String> WORDS = List.of("elseif", "else", "endif", "endfor", "endraw", "raw");

    private final String template;
    private final StringBuilder page = new StringBuilder();
    private final List<String> code = new ArrayList<>();

    private TemplateTexts(String template) {
        this.template = template.replaceAll("(?s)<%--.*?--%>", "");
    }

    static Set<String> of(String template) {
        TemplateTexts texts = new TemplateTexts(template);
        texts.takeApart();
        return texts.found();
    }

    /** Parts the page from the code in it; an expression leaves a blank, anything else a break. */
    private void takeApart() {
        int at = 0;
        while (at < template.length()) {
            if (template.startsWith("${", at) || template.startsWith("!{", at)) {
                int end = closing(at + 1, '{', '}');
                code.add(template.substring(at + 2, end));
                page.append(TextForm.BLANK);
                at = end + 1;
            } else if (template.charAt(at) == '@' && Character.isLetter(template.charAt(at + 1))) {
                at = directive(at);
            } else {
                page.append(template.charAt(at) == '`' ? BREAK : template.charAt(at));
                at++;
            }
        }
    }

    /** Where the page goes on after a directive. */
    private int directive(int at) {
        int name = at + 1;
        String word = WORDS.stream()
                .filter(one -> template.startsWith(one, name))
                .findFirst()
                .orElseGet(() -> template.substring(name).split("[^\\w.]", 2)[0]);
        int end = name + word.length();
        if (word.equals("import") || word.equals("param")) {
            int line = template.indexOf('\n', end);
            code.add(word.equals("param") ? template.substring(end, line) : "");
            return line;
        }
        page.append(word.startsWith("template") ? TextForm.BLANK : BREAK);
        if (template.charAt(end) != '(') {
            return end;
        }
        int close = closing(end, '(', ')');
        String inside = template.substring(end + 1, close);
        int content = inside.indexOf("@`");
        code.add(content < 0 ? inside : inside.substring(0, content));
        return content < 0 ? close + 1 : end + 1 + content + 2;
    }

    private int closing(int open, char begins, char ends) {
        int depth = 0;
        boolean quoted = false;
        for (int at = open; at < template.length(); at++) {
            char one = template.charAt(at);
            if (one == '"' && template.charAt(at - 1) != '\\') {
                quoted = !quoted;
            } else if (!quoted && one == begins) {
                depth++;
            } else if (!quoted && one == ends && --depth == 0) {
                return at;
            }
        }
        throw new IllegalArgumentException("nothing closes " + template.substring(open));
    }

    private Set<String> found() {
        Set<String> found = new LinkedHashSet<>();
        String shown = page.toString().replaceAll("(?s)<(script|style|code|textarea)\\b.*?</\\1>", BREAK);
        SPOKEN.matcher(shown).results().forEach(attribute -> take(attribute.group(1), found));
        for (String text : shown.replaceAll("<[^<>]*>", BREAK).split(BREAK, -1)) {
            take(text, found);
        }
        for (String expression : code) {
            LITERAL.matcher(expression)
                    .results()
                    .map(literal -> literal.group(1))
                    .forEach(literal -> {
                        if (TextForm.isForPeople(TextForm.of(literal), false)) {
                            found.add(TextForm.of(literal));
                        }
                    });
        }
        return found;
    }

    private static void take(String raw, Set<String> found) {
        String text = TextForm.of(Parser.unescapeEntities(raw, false));
        boolean style = text.matches(".*\\{ [a-z-]+: [^}]*}.*");
        if (!style
                && Letters.words(Phrase.BLANK.matcher(text).replaceAll(" "))
                        .findAny()
                        .isPresent()) {
            found.add(text);
        }
    }
}
