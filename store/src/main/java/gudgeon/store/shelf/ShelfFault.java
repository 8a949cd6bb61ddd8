package gudgeon.store.shelf;

/** The shelf can't do it; the message is one sentence or more for the person: what, where, what to do. */
public sealed class ShelfFault extends RuntimeException permits FolderInUse, NewerTables {
    public ShelfFault(String sentences) {
        super(sentences);
    }

    public ShelfFault(String sentences, Throwable cause) {
        super(sentences, cause);
    }

    @Override
    public final String getMessage() {
        return String.valueOf(super.getMessage());
    }
}
