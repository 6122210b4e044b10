package dev.drafting.export.folder;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.locks.ReentrantLock;

/**
 * Keeps others from moving files into a folder at the same time: threads of this process by a lock
 * of its own, other processes by the lock of a hidden file, which is removed afterwards. The lock
 * of a process that ends is gone with it.
 */
final class FolderLock implements AutoCloseable {
  private static final String FILE = ".drafting.lock";
  private static final int MOST_BYTES = 1 << 16;
  private static final ReentrantLock THREADS = new ReentrantLock();

  private final Path file;
  private final FileChannel channel;

  private FolderLock(Path file, FileChannel channel) {
    this.file = file;
    this.channel = channel;
  }

  /** Waits until nobody else holds the lock. */
  static FolderLock of(Path folder) throws IOException {
    THREADS.lock();
    try {
      Path file = folder.resolve(FILE);
      FileChannel channel = locked(file);
      while (!isStillThere(file, channel)) {
        channel.close();
        channel = locked(file);
      }
      return new FolderLock(file, channel);
    } catch (IOException | RuntimeException e) {
      THREADS.unlock();
      throw e;
    }
  }

  /** Closing the channel gives the lock back. */
  @SuppressWarnings("resource")
  private static FileChannel locked(Path file) throws IOException {
    FileChannel channel =
        FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    try {
      channel.lock();
      return channel;
    } catch (IOException | RuntimeException e) {
      channel.close();
      throw e;
    }
  }

  /**
   * Whoever held the lock before has removed the file; then the lock is one of no file. The size
   * tells whose file it is: to open it once more and close it would give the lock back.
   */
  private static boolean isStillThere(Path file, FileChannel channel) throws IOException {
    long mine = ProcessHandle.current().pid() % MOST_BYTES + 1;
    channel.truncate(0);
    channel.write(ByteBuffer.wrap(new byte[1]), mine - 1);
    try {
      return Files.size(file) == mine;
    } catch (NoSuchFileException e) {
      return false;
    }
  }

  @Override
  public void close() throws IOException {
    try (channel) {
      Files.deleteIfExists(file);
    } finally {
      THREADS.unlock();
    }
  }
}
