package dev.drafting.examples.service;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Remedy;
import dev.drafting.export.drawing.DraftDrawing;
import dev.drafting.export.source.Garment;
import dev.drafting.export.store.StoredDraft;
import dev.drafting.export.svg.SvgFormat;
import dev.drafting.knit.Draft;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/**
 * What the service says: a status of HTTP and a JSON object.
 *
 * @param status of HTTP
 * @param json the object
 */
record Answer(int status, String json) {
  static final int DRAFTED = 200;
  static final int REFUSED = 400;
  static final int NOT_THERE = 404;
  static final int OTHER_METHOD = 405;
  static final int TOO_LARGE = 413;
  static final int FAILED = 500;
  static final int BUSY = 503;
  static final int TOO_LONG = 504;

  private static final JsonFactory JSON = new JsonFactory();

  /** Writes the fields of the one object. */
  private interface Fields {
    void write(JsonGenerator json) throws IOException;
  }

  private static Answer of(int status, Fields fields) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (JsonGenerator json = JSON.createGenerator(bytes)) {
      json.writeStartObject();
      fields.write(json);
      json.writeEndObject();
    }
    return new Answer(status, bytes.toString(StandardCharsets.UTF_8));
  }

  /** All makes of a garment, each with its findings, its drawing and the draft as it is kept. */
  static Answer drafted(Garment garment) throws IOException {
    return of(
        DRAFTED,
        json -> {
          json.writeStringField("name", garment.name());
          json.writeArrayFieldStart("makes");
          for (Map.Entry<String, Draft> make : garment.makes().entrySet()) {
            json.writeStartObject();
            json.writeStringField("make", make.getKey());
            json.writeArrayFieldStart("findings");
            for (Finding finding : make.getValue().findings()) {
              finding(json, finding);
            }
            json.writeEndArray();
            json.writeStringField("svg", svg(make.getValue()));
            json.writeStringField("stored", stored(garment, make.getValue()));
            json.writeEndObject();
          }
          json.writeEndArray();
        });
  }

  private static void finding(JsonGenerator json, Finding finding) throws IOException {
    json.writeStartObject();
    json.writeStringField("severity", finding.severity().toString());
    json.writeStringField("id", finding.id());
    json.writeStringField("place", finding.place().toString());
    json.writeStringField("reason", finding.reason());
    json.writeArrayFieldStart("remedies");
    for (Remedy remedy : finding.remedies()) {
      json.writeString(remedy.text());
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static String stored(Garment garment, Draft draft) {
    return StoredDraft.of(draft).withTracings(garment.tracings()).toJson();
  }

  private static String svg(Draft draft) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    SvgFormat.of().write(DraftDrawing.withLegend(DraftDrawing.of(draft)), bytes);
    return bytes.toString(StandardCharsets.UTF_8);
  }

  /** What cannot be drafted, and why. */
  static Answer refused(DraftingException refusal) throws IOException {
    return of(
        REFUSED,
        json -> {
          json.writeStringField("what", refusal.what());
          json.writeStringField("where", refusal.where());
          json.writeStringField("value", refusal.value());
          json.writeStringField("accepted", refusal.accepted());
        });
  }

  /** Anything else that went wrong, in words. */
  static Answer saying(int status, String what, String accepted) throws IOException {
    return of(
        status,
        json -> {
          json.writeStringField("what", what);
          json.writeStringField("accepted", accepted);
        });
  }
}
