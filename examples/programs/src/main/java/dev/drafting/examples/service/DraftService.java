package dev.drafting.examples.service;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import dev.drafting.core.finding.DraftingException;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * Drafts garments for other programs over HTTP, on this machine alone. {@code POST /draft} takes a
 * garment folder as a zip and answers with JSON: for each make its findings, its drawing and the
 * draft as it is kept.
 *
 * <p>Whatever is sent, the answer is JSON: 400 with what, where, value and accepted where the
 * garment cannot be drafted, 413 where too much was sent, 503 while too many wait, 504 where it
 * took too long. As many garments are drafted at a time as there are workers; all they share is the
 * library, whose values are safe to share.
 */
public final class DraftService implements AutoCloseable {
  private static final int LARGEST_ZIP = 1_000_000;
  private static final int WORKERS = 2;
  private static final int MOST_WAITING = 16;
  private static final int LISTENERS = WORKERS + MOST_WAITING;

  private final HttpServer server;
  private final ThreadPoolExecutor listeners = pool(LISTENERS, LISTENERS);
  private final ThreadPoolExecutor workers = pool(WORKERS, MOST_WAITING);
  private final Duration longest;

  private DraftService(HttpServer server, Duration longest) {
    this.server = server;
    this.longest = longest;
  }

  /**
   * Starts the service.
   *
   * @param port where it listens; 0 for any that is free
   * @param longest how long one garment may take
   * @return the running service
   * @throws IOException if the port is taken
   */
  public static DraftService start(int port, Duration longest) throws IOException {
    HttpServer server =
        HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), port), 0);
    DraftService service = new DraftService(server, longest);
    server.setExecutor(service.listeners);
    server.createContext("/", service::answer);
    server.start();
    return service;
  }

  private static ThreadPoolExecutor pool(int threads, int waiting) {
    return new ThreadPoolExecutor(
        threads, threads, 0, TimeUnit.SECONDS, new ArrayBlockingQueue<>(waiting));
  }

  /**
   * Where it listens.
   *
   * @return the port
   */
  public int port() {
    return server.getAddress().getPort();
  }

  @Override
  public void close() {
    server.stop(0);
    listeners.shutdownNow();
    workers.shutdownNow();
  }

  private void answer(HttpExchange exchange) throws IOException {
    try (exchange) {
      Answer answer = answerTo(exchange);
      exchange.getResponseHeaders().set("Content-Type", "application/json; charset=utf-8");
      byte[] body = answer.json().getBytes(StandardCharsets.UTF_8);
      exchange.sendResponseHeaders(answer.status(), body.length);
      exchange.getResponseBody().write(body);
    }
  }

  private Answer answerTo(HttpExchange exchange) throws IOException {
    if (!exchange.getRequestURI().getPath().equals("/draft")) {
      return Answer.saying(Answer.NOT_THERE, "there is nothing here", "POST /draft");
    }
    if (!exchange.getRequestMethod().equals("POST")) {
      return Answer.saying(Answer.OTHER_METHOD, "a garment is sent by POST", "POST /draft");
    }
    byte[] zip = exchange.getRequestBody().readNBytes(LARGEST_ZIP + 1);
    if (zip.length > LARGEST_ZIP) {
      return Answer.saying(
          Answer.TOO_LARGE, "the zip is too large", LARGEST_ZIP + " bytes at most");
    }
    return draft(zip);
  }

  private Answer draft(byte[] zip) throws IOException {
    Future<Answer> drafting;
    try {
      drafting =
          workers.submit(() -> Answer.drafted(ZippedGarment.read(new ByteArrayInputStream(zip))));
    } catch (RejectedExecutionException e) {
      return Answer.saying(Answer.BUSY, "too many garments are waiting", "try again later");
    }
    try {
      return drafting.get(longest.toMillis(), TimeUnit.MILLISECONDS);
    } catch (TimeoutException e) {
      return Answer.saying(
          Answer.TOO_LONG, "drafting took too long", longest.toSeconds() + " s at most");
    } catch (ExecutionException e) {
      return e.getCause() instanceof DraftingException refusal
          ? Answer.refused(refusal)
          : Answer.saying(Answer.FAILED, "the service failed and should not have", "nothing");
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Answer.saying(Answer.BUSY, "the service is closing", "try again later");
    } finally {
      drafting.cancel(true);
    }
  }
}
