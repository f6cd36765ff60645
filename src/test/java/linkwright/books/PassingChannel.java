package linkwright.books;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.MappedByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.ReadableByteChannel;
import java.nio.channels.WritableByteChannel;

/** A file channel that passes everything on to another; tests change what they need. */
class PassingChannel extends FileChannel {
  private final FileChannel inner;

  PassingChannel(FileChannel inner) {
    this.inner = inner;
  }

  @Override
  public int read(ByteBuffer bytes) throws IOException {
    return inner.read(bytes);
  }

  @Override
  public long read(ByteBuffer[] bytes, int offset, int length) throws IOException {
    return inner.read(bytes, offset, length);
  }

  @Override
  public int write(ByteBuffer bytes) throws IOException {
    return inner.write(bytes);
  }

  @Override
  public long write(ByteBuffer[] bytes, int offset, int length) throws IOException {
    return inner.write(bytes, offset, length);
  }

  @Override
  public long position() throws IOException {
    return inner.position();
  }

  @Override
  public FileChannel position(long position) throws IOException {
    return inner.position(position);
  }

  @Override
  public long size() throws IOException {
    return inner.size();
  }

  @Override
  public FileChannel truncate(long size) throws IOException {
    return inner.truncate(size);
  }

  @Override
  public void force(boolean metaData) throws IOException {
    inner.force(metaData);
  }

  @Override
  public long transferTo(long position, long count, WritableByteChannel to) throws IOException {
    return inner.transferTo(position, count, to);
  }

  @Override
  public long transferFrom(ReadableByteChannel from, long position, long count) throws IOException {
    return inner.transferFrom(from, position, count);
  }

  @Override
  public int read(ByteBuffer bytes, long position) throws IOException {
    return inner.read(bytes, position);
  }

  @Override
  public int write(ByteBuffer bytes, long position) throws IOException {
    return inner.write(bytes, position);
  }

  @Override
  public MappedByteBuffer map(MapMode mode, long position, long size) throws IOException {
    return inner.map(mode, position, size);
  }

  @Override
  public FileLock lock(long position, long size, boolean shared) throws IOException {
    return inner.lock(position, size, shared);
  }

  @Override
  public FileLock tryLock(long position, long size, boolean shared) throws IOException {
    return inner.tryLock(position, size, shared);
  }

  @Override
  protected void implCloseChannel() throws IOException {
    inner.close();
  }
}
