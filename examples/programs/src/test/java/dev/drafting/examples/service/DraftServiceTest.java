package dev.drafting.examples.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.InetAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The service as another program sees it: over HTTP. */
class DraftServiceTest {
  private static final Path VEST = Path.of("garments", "vest");

  private final HttpClient client = HttpClient.newHttpClient();
  private DraftService service;

  @BeforeEach
  void start() throws IOException {
    service = DraftService.start(0, Duration.ofSeconds(60));
  }

  @AfterEach
  void stop() {
    service.close();
  }

  private static Map<String, byte[]> vest() throws IOException {
    Map<String, byte[]> files = new LinkedHashMap<>();
    for (String file : List.of("tracing.csv", "garment.json")) {
      files.put(file, Files.readAllBytes(VEST.resolve(file)));
    }
    return files;
  }

  private static byte[] zip(Map<String, byte[]> files) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        zip.putNextEntry(new ZipEntry(file.getKey()));
        zip.write(file.getValue());
        zip.closeEntry();
      }
    }
    return bytes.toByteArray();
  }

  private HttpRequest request(byte[] body) {
    String host = InetAddress.getLoopbackAddress().getHostAddress();
    return HttpRequest.newBuilder(URI.create("http://" + host + ":" + service.port() + "/draft"))
        .POST(BodyPublishers.ofByteArray(body))
        .build();
  }

  private HttpResponse<String> post(byte[] body) throws Exception {
    return client.send(request(body), BodyHandlers.ofString(StandardCharsets.UTF_8));
  }

  private static long leftBehind() throws IOException {
    try (Stream<Path> all = Files.list(Path.of(System.getProperty("java.io.tmpdir")))) {
      return all.filter(path -> String.valueOf(path.getFileName()).startsWith("garment-")).count();
    }
  }

  @Test
  void aGarmentIsDrafted() throws Exception {
    long before = leftBehind();
    HttpResponse<String> answer = post(zip(vest()));
    assertEquals(200, answer.statusCode(), answer.body());
    assertTrue(answer.body().contains("\"make\":\"B interlock\""));
    assertTrue(answer.body().contains("\"severity\":\"PROBLEM\""), "the pique vest has a problem");
    assertEquals(3, answer.body().split("<svg", -1).length - 1);
    assertEquals(3, answer.body().split("\\\\\"sha256\\\\\"", -1).length - 1);
    assertEquals(before, leftBehind());
  }

  @Test
  void whatCannotBeDraftedIsRefusedInWords() throws Exception {
    Map<String, byte[]> files = vest();
    String json = new String(files.get("garment.json"), StandardCharsets.UTF_8);
    files.put(
        "garment.json", json.replace("front side", "front elbow").getBytes(StandardCharsets.UTF_8));
    HttpResponse<String> answer = post(zip(files));
    assertEquals(400, answer.statusCode());
    assertTrue(answer.body().contains("garment.json, line") && answer.body().contains("elbow"));
    assertFalse(answer.body().contains("Exception"), answer.body());
  }

  @Test
  void aZipCannotReachOutsideOrGrow() throws Exception {
    Map<String, byte[]> files = vest();
    files.put("../outside.txt", new byte[1]);
    assertEquals(400, post(zip(files)).statusCode());
    Map<String, byte[]> bomb = vest();
    bomb.put("tracing.csv", new byte[50_000_000]);
    HttpResponse<String> answer = post(zip(bomb));
    assertEquals(400, answer.statusCode());
    assertTrue(answer.body().contains("4,000,000 bytes at most"), answer.body());
    assertEquals(413, post(new byte[1_000_001]).statusCode());
    assertEquals(400, post(new byte[0]).statusCode());
  }

  @Test
  void otherPlacesAndMethodsAreRefused() throws Exception {
    HttpRequest get = HttpRequest.newBuilder(request(new byte[0]).uri()).GET().build();
    assertEquals(405, client.send(get, BodyHandlers.ofString()).statusCode());
    URI elsewhere = request(new byte[0]).uri().resolve("/etc/passwd");
    HttpRequest other = HttpRequest.newBuilder(elsewhere).GET().build();
    assertEquals(404, client.send(other, BodyHandlers.ofString()).statusCode());
  }

  @Test
  void whatTakesTooLongIsGivenUp() throws Exception {
    service.close();
    service = DraftService.start(0, Duration.ofMillis(1));
    HttpResponse<String> answer = post(zip(vest()));
    assertEquals(504, answer.statusCode(), answer.body());
  }

  @Test
  void manyAtOnceGetTheSameAnswer() throws Exception {
    byte[] body = zip(vest());
    String alone = post(body).body();
    List<CompletableFuture<HttpResponse<String>>> all = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      all.add(client.sendAsync(request(body), BodyHandlers.ofString(StandardCharsets.UTF_8)));
    }
    for (CompletableFuture<HttpResponse<String>> one : all) {
      assertEquals(200, one.get().statusCode());
      assertEquals(alone, one.get().body());
    }
  }

  /** Seeded damage of the zip itself: always an answer, never a failure. */
  @Test
  void damagedZipsAreRefused() throws Exception {
    byte[] whole = zip(vest());
    for (int seed = 0; seed < 200; seed++) {
      Random random = new Random(seed);
      byte[] damaged =
          java.util.Arrays.copyOf(
              whole, random.nextInt(4) == 0 ? random.nextInt(whole.length) : whole.length);
      for (int i = 0; i < 1 + random.nextInt(4) && damaged.length > 0; i++) {
        damaged[random.nextInt(damaged.length)] = (byte) random.nextInt(256);
      }
      HttpResponse<String> answer = post(damaged);
      assertTrue(
          answer.statusCode() == 200 || answer.statusCode() == 400,
          "seed " + seed + ": " + answer.body());
    }
  }
}
