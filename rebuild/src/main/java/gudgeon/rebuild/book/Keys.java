package gudgeon.rebuild.book;

import gudgeon.rebuild.book.Form.Value;

/** The keys that many blocks hold. */
final class Keys {
    static final String NOTE = "Anything worth remembering about it.";

    private Keys() {}

    static Form.Key size(String name, Unit unit, double low, double high, String label, String description) {
        return new Form.Key(name, new Value.OfSize(unit, low, high), true, label, description);
    }

    static Form.Key optional(String name, Unit unit, double low, double high, String label, String description) {
        return new Form.Key(name, new Value.OfSize(unit, low, high), false, label, description);
    }

    static Form.Key id(String of) {
        return new Form.Key(
                "id",
                new Value.OfText(),
                true,
                "id",
                "A name of your own for this " + of + ", of letters, digits and hyphens.");
    }

    static Form.Key note() {
        return new Form.Key("note", new Value.OfText(), false, "note", NOTE);
    }
}
