package org.seafettle.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.charset.StandardCharsets;

/** Writes JSON with an indent of two, the same on every system. */
final class PrettyJson {

  private static final DefaultIndenter INDENT = new DefaultIndenter("  ", "\n");

  private static final ObjectWriter WRITER =
      JsonMapper.builder()
          .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
          .build()
          .writer(
              new DefaultPrettyPrinter(
                      Separators.createDefaultInstance()
                          .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
                          .withObjectEmptySeparator("")
                          .withArrayEmptySeparator(""))
                  .withObjectIndenter(INDENT)
                  .withArrayIndenter(INDENT));

  private PrettyJson() {}

  /** As a file: UTF-8, with a line end. */
  static byte[] file(JsonNode node) {
    return (write(node) + "\n").getBytes(StandardCharsets.UTF_8);
  }

  static String write(JsonNode node) {
    try {
      return WRITER.writeValueAsString(node);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }
}
