/** Backups: copies of the database by day and week, and those asked for. */
@NullMarked
package gudgeon.store.backup;

import org.jspecify.annotations.NullMarked;
