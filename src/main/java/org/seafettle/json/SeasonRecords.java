package org.seafettle.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.deser.std.StdScalarDeserializer;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.ToStringSerializer;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.seafettle.yard.Entry;
import org.seafettle.yard.Faulty;
import org.seafettle.yard.Kept;
import org.seafettle.yard.Surveyed;

/** What a season keeps between runs, as JSON. It is read by this program alone. */
public final class SeasonRecords {

  private static final String FORMAT = "seafettle-season-record/1";

  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
          .addModule(
              new SimpleModule()
                  .addSerializer(LocalDate.class, ToStringSerializer.instance)
                  .addDeserializer(LocalDate.class, new Day()))
          .build();

  private SeasonRecords() {}

  private static final class Day extends StdScalarDeserializer<LocalDate> {

    private static final long serialVersionUID = 1L;

    Day() {
      super(LocalDate.class);
    }

    @Override
    public LocalDate deserialize(JsonParser parser, DeserializationContext context)
        throws IOException {
      return LocalDate.parse(parser.getText());
    }
  }

  public static byte[] write(Kept kept) {
    var entry =
        MAPPER
            .createObjectNode()
            .put("format", FORMAT)
            .put("inputs", kept.inputs())
            .put("report", kept.report());
    entry.set(kind(kept.entry()), MAPPER.valueToTree(kept.entry()));
    return PrettyJson.file(entry);
  }

  private static String kind(Entry entry) {
    return entry instanceof Surveyed ? "surveyed" : "faulty";
  }

  /** Empty where it was cut short, changed by hand, or written by another version. */
  public static Optional<Kept> read(byte[] json) {
    try {
      var root = MAPPER.readTree(json);
      if (root == null || !root.path("format").asText().equals(FORMAT)) {
        return Optional.empty();
      }
      var inputs = root.path("inputs").asText();
      var report = root.path("report").asText();
      return entry(root).map(entry -> new Kept(inputs, report, entry));
    } catch (IOException | DateTimeException e) {
      return Optional.empty();
    }
  }

  private static Optional<Entry> entry(JsonNode root) throws IOException {
    if (root.has("surveyed")) {
      return Optional.of(MAPPER.treeToValue(root.get("surveyed"), Surveyed.class));
    }
    return root.has("faulty")
        ? Optional.of(MAPPER.treeToValue(root.get("faulty"), Faulty.class))
        : Optional.empty();
  }

  /** The names of all surveys of a season. */
  public static byte[] writeNames(List<String> names) {
    return PrettyJson.file(MAPPER.valueToTree(names));
  }

  /** Empty where it is no such list. */
  public static Optional<List<String>> readNames(byte[] json) {
    try {
      return Optional.ofNullable(MAPPER.readValue(json, new TypeReference<List<String>>() {}));
    } catch (IOException e) {
      return Optional.empty();
    }
  }
}
