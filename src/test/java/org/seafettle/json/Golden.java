package org.seafettle.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Files that a test compares with, and that {@code -Dseafettle.rebaseline=true} writes anew. */
final class Golden {

  private static final String PROPERTY = "seafettle.rebaseline";

  private Golden() {}

  /** Compares with a file among the resources of this package's tests. */
  static void hold(String name, String text) {
    hold(Path.of("src/test/resources/org/seafettle/json", name), text);
  }

  static void hold(Path file, String text) {
    try {
      if (Boolean.getBoolean(PROPERTY)) {
        Files.writeString(file, text);
      }
      assertThat(Files.exists(file) ? Files.readString(file) : "")
          .as(
              "%s is not up to date. If the change is meant, write it anew:"
                  + " mvn test -Dtest='SurveySchemaTest,AssessmentWriterTest,SurveyFaultsTest' -D%s=true",
              file, PROPERTY)
          .isEqualTo(text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
