package gudgeon.store.shelf;

import java.net.URI;
import java.nio.file.Path;
import java.util.Optional;

/** Another process holds the data folder. */
public final class FolderInUse extends ShelfFault {
    private final Optional<URI> address;

    FolderInUse(Path folder, Optional<URI> address) {
        super("The data folder " + folder + " is in use by another Gudgeon"
                + address.map(at -> ", which shows it at " + at).orElse("")
                + ". Stop that one first, or name another folder with --data.");
        this.address = address;
    }

    /** Where that one shows the builds; empty if it does not. */
    public Optional<URI> address() {
        return address;
    }
}
