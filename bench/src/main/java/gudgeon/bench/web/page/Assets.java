package gudgeon.bench.web.page;

/**
 * Where the style sheets, scripts and pictures of the pages are. The address is another one after each start, so a browser may keep
 * what it has for good, and asks a slow network once and not at every page, yet never shows what an older program had there.
 */
public final class Assets {
    /** The folder of them all. */
    public static final String FOLDER = "/assets/" + Long.toString(System.currentTimeMillis(), Character.MAX_RADIX);

    /** How long a browser may keep one. */
    public static final String KEPT = "private,max-age=31536000,immutable";

    private Assets() {}

    /** Address of one, such as "page.css". */
    public static String at(String file) {
        return FOLDER + "/" + file;
    }
}
