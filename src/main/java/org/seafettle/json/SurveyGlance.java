package org.seafettle.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import org.seafettle.problem.Refused;

/**
 * A quick look at a survey that nobody has checked yet: how it is called, and a fingerprint of all
 * that its report would be made from. Judges nothing; where something cannot be read it says less.
 */
public final class SurveyGlance {

  private static final JsonMapper MAPPER = new JsonMapper();
  private static final String ABSENT = "absent";

  private SurveyGlance() {}

  /**
   * What a report is called by.
   *
   * @param date as the survey writes it
   * @param boat her name
   * @param id of the survey
   * @param purpose as the survey writes it
   */
  public record Title(String date, String boat, String id, String purpose) {}

  /**
   * What a report would be made from.
   *
   * @param sha256 of survey, photographs and earlier surveys, in hexadecimal
   * @param bytes of all photographs and earlier reports together
   * @param largest bytes of the largest photograph
   */
  public record Inputs(String sha256, long bytes, long largest) {}

  /** Empty where the survey cannot be read or does not say all of it. */
  public static Optional<Title> title(Path survey) {
    try {
      var root = parsed(SurveyReader.open(survey).survey());
      var occasion = root.path("survey");
      var title =
          new Title(
              occasion.path("date").asText(),
              root.path("boat").path("name").asText(),
              occasion.path("id").asText(),
              occasion.path("purpose").asText());
      return title.date().isEmpty() || title.purpose().isEmpty()
          ? Optional.empty()
          : Optional.of(title);
    } catch (Refused unreadable) {
      return Optional.empty();
    }
  }

  /** Reads one file after the other, so that no more than one photograph is held. */
  public static Inputs inputs(Path survey) {
    var sum = new Sum();
    try {
      sum.add(SurveyReader.open(survey));
    } catch (Refused unreadable) {
      sum.add(ABSENT);
    }
    return new Inputs(HexFormat.of().formatHex(sum.digest.digest()), sum.bytes, sum.largest);
  }

  private static JsonNode parsed(byte[] json) {
    try {
      var root = MAPPER.readTree(json);
      return root == null ? MAPPER.missingNode() : root;
    } catch (IOException noJson) {
      return MAPPER.missingNode();
    }
  }

  /** A digest on its way, each piece with its length before it. */
  private static final class Sum {

    private final MessageDigest digest;
    private long bytes;
    private long largest;

    Sum() {
      try {
        digest = MessageDigest.getInstance("SHA-256");
      } catch (NoSuchAlgorithmException e) {
        throw new IllegalStateException(e); // every Java has it
      }
    }

    void add(SurveyFolder folder) {
      add(folder.fileName());
      var root = survey(folder);
      for (var photo : root.path("photos")) {
        photograph(folder, photo.path("file").asText());
      }
      for (var earlier : root.path("earlier")) {
        earlier(folder, earlier.asText());
      }
    }

    private JsonNode survey(SurveyFolder folder) {
      var json = folder.survey();
      add(json);
      return parsed(json);
    }

    private void photograph(SurveyFolder folder, String file) {
      add(file);
      if (FilePaths.wrongWithin(file).isPresent() || folder.missing(file).isPresent()) {
        add(ABSENT);
        return;
      }
      try {
        var picture = folder.read(file);
        add(picture);
        bytes += picture.length;
        largest = Math.max(largest, picture.length);
      } catch (Refused unreadable) {
        add(ABSENT);
      }
    }

    /** Of an earlier survey only the file is used, not its photographs. */
    private void earlier(SurveyFolder folder, String path) {
      add(path);
      if (FilePaths.wrong(path).isPresent()) {
        return;
      }
      try {
        if (EarlierSurveys.isReport(path)) {
          var report = EarlierSurveys.report(folder, path).orElse(new byte[0]);
          add(report);
          bytes += report.length;
          return;
        }
        EarlierSurveys.survey(folder, path).ifPresentOrElse(this::survey, () -> add(ABSENT));
      } catch (Refused unreadable) {
        add(ABSENT);
      }
    }

    private void add(String text) {
      add(text.getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }

    private void add(byte[] piece) {
      digest.update(java.nio.ByteBuffer.allocate(Integer.BYTES).putInt(0, piece.length));
      digest.update(piece);
    }
  }
}
