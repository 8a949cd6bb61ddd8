package gudgeon.store.disk;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.MappedByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.ReadableByteChannel;
import java.nio.channels.WritableByteChannel;
import java.nio.file.Path;

/** A channel that notes when something was written, and when it was forced. */
final class NotingChannel extends FileChannel {
    private final FileChannel real;
    private final Path path;
    private final NotingDisk disk;

    NotingChannel(FileChannel real, Path path, NotingDisk disk) {
        this.real = real;
        this.path = path;
        this.disk = disk;
    }

    @Override
    public void force(boolean metadata) throws IOException {
        real.force(metadata);
        disk.forced(path);
    }

    @Override
    public int write(ByteBuffer from) throws IOException {
        disk.written(path);
        return real.write(from);
    }

    @Override
    public long write(ByteBuffer[] from, int offset, int length) throws IOException {
        disk.written(path);
        return real.write(from, offset, length);
    }

    @Override
    public int write(ByteBuffer from, long position) throws IOException {
        disk.written(path);
        return real.write(from, position);
    }

    @Override
    public long transferFrom(ReadableByteChannel from, long position, long count) throws IOException {
        disk.written(path);
        return real.transferFrom(from, position, count);
    }

    @Override
    public FileChannel truncate(long size) throws IOException {
        disk.written(path);
        real.truncate(size);
        return this;
    }

    @Override
    public MappedByteBuffer map(MapMode mode, long position, long size) {
        throw new UnsupportedOperationException("what is written through a map would not be noted");
    }

    @Override
    public int read(ByteBuffer into) throws IOException {
        return real.read(into);
    }

    @Override
    public long read(ByteBuffer[] into, int offset, int length) throws IOException {
        return real.read(into, offset, length);
    }

    @Override
    public int read(ByteBuffer into, long position) throws IOException {
        return real.read(into, position);
    }

    @Override
    public long position() throws IOException {
        return real.position();
    }

    @Override
    public FileChannel position(long position) throws IOException {
        real.position(position);
        return this;
    }

    @Override
    public long size() throws IOException {
        return real.size();
    }

    @Override
    public long transferTo(long position, long count, WritableByteChannel into) throws IOException {
        return real.transferTo(position, count, into);
    }

    @Override
    public FileLock lock(long position, long size, boolean shared) throws IOException {
        return real.lock(position, size, shared);
    }

    @Override
    public FileLock tryLock(long position, long size, boolean shared) throws IOException {
        return real.tryLock(position, size, shared);
    }

    @Override
    protected void implCloseChannel() throws IOException {
        real.close();
    }
}
