package linkwright.files;

/** A file's name, as the user knows it, and what is in it before it is read. */
public final class DataFile {
  private final String name;
  private final byte[] bytes;

  /** Keeps the bytes as they are: whoever hands them over lets go of them. */
  DataFile(String name, byte[] bytes) {
    this.name = name;
    this.bytes = bytes;
  }

  /** The file, as problems name it. */
  public String name() {
    return name;
  }

  /** What stands in it. */
  public byte[] bytes() {
    return bytes;
  }
}
