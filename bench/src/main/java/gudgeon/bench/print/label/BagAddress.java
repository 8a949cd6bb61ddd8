package gudgeon.bench.print.label;

import gudgeon.rebuild.bag.Bag;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;

/**
 * What the codes on labels hold: with the bench's address that of the bag's page, else the bag's own words.
 *
 * @param bench where the pages are, without a slash at its end; empty if a phone has no way to them
 * @param build the build's id on the shelf; empty for one that files tell
 * @param name what a person calls the build
 */
public record BagAddress(String bench, String build, String name) {
    /** Where to ask for the pages, or why that can't be an address. */
    public sealed interface Asked {
        /** An address, or empty. */
        record Usable(String bench) implements Asked {}

        /** Why not, as a sentence. */
        record Refused(String sentence) implements Asked {}
    }

    /** Reads an address that a person typed; an empty one is usable and means none. */
    public static Asked typed(String address) {
        String stripped = address.strip().replaceAll("/+$", "");
        try {
            URI uri = new URI(stripped);
            String scheme = Optional.ofNullable(uri.getScheme()).orElse("").toLowerCase(Locale.ROOT);
            boolean web = scheme.equals("http") || scheme.equals("https");
            boolean bare = uri.getRawQuery() == null && uri.getRawFragment() == null;
            if (stripped.isEmpty() || (web && bare && uri.getHost() != null)) {
                return new Asked.Usable(stripped);
            }
        } catch (URISyntaxException notOne) {
            // said below
        }
        return new Asked.Refused("'" + stripped + "' is no address of a bench; give it as a phone's browser would,"
                + " such as http://192.168.1.20:8080, or leave it out.");
    }

    /** Where the page of a bag is, below the bench's address. */
    public static String path(String build, Bag bag) {
        String encoded = URLEncoder.encode(bag.name(), StandardCharsets.UTF_8).replace("+", "%20");
        return "/builds/" + build
                + (bag.name().isEmpty()
                        ? "/engine/" + bag.holds().get(0).position().id()
                        : "/bag?of=" + encoded);
    }

    /** What the code of a bag holds. */
    String text(Bag bag) {
        return opensPages() ? bench + path(build, bag) : bag.title() + ", " + name;
    }

    /** Whether a phone that reads a code opens a page. */
    public boolean opensPages() {
        return !bench.isEmpty() && !build.isEmpty();
    }

    /** What the codes do, for whoever reads the print. */
    public String sentence() {
        if (!opensPages()) {
            return "The codes hold only the name of bag and build: "
                    + (bench.isEmpty()
                            ? "no address was given at which a phone reaches the bench."
                            : "a build that is not on the shelf has no pages.");
        }
        String host = Optional.ofNullable(URI.create(bench).getHost()).orElse("");
        boolean here = host.equals("localhost") || host.startsWith("127.") || host.equals("[::1]");
        return "The codes open the bags' pages at " + bench
                + (here ? ", which only the computer that Gudgeon runs on can reach; a phone can't." : ".");
    }
}
