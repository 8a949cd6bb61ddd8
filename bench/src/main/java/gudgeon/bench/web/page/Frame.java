package gudgeon.bench.web.page;

import java.util.UUID;

/**
 * What every page of a build shows around its content.
 *
 * @param id the build's id
 * @param name the build's name
 * @param here which page it is
 * @param seen number of the last entry this page knows
 * @param hasFigures whether a fit can be tried
 */
public record Frame(String id, String name, Tab here, long seen, boolean hasFigures) {
    /** The build's address. */
    public String address() {
        return "/builds/" + id;
    }

    /** The address of one of its pages. */
    public String address(Tab tab) {
        return address() + tab.path();
    }

    /** This page's own address. */
    public String self() {
        return address(here);
    }

    /** Where its entries are sent. */
    public String entries() {
        return address() + "/entries";
    }

    /** A key for a new entry, so that sending it twice does no harm. */
    public String newKey() {
        return UUID.randomUUID().toString();
    }
}
