package dev.drafting.export.pdf;

import dev.drafting.export.drawing.Element;
import dev.drafting.export.drawing.Stroke;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;

/** The layers of a file, which a reader may switch off: one for each kind of line, one of words. */
final class Layers {
  private static final String WORDS = "words";

  private final PDOptionalContentProperties properties = new PDOptionalContentProperties();
  private final Map<String, PDOptionalContentGroup> groups = new LinkedHashMap<>();

  Layers(PDDocument document) {
    document.setVersion(1.6f);
    document.getDocumentCatalog().setOCProperties(properties);
  }

  /** The name of the layer that an element lies on. */
  static String name(Element element) {
    return element instanceof Stroke stroke ? stroke.style().toString() : WORDS;
  }

  PDOptionalContentGroup get(String name) {
    return groups.computeIfAbsent(
        name,
        wanted -> {
          PDOptionalContentGroup group = new PDOptionalContentGroup(wanted);
          properties.addGroup(group);
          return group;
        });
  }
}
