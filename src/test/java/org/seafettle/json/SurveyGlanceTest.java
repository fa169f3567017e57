package org.seafettle.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SurveyGlanceTest {

  @TempDir Path folder;
  private Path survey;

  @BeforeEach
  void a_survey_with_a_photograph_and_an_earlier_one() throws IOException {
    survey = Files.createDirectories(folder.resolve("2026"));
    Files.createDirectories(folder.resolve("2025"));
    Files.writeString(
        survey.resolve("survey.json"),
        """
        {"survey": {"id": "7", "date": "2026-10-17", "purpose": "season-end"},
         "boat": {"name": "Sedge"}, "photos": [{"file": "p.jpg"}],
         "earlier": ["../2025/survey.json"]}
        """);
    Files.writeString(survey.resolve("p.jpg"), "a picture");
    Files.writeString(folder.resolve("2025/survey.json"), "{}");
  }

  private String digest() {
    return SurveyGlance.inputs(survey).sha256();
  }

  @Test
  void whatever_a_report_is_made_from_changes_the_fingerprint() throws IOException {
    for (var file : new String[] {"survey.json", "p.jpg", "../2025/survey.json"}) {
      var before = digest();
      Files.writeString(survey.resolve(file), Files.readString(survey.resolve(file)) + " ");
      assertThat(digest()).as(file).isNotEqualTo(before);
    }
    var before = digest();
    Files.delete(survey.resolve("p.jpg"));
    assertThat(digest()).isNotEqualTo(before);
  }

  @Test
  void what_no_report_is_made_from_changes_nothing() throws IOException {
    var before = digest();
    Files.writeString(survey.resolve("notes.txt"), "call Ida");
    Files.setLastModifiedTime(
        survey.resolve("p.jpg"), java.nio.file.attribute.FileTime.fromMillis(0));
    assertThat(digest()).isEqualTo(before);
  }

  @Test
  void it_tells_how_large_the_photographs_are() {
    assertThat(SurveyGlance.inputs(survey).bytes()).isEqualTo(9);
    assertThat(SurveyGlance.inputs(survey).largest()).isEqualTo(9);
  }

  @Test
  void an_earlier_report_takes_memory_and_changes_the_fingerprint() throws IOException {
    var json = Files.readString(survey.resolve("survey.json"));
    Files.writeString(survey.resolve("survey.json"), json.replace("2025/survey.json", "2025.pdf"));
    var absent = digest();
    Files.writeString(folder.resolve("2025.pdf"), "a report");
    var before = digest();
    assertThat(before).isNotEqualTo(absent);
    assertThat(SurveyGlance.inputs(survey).bytes()).isEqualTo(9 + 8);
    Files.writeString(folder.resolve("2025.pdf"), "a letter");
    assertThat(digest()).isNotEqualTo(before);
  }

  @Test
  void an_archive_is_looked_into_as_a_folder_is() throws IOException {
    var zip = folder.resolve("sedge.zip");
    try (var out = new ZipOutputStream(Files.newOutputStream(zip))) {
      for (var file : new String[] {"survey.json", "p.jpg"}) {
        out.putNextEntry(new ZipEntry(file));
        out.write(Files.readAllBytes(survey.resolve(file)));
      }
    }
    assertThat(SurveyGlance.title(zip))
        .contains(new SurveyGlance.Title("2026-10-17", "Sedge", "7", "season-end"));
    assertThat(SurveyGlance.inputs(zip).bytes()).isEqualTo(9);
  }

  @Test
  void of_a_broken_survey_it_says_nothing_and_refuses_nothing() throws IOException {
    Files.writeString(survey.resolve("survey.json"), "{ \"survey\": ");
    assertThat(SurveyGlance.title(survey)).isEmpty();
    assertThat(digest()).isNotEqualTo(SurveyGlance.inputs(folder.resolve("nowhere")).sha256());
  }
}
