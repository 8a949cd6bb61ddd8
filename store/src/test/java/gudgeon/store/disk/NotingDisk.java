package gudgeon.store.disk;

import java.io.IOException;
import java.lang.reflect.InvocationHandler;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.net.URI;
import java.nio.channels.FileChannel;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.AccessMode;
import java.nio.file.CopyOption;
import java.nio.file.DirectoryStream;
import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.FileAttributeView;
import java.nio.file.spi.FileSystemProvider;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * The real disk, on which it is noted what would be lost with the power: a file's content until the file is forced, and a name, of a file or
 * a folder, until the folder that it stands in is forced.
 */
public final class NotingDisk extends FileSystemProvider {
    private final Path root;
    private final FileSystemProvider real;
    private final FileSystem system;
    private final Set<Path> unforcedNames = new TreeSet<>();
    private final Set<Path> unforcedContents = new TreeSet<>();

    /** Under a real folder, which is there and is taken as forced. */
    public NotingDisk(Path root) {
        this.root = root.toAbsolutePath().normalize();
        this.real = root.getFileSystem().provider();
        this.system = new NotingSystem(root.getFileSystem(), this);
    }

    /** The folder as a path by which everything is noted. */
    public Path folder() {
        return noted(root);
    }

    /** What of a file would be lost if the power went now: its content, its name, or the name of a folder above it. */
    public synchronized List<String> lost(Path file) {
        List<String> lost = new ArrayList<>();
        Path at = plain(file);
        if (unforcedContents.contains(at)) {
            lost.add("content of " + root.relativize(at));
        }
        for (Path above = at; above != null && !above.equals(root); above = above.getParent()) {
            if (unforcedNames.contains(above)) {
                lost.add("name of " + root.relativize(above));
            }
        }
        return lost;
    }

    synchronized void forced(Path path) {
        unforcedContents.remove(path);
        unforcedNames.removeIf(name -> path.equals(name.getParent()));
    }

    private synchronized void named(Path path) {
        unforcedNames.add(path);
    }

    synchronized void written(Path path) {
        unforcedContents.add(path);
    }

    private static boolean isReal(Path path) {
        return !Proxy.isProxyClass(path.getClass());
    }

    private static Path real(Path path) {
        return isReal(path) ? path : ((NotedPath) Proxy.getInvocationHandler(path)).path();
    }

    /** The one name under which it is noted. */
    private static Path plain(Path path) {
        return real(path).toAbsolutePath().normalize();
    }

    private Path noted(Path path) {
        return (Path) Proxy.newProxyInstance(
                NotingDisk.class.getClassLoader(), new Class<?>[] {Path.class}, new NotedPath(path, this));
    }

    /** What is asked of a path goes to the real one; paths that come of it are noted as well. */
    private record NotedPath(Path path, NotingDisk disk) implements InvocationHandler {
        @Override
        public @Nullable Object invoke(Object proxy, Method method, Object @Nullable [] arguments) throws Throwable {
            if (method.getName().equals("getFileSystem")) {
                return disk.system;
            }
            Object[] plain = arguments == null ? new Object[0] : arguments.clone();
            for (int i = 0; i < plain.length; i++) {
                plain[i] = plain[i] instanceof Path other ? real(other) : plain[i];
            }
            try {
                Object answer = method.invoke(path, plain);
                return answer instanceof Path other ? disk.noted(other) : answer;
            } catch (InvocationTargetException thrown) {
                throw thrown.getCause();
            }
        }
    }

    private boolean opensForWriting(Path path, Set<? extends OpenOption> options) throws IOException {
        boolean makes = options.contains(StandardOpenOption.CREATE) || options.contains(StandardOpenOption.CREATE_NEW);
        if (makes && !path.toFile().exists()) {
            named(path);
            written(path);
        }
        return options.contains(StandardOpenOption.WRITE) || options.contains(StandardOpenOption.APPEND);
    }

    @Override
    public FileChannel newFileChannel(Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
            throws IOException {
        Path plain = plain(path);
        opensForWriting(plain, options);
        return new NotingChannel(real.newFileChannel(plain, options, attributes), plain, this);
    }

    @Override
    public SeekableByteChannel newByteChannel(
            Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes) throws IOException {
        Path plain = plain(path);
        if (opensForWriting(plain, options)) {
            written(plain);
        }
        return real.newByteChannel(plain, options, attributes);
    }

    @Override
    public DirectoryStream<Path> newDirectoryStream(Path folder, DirectoryStream.Filter<? super Path> filter)
            throws IOException {
        return real.newDirectoryStream(real(folder), filter);
    }

    @Override
    public void createDirectory(Path folder, FileAttribute<?>... attributes) throws IOException {
        real.createDirectory(real(folder), attributes);
        named(plain(folder));
    }

    @Override
    public void delete(Path path) throws IOException {
        real.delete(real(path));
        forget(plain(path));
    }

    private synchronized void forget(Path path) {
        unforcedContents.remove(path);
        unforcedNames.remove(path);
    }

    @Override
    public void copy(Path from, Path to, CopyOption... options) throws IOException {
        real.copy(real(from), real(to), options);
        named(plain(to));
        written(plain(to));
    }

    @Override
    public synchronized void move(Path from, Path to, CopyOption... options) throws IOException {
        real.move(real(from), real(to), options);
        boolean unforced = unforcedContents.contains(plain(from));
        forget(plain(from));
        forget(plain(to));
        named(plain(to));
        if (unforced) {
            written(plain(to));
        }
    }

    @Override
    public String getScheme() {
        return real.getScheme();
    }

    @Override
    public FileSystem newFileSystem(URI address, Map<String, ?> settings) {
        throw new UnsupportedOperationException();
    }

    @Override
    public FileSystem getFileSystem(URI address) {
        return system;
    }

    @Override
    public Path getPath(URI address) {
        return noted(real.getPath(address));
    }

    Path path(Path path) {
        return noted(path);
    }

    @Override
    public boolean isSameFile(Path one, Path other) throws IOException {
        return real.isSameFile(real(one), real(other));
    }

    @Override
    public boolean isHidden(Path path) throws IOException {
        return real.isHidden(real(path));
    }

    @Override
    public FileStore getFileStore(Path path) throws IOException {
        return real.getFileStore(real(path));
    }

    @Override
    public void checkAccess(Path path, AccessMode... modes) throws IOException {
        real.checkAccess(real(path), modes);
    }

    @Override
    public <V extends FileAttributeView> @Nullable V getFileAttributeView(
            Path path, Class<V> type, LinkOption... options) {
        return real.getFileAttributeView(real(path), type, options);
    }

    @Override
    public <A extends BasicFileAttributes> A readAttributes(Path path, Class<A> type, LinkOption... options)
            throws IOException {
        return real.readAttributes(real(path), type, options);
    }

    @Override
    public Map<String, Object> readAttributes(Path path, String attributes, LinkOption... options) throws IOException {
        return real.readAttributes(real(path), attributes, options);
    }

    @Override
    public void setAttribute(Path path, String attribute, Object value, LinkOption... options) throws IOException {
        real.setAttribute(real(path), attribute, value, options);
    }
}
