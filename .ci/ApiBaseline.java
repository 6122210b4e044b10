import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/**
 * Takes from a jar what its users can see, the public classes: java .ci/ApiBaseline.java JAR BASELINE. The same jar
 * gives the same bytes.
 */
class ApiBaseline {
  private static final int PUBLIC = 0x0001;

  public static void main(String[] args) throws IOException {
    Map<String, byte[]> seen = new TreeMap<>();
    try (ZipFile jar = new ZipFile(args[0])) {
      for (ZipEntry entry : jar.stream().toList()) {
        byte[] bytes = jar.getInputStream(entry).readAllBytes();
        if (entry.getName().endsWith(".class") && isPublic(bytes)) {
          seen.put(entry.getName(), bytes);
        }
      }
    }
    Path baseline = Path.of(args[1]);
    Files.createDirectories(baseline.toAbsolutePath().getParent());
    try (OutputStream file = Files.newOutputStream(baseline);
        ZipOutputStream zip = new ZipOutputStream(file)) {
      zip.setLevel(9);
      for (Map.Entry<String, byte[]> one : seen.entrySet()) {
        ZipEntry entry = new ZipEntry(one.getKey());
        entry.setLastModifiedTime(FileTime.from(Instant.parse("2026-01-01T00:00:00Z")));
        zip.putNextEntry(entry);
        zip.write(one.getValue());
      }
    }
    System.out.println(seen.size() + " public classes in " + baseline + ", " + Files.size(baseline) / 1000 + " kB");
  }

  /** The access flags of a class file stand after its constants (JVM specification, chapter 4). */
  private static boolean isPublic(byte[] bytes) throws IOException {
    DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes));
    in.readNBytes(8);
    int constants = in.readUnsignedShort();
    for (int i = 1; i < constants; i++) {
      int tag = in.readUnsignedByte();
      int size =
          switch (tag) {
            case 1 -> in.readUnsignedShort();
            case 7, 8, 16, 19, 20 -> 2;
            case 15 -> 3;
            case 5, 6 -> 8;
            default -> 4;
          };
      in.readNBytes(size);
      i += tag == 5 || tag == 6 ? 1 : 0;
    }
    return (in.readUnsignedShort() & PUBLIC) != 0;
  }
}
