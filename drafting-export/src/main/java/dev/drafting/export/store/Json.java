package dev.drafting.export.store;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * How values stand in a stored file: lengths as texts with their unit, angles in radians, constants
 * as their words, points and curves as numbers in millimetres.
 */
final class Json {
  static final int LARGEST_BYTES = 25_000_000;
  static final int DEEPEST = 24;
  static final int LONGEST_TEXT = 10_000;

  static final JsonFactory FACTORY =
      new JsonFactoryBuilder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER)
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(DEEPEST)
                  .maxStringLength(LONGEST_TEXT)
                  .maxNameLength(200)
                  .maxNumberLength(40)
                  .maxDocumentLength(LARGEST_BYTES)
                  .build())
          .build();

  private Json() {}

  /** Names and values in turn; what is null is left out. */
  static Map<String, Object> fields(@Nullable Object... pairs) {
    Map<String, Object> fields = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      Object value = pairs[i + 1];
      if (value != null) {
        fields.put(String.valueOf(pairs[i]), value);
      }
    }
    return fields;
  }

  /** A constant as it is written: {@code ON_FOLD} as "on fold". */
  static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  static byte[] bytes(Map<String, Object> fields) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (JsonGenerator out = FACTORY.createGenerator(bytes)) {
      DefaultIndenter lines = new DefaultIndenter("  ", "\n");
      out.setPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(lines));
      write(fields, out);
    } catch (IOException e) {
      throw new UncheckedIOException(e); // never, in memory
    }
    return bytes.toByteArray();
  }

  private static void write(Object value, JsonGenerator out) throws IOException {
    if (value instanceof Map<?, ?> fields) {
      out.writeStartObject();
      for (Map.Entry<?, ?> field : fields.entrySet()) {
        out.writeFieldName(String.valueOf(field.getKey()));
        write(field.getValue(), out);
      }
      out.writeEndObject();
    } else if (value instanceof List<?> list) {
      out.writeStartArray();
      for (Object item : list) {
        write(item, out);
      }
      out.writeEndArray();
    } else {
      writePlain(value, out);
    }
  }

  private static void writePlain(Object value, JsonGenerator out) throws IOException {
    if (value instanceof double[] numbers) {
      out.writeArray(numbers, 0, numbers.length);
    } else if (value instanceof Double number) {
      out.writeNumber(number);
    } else if (value instanceof Integer number) {
      out.writeNumber(number);
    } else if (value instanceof Boolean truth) {
      out.writeBoolean(truth);
    } else if (value instanceof Angle angle) {
      out.writeNumber(angle.toRadians());
    } else if (value instanceof Enum<?> constant) {
      out.writeString(word(constant));
    } else if (value instanceof String || value instanceof Length) {
      out.writeString(value.toString());
    } else {
      throw new IllegalArgumentException("not to be stored: " + value.getClass());
    }
  }
}
