package gudgeon.store.shelf;

/** The shelf can't do it; the message is one sentence or more for the person: what, where, what to do. */
public final class ShelfFault extends RuntimeException {
    public ShelfFault(String sentences) {
        super(sentences);
    }

    public ShelfFault(String sentences, Throwable cause) {
        super(sentences, cause);
    }

    @Override
    public String getMessage() {
        return String.valueOf(super.getMessage());
    }
}
