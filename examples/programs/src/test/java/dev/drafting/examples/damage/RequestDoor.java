package dev.drafting.examples.damage;

import dev.drafting.export.source.GarmentFolder;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.SocketException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** A request to the drafting service, as bytes on the wire. */
final class RequestDoor implements Door {
  private static final String DRAFTED = "200";
  private static final Set<String> REFUSED = Set.of("400", "404", "405", "411", "413", "501");
  private static final String NO_ANSWER = "";
  private static final int LONGEST_NAME = 20_000;
  private static final int MOST_DOUBLINGS = 24;
  private static final int ANSWER_START = 200;

  private final Map<String, String> files;
  private final int port;

  private RequestDoor(Map<String, String> files, int port) {
    this.files = files;
    this.port = port;
  }

  static RequestDoor of(Path garment, int port) throws IOException {
    Map<String, String> files = new LinkedHashMap<>();
    for (String file : List.of(GarmentFolder.TRACING, GarmentFolder.DESCRIPTION)) {
      files.put(file, Files.readString(garment.resolve(file)));
    }
    return new RequestDoor(files, port);
  }

  @Override
  public String name() {
    return "request";
  }

  @Override
  public byte[] sound() {
    Map<String, byte[]> sent = new LinkedHashMap<>();
    files.forEach((name, text) -> sent.put(name, text.getBytes(StandardCharsets.UTF_8)));
    byte[] zip = zip(sent);
    return joined(head(zip.length).getBytes(StandardCharsets.UTF_8), zip);
  }

  /**
   * A damaged file or name in a sound zip, a file cut short or blown up, a damaged zip in a sound
   * request, or a damaged request.
   */
  @Override
  public byte[] damaged(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Mutations mutations = new Mutations(random.nextLong());
    int which = random.nextInt(5);
    Map<String, byte[]> sent = new LinkedHashMap<>();
    files.forEach(
        (name, text) ->
            sent.put(
                which == 0 ? shortened(mutations.text(name)) : name,
                which == 1 ? mutations.damage(text) : text.getBytes(StandardCharsets.UTF_8)));
    if (which == 4) {
      byte[] small = sent.get(GarmentFolder.TRACING);
      sent.put(GarmentFolder.TRACING, Arrays.copyOf(small, 1 << random.nextInt(MOST_DOUBLINGS)));
    }
    byte[] zip = zip(sent);
    if (which == 2) {
      for (int i = random.nextInt(8); i >= 0; i--) {
        zip[random.nextInt(zip.length)] = (byte) random.nextInt(256);
      }
    }
    byte[] head = head(zip.length).getBytes(StandardCharsets.UTF_8);
    return joined(which == 3 ? mutations.damage(head(zip.length)) : head, zip);
  }

  /** To what a zip can hold. */
  private static String shortened(String name) {
    return name.substring(0, Math.min(name.length(), LONGEST_NAME));
  }

  private static String head(int length) {
    return "POST /draft HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nContent-Length: "
        + length
        + "\r\n\r\n";
  }

  private static byte[] joined(byte[] head, byte[] body) {
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    all.writeBytes(head);
    all.writeBytes(body);
    return all.toByteArray();
  }

  private static byte[] zip(Map<String, byte[]> sent) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, byte[]> file : sent.entrySet()) {
        zip.putNextEntry(new ZipEntry(file.getKey()));
        zip.write(file.getValue());
        zip.closeEntry();
      }
    } catch (IOException e) {
      throw new IllegalStateException("a zip in memory", e);
    }
    return bytes.toByteArray();
  }

  @Override
  public boolean takes(byte[] sent) throws IOException {
    String status = status(sent);
    if (status.equals(NO_ANSWER)) {
      String other = status("GET /draft HTTP/1.0\r\n\r\n".getBytes(StandardCharsets.UTF_8));
      Door.require(other.equals("405"), "the service does not answer any more");
    } else {
      Door.require(status.equals(DRAFTED) || REFUSED.contains(status), "an answer of " + status);
    }
    return status.equals(DRAFTED);
  }

  /** The status of the answer; none if what was sent was no request. */
  private String status(byte[] sent) throws IOException {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
      try {
        socket.getOutputStream().write(sent);
        socket.shutdownOutput();
      } catch (SocketException e) {
        // The service has heard enough; what it says to that is still to be read.
      }
      return status(socket.getInputStream());
    } catch (SocketException e) {
      return NO_ANSWER;
    }
  }

  private static String status(InputStream answer) throws IOException {
    String start = new String(answer.readNBytes(ANSWER_START), StandardCharsets.ISO_8859_1);
    answer.skip(Long.MAX_VALUE);
    String[] words = start.split(" ", 3);
    return words.length > 1 && words[0].startsWith("HTTP/") ? words[1] : NO_ANSWER;
  }
}
