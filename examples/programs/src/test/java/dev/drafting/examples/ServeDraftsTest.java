package dev.drafting.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class ServeDraftsTest {
  private final ByteArrayOutputStream said = new ByteArrayOutputStream();
  private final ByteArrayOutputStream complained = new ByteArrayOutputStream();

  private int run(String... args) {
    return ServeDrafts.run(
        args,
        new PrintStream(said, true, StandardCharsets.UTF_8),
        new PrintStream(complained, true, StandardCharsets.UTF_8));
  }

  @Test
  void saysWhereItListensAndStops() throws InterruptedException {
    int[] code = {-1};
    Thread serving = new Thread(() -> code[0] = run("--port", "0"));
    serving.start();
    while (said.size() == 0 && serving.isAlive()) {
      Thread.sleep(5);
    }
    serving.interrupt();
    serving.join();
    assertEquals(0, code[0], complained.toString(StandardCharsets.UTF_8));
    assertTrue(
        said.toString(StandardCharsets.UTF_8)
            .matches(
                "(?s)Send a garment folder as a zip to http://127.0.0.1:\\d+/draft\\s+Stopped.\\s+"));
  }

  @Test
  void badOptionsEndWithTwo() throws Exception {
    assertEquals(2, run("--port", "70000"));
    assertEquals(2, run("--seconds", "0"));
    try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      assertEquals(2, run("--port", String.valueOf(taken.getLocalPort())));
    }
    String words = complained.toString(StandardCharsets.UTF_8);
    assertTrue(words.startsWith("the port is out of bounds. Found: 70000. Accepted: a number"));
    assertTrue(words.contains("the port cannot be had. Found: "), words);
  }
}
