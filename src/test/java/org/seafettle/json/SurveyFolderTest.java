package org.seafettle.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.seafettle.assessment.Printed.PrintedGrade;
import org.seafettle.problem.Problem;
import org.seafettle.problem.Refused;

class SurveyFolderTest {

  private static final byte[] PICTURE = {1, 2, 3};

  private final SurveyReader reader =
      new SurveyReader(Surveys.CATALOGUE, c -> true, SurveyFolderTest::enclosed);

  @TempDir private Path temp;
  private Path folder;

  @BeforeEach
  void pack() throws IOException {
    folder = Files.createDirectories(temp.resolve("2026"));
    Files.createDirectories(folder.resolve("photos"));
    Files.write(folder.resolve("photos/p1.jpg"), PICTURE);
    write(Surveys.GOOD);
  }

  @Test
  void a_file_and_its_folder_are_the_same_survey() {
    var byFile = reader.read(folder.resolve("survey.json"));
    var byFolder = reader.read(folder);
    assertThat(byFile.survey()).isEqualTo(byFolder.survey());
    assertThat(byFolder.json()).isEqualTo(Surveys.GOOD.getBytes(StandardCharsets.UTF_8));
    assertThat(photographs(folder)).containsExactly(PICTURE);
    assertThat(byFolder.remarks()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"''", "2026/"})
  void an_archive_of_the_folder_is_the_same_survey(String top) throws IOException {
    var zip = zip(Map.of(top + "survey.json", bytes(Surveys.GOOD), top + "photos/p1.jpg", PICTURE));
    var source = reader.read(zip);
    assertThat(source.survey()).isEqualTo(reader.read(folder).survey());
    assertThat(photographs(zip)).containsExactly(PICTURE);
  }

  private List<byte[]> photographs(Path path) {
    var photographs = new ArrayList<byte[]>();
    reader.read(path, (file, bytes, place) -> photographs.add(bytes));
    return photographs;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          photos/P1.jpg      | There is no file "photos/P1.jpg" in the survey's folder. | Write "photos/p1.jpg"; capital and small letters matter.
          p1.jpg             | There is no file "p1.jpg" in the survey's folder. | Did you mean "photos/p1.jpg"?
          photos/p11.jpg     | There is no file "photos/p11.jpg" in the survey's folder. | Did you mean "photos/p1.jpg"?
          pictures/other.png | There is no file "pictures/other.png" in the survey's folder. | Put it there, or correct the path.
          photos\\\\p1.jpg   | "photos\\p1.jpg" has a backslash in it. | Write / between folders: "photos/p1.jpg".
          ../p1.jpg          | "../p1.jpg" leaves the survey's folder. | Put the file into the survey's folder.
          photos/../../p.jpg | "photos/../../p.jpg" leaves the survey's folder. | Put the file into the survey's folder.
          /srv/p1.jpg        | "/srv/p1.jpg" starts at the root of a disk. | Write the path from the survey's folder on.
          C:/p1.jpg          | "C:/p1.jpg" starts at the root of a disk. | Write the path from the survey's folder on.
          https://a.b/p1.jpg | "https://a.b/p1.jpg" is an address, and nothing is fetched from the net. | Put the file into the survey's folder.
          photos//p1.jpg     | "photos//p1.jpg" has a part without a name. | Write it such as "photos/p1.jpg".
          """)
  void a_photograph_that_is_not_there_is_told(String path, String fault, String remedy)
      throws IOException {
    var json = Surveys.with("photos/p1.jpg", path);
    write(json);
    var expected = "survey.json: photos[0].file, line 61\n  " + fault + "\n  " + remedy;
    assertThat(refused(folder)).extracting(Problem::toString).containsExactly(expected);
    var zip = zip(Map.of("survey.json", bytes(json), "photos/p1.jpg", PICTURE));
    assertThat(refused(zip))
        .extracting(Problem::toString)
        .containsExactly("survey.zip/" + expected);
  }

  @Test
  void a_folder_is_no_photograph() throws IOException {
    write(Surveys.with("photos/p1.jpg", "photos"));
    assertThat(refused(folder))
        .singleElement()
        .extracting(Problem::fault)
        .isEqualTo("\"photos\" is no file.");
  }

  @Test
  void a_link_out_of_the_folder_is_refused() throws IOException {
    var secret = Files.write(temp.resolve("secret.jpg"), PICTURE);
    Files.createSymbolicLink(folder.resolve("photos/link.jpg"), secret);
    write(Surveys.with("photos/p1.jpg", "photos/link.jpg"));
    assertThat(refused(folder))
        .singleElement()
        .extracting(Problem::fault)
        .isEqualTo("\"photos/link.jpg\" is a link that leads out of the survey's folder.");
  }

  @Test
  void a_folder_without_a_survey_is_refused() throws IOException {
    Files.delete(folder.resolve("survey.json"));
    assertThat(refused(folder))
        .singleElement()
        .hasToString(
            "2026\n  There is no survey.json in this folder.\n"
                + "  Name the folder that holds one, or the file itself.");
    assertThat(refused(temp.resolve("nowhere.json")))
        .singleElement()
        .extracting(Problem::fault)
        .isEqualTo("There is no such file.");
  }

  @ParameterizedTest
  @CsvSource({"../evil.jpg", "/evil.jpg", "photos/../../evil.jpg", "photos\\evil.jpg", "C:/evil"})
  void an_archive_that_reaches_out_of_its_folder_is_refused(String name) throws IOException {
    assertThat(refused(zip(Map.of("survey.json", bytes(Surveys.GOOD), name, PICTURE))))
        .singleElement()
        .hasToString(
            "survey.zip\n  The archive has an entry that leaves its folder or is misnamed: \""
                + name
                + "\".\n  Pack the folder anew, with paths that start at the folder.");
  }

  @Test
  void an_archive_with_two_entries_of_one_name_is_refused() throws IOException {
    var zip = zip(Map.of("survey.json", bytes(Surveys.GOOD), "survey.jsom", PICTURE));
    var twice = Files.readAllBytes(zip);
    replace(twice, "survey.jsom", "survey.json");
    Files.write(zip, twice);
    assertThat(refused(zip))
        .extracting(Problem::fault)
        .containsExactly("The archive has two entries \"survey.json\".");
  }

  @Test
  void an_encrypted_archive_is_refused() throws IOException {
    var zip = zip(Map.of("survey.json", bytes(Surveys.GOOD)));
    var encrypted = Files.readAllBytes(zip);
    for (int i = 0; i < encrypted.length - 9; i++) {
      if (encrypted[i] == 'P' && encrypted[i + 1] == 'K' && encrypted[i + 2] == 1) {
        encrypted[i + 8] |= 1;
      }
    }
    Files.write(zip, encrypted);
    assertThat(refused(zip))
        .extracting(Problem::fault)
        .containsExactly("The archive is encrypted.");
  }

  @Test
  void an_archive_that_swells_is_refused() throws IOException {
    var zip = zip(Map.of("survey.json", new byte[JsonText.MOST_BYTES + 1]));
    assertThat(Files.size(zip)).isLessThan(100_000);
    assertThat(refused(zip))
        .extracting(Problem::fault)
        .containsExactly("The file is longer than 10 MB.");
  }

  @Test
  void an_archive_of_very_many_files_is_refused() throws IOException {
    var entries = new TreeMap<String, byte[]>();
    for (int i = 0; i <= 10_000; i++) {
      entries.put("f" + i, new byte[0]);
    }
    assertThat(refused(zip(entries)))
        .extracting(Problem::fault)
        .containsExactly("The archive has 10001 entries.");
  }

  @Test
  void an_archive_that_is_none_is_refused() throws IOException {
    var zip = Files.write(temp.resolve("none.zip"), bytes(Surveys.GOOD));
    assertThat(refused(zip))
        .extracting(Problem::fault)
        .containsExactly("The file is no .zip archive, or damaged.");
  }

  @Test
  void an_archive_of_no_survey_or_of_two_is_refused() throws IOException {
    assertThat(refused(zip(Map.of("photos/p1.jpg", PICTURE))))
        .extracting(Problem::fault)
        .containsExactly("There is no survey.json in the archive.");
    var two = new TreeMap<>(Map.of("a/survey.json", PICTURE, "b/survey.json", PICTURE));
    assertThat(refused(zip(two)))
        .extracting(Problem::fault)
        .containsExactly("The archive holds 2 surveys: a/survey.json, b/survey.json.");
  }

  @Test
  void an_earlier_survey_is_read_from_the_folder_beside() throws IOException {
    earlier("2025", "\"2026-10-17\"", "\"2025-10-11\"");
    write(Surveys.with("\"earlier\": []", "\"earlier\": [\"../2025/survey.json\"]"));
    var source = reader.read(folder);
    assertThat(source.earlier())
        .singleElement()
        .satisfies(e -> assertThat(e.survey().occasion().date()).hasToString("2025-10-11"));
  }

  @Test
  void an_archive_finds_the_earlier_survey_beside_it_and_within_it() throws IOException {
    earlier("2025", "\"2026-10-17\"", "\"2025-10-11\"");
    var old = bytes(Surveys.with("\"2026-10-17\"", "\"2025-10-11\""));
    var json =
        Surveys.with("\"earlier\": []", "\"earlier\": [\"../2025/survey.json\", \"earlier/2025\"]");
    var zip =
        zip(
            Map.of(
                "survey.json", bytes(json),
                "photos/p1.jpg", PICTURE,
                "earlier/2025/survey.json", old,
                "earlier/2025/photos/p1.jpg", PICTURE));
    assertThat(reader.read(zip).earlier()).hasSize(2);
  }

  /** Stands for a report: its files follow one another. */
  private static Map<String, byte[]> enclosed(String name, byte[] report) {
    var text = new String(report, StandardCharsets.UTF_8).split("%PDF", -1);
    return switch (text.length) {
      case 2 -> Map.of("survey.json", bytes(text[1]));
      case 3 -> Map.of("survey.json", bytes(text[1]), "assessment.json", bytes(text[2]));
      default -> Map.of();
    };
  }

  /** Last year's report beside this year's survey, with a passage of its assessment changed. */
  private void report(String survey, String passage, String other) throws IOException {
    try (var in = getClass().getResourceAsStream("good-assessment.json")) {
      var assessment = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      assertThat(assessment).contains(passage);
      Files.writeString(
          folder.resolve("2025.pdf"),
          "%PDF" + survey + "%PDF" + assessment.replace(passage, other));
    }
    write(Surveys.with("\"earlier\": []", "\"earlier\": [\"2025.pdf\"]"));
  }

  private static String lastYear() {
    return Surveys.with("\"2026-10-17\"", "\"2025-10-11\"");
  }

  @Test
  void an_earlier_report_tells_what_it_printed_and_by_which_rules() throws IOException {
    report(lastYear(), "2026-10-17", "2025-10-11");
    var printed = reader.read(folder).earlier().get(0).printed().orElseThrow();
    assertThat(List.of(printed.survey(), printed.day().toString(), printed.program()))
        .containsExactly("QH-2026-041", "2025-10-11", "1.0.0");
    assertThat(List.of(printed.catalogue(), printed.scoring())).containsExactly("1.0", "1");
    assertThat(printed.grade("port", Optional.empty()))
        .contains(new PrintedGrade("port", Optional.empty(), 0, 0, Optional.empty()));
    assertThat(printed.grade("port", Optional.of("oil")))
        .contains(new PrintedGrade("port", Optional.of("oil"), 0, 0, Optional.of("failed")));
    assertThat(printed.grade("port", Optional.of("rigging"))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          "printed":                 | "imprinted":        | printed | The assessment lacks this, or it cannot be read.
          "graded": false            | "graded": "no"      | graded  | The assessment lacks this, or it cannot be read.
          "date": "2026-10-17"       | "date": "last year" | date    | The assessment lacks this, or it cannot be read.
          "grades": [                | "marks": [          | grades  | The assessment lacks this, or it cannot be read.
          seafettle-assessment/1     | letter/1            | format  | The file is no assessment of the form "seafettle-assessment/1".
          """)
  void an_assessment_that_tells_not_all_that_was_printed_is_refused(
      String passage, String other, String field, String fault) throws IOException {
    report(lastYear(), passage, other);
    assertThat(refused(folder))
        .singleElement()
        .hasToString(
            "2025.pdf/assessment.json: "
                + field
                + "\n  "
                + fault
                + "\n  Take one that this program wrote.");
  }

  /** A passage of the survey, what an earlier one says instead, and what is wrong with that. */
  static List<Arguments> ofAnotherBoatOrTooLate() {
    return List.of(
        arguments(
            "ABC12345D617",
            "XYZ12345D617",
            "The earlier survey is of another boat: its HIN is XYZ12345D617, here it is"
                + " ABC12345D617."),
        arguments(
            "\"place\": \"Qu",
            "\"place\": \"Zu",
            "The earlier survey is of 2026-10-17, not before this one of 2026-10-17."));
  }

  private void assertOnlyTheEntryIsBlamed(String fault) {
    assertThat(refused(folder))
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.fault()).isEqualTo(fault);
              assertThat(p.place()).hasToString("survey.json: earlier[0], line 67");
            });
  }

  @ParameterizedTest
  @MethodSource("ofAnotherBoatOrTooLate")
  void an_earlier_report_is_of_the_same_boat_and_of_an_earlier_day(
      String passage, String other, String fault) throws IOException {
    report(Surveys.with(passage, other), "stop", "stop");
    assertOnlyTheEntryIsBlamed(fault);
  }

  @Test
  void a_report_is_found_beside_the_folder_in_which_one_stands() {
    var here = new DiskFolder(Path.of("src"), "survey.json");
    assertThat(EarlierSurveys.report(here, "../README.md")).isPresent();
    assertThat(EarlierSurveys.report(here, "../README.txt")).isEmpty();
  }

  @Test
  void an_earlier_survey_may_be_a_folder_or_an_archive_of_one() throws IOException {
    earlier("2025", "\"2026-10-17\"", "\"2025-10-11\"");
    var entries =
        Map.of(
            "survey.json",
            bytes(Surveys.with("\"2026-10-17\"", "\"2025-10-10\"")),
            "photos/p1.jpg",
            PICTURE);
    Files.move(zip(entries), temp.resolve("spring.zip"));
    write(Surveys.with("\"earlier\": []", "\"earlier\": [\"../2025\", \"../spring.zip\"]"));
    assertThat(reader.read(folder).earlier())
        .extracting(e -> e.survey().occasion().date().toString())
        .containsExactly("2025-10-11", "2025-10-10");
  }

  @Test
  void an_earlier_survey_may_lie_in_its_report() throws IOException {
    var report = "%PDF" + Surveys.with("\"2026-10-17\"", "\"2025-10-11\"");
    Files.createDirectories(temp.resolve("reports"));
    Files.write(temp.resolve("reports/2025.pdf"), bytes(report));
    var json = Surveys.with("\"earlier\": []", "\"earlier\": [\"../reports/2025.pdf\"]");
    write(json);
    assertThat(reader.read(folder).earlier())
        .singleElement()
        .satisfies(e -> assertThat(e.survey().occasion().date()).hasToString("2025-10-11"))
        .satisfies(e -> assertThat(e.printed()).isEmpty());
    var zip =
        zip(
            Map.of(
                "survey.json", bytes(json.replace("../reports", "reports")),
                "photos/p1.jpg", PICTURE,
                "reports/2025.pdf", bytes(report)));
    assertThat(reader.read(zip).earlier()).hasSize(1);
  }

  @Test
  void the_faults_of_a_survey_in_a_report_are_told_with_the_reports_name() throws IOException {
    Files.write(
        folder.resolve("2025.pdf"),
        bytes("%PDF" + Surveys.with("\"salt\"", "\"slat\"").replace("2026-10-17", "2025-10-11")));
    Files.write(folder.resolve("letter.pdf"), bytes("Dear owner"));
    write(
        Surveys.with(
            "\"earlier\": []", "\"earlier\": [\"2025.pdf\", \"letter.pdf\", \"2024.pdf\"]"));
    assertThat(refused(folder))
        .extracting(p -> p.place() + ": " + p.fault())
        .satisfiesExactlyInAnyOrder(
            p -> assertThat(p).startsWith("2025.pdf/survey.json: boat.water, line 22: "),
            p -> assertThat(p).isEqualTo("letter.pdf: The PDF carries no survey.json."),
            p -> assertThat(p).contains("There is no earlier survey at \"2024.pdf\"."));
  }

  @Test
  void the_faults_of_an_earlier_survey_are_told_with_its_name() throws IOException {
    earlier("2025", "\"salt\"", "\"slat\"");
    write(
        Surveys.with("\"earlier\": []", "\"earlier\": [\"../2025/survey.json\"]")
            .replace("7.6 m", "7.6"));
    assertThat(refused(folder))
        .extracting(p -> p.place().toString())
        .containsExactly(
            "survey.json: boat.length, line 20", "../2025/survey.json: boat.water, line 22");
  }

  @ParameterizedTest
  @MethodSource("ofAnotherBoatOrTooLate")
  void an_earlier_survey_is_of_the_same_boat_and_of_an_earlier_day(
      String passage, String other, String fault) throws IOException {
    earlier("2025", passage, other);
    write(Surveys.with("\"earlier\": []", "\"earlier\": [\"../2025/survey.json\"]"));
    assertOnlyTheEntryIsBlamed(fault);
  }

  @ParameterizedTest
  @CsvSource({
    "../2024/survey.json,There is no earlier survey at \"../2024/survey.json\".",
    "/srv/survey.json,\"/srv/survey.json\" starts at the root of a disk."
  })
  void an_earlier_survey_that_is_not_there_is_told(String path, String fault) throws IOException {
    write(Surveys.with("\"earlier\": []", "\"earlier\": [\"" + path + "\"]"));
    assertThat(refused(folder)).extracting(Problem::fault).containsExactly(fault);
  }

  @Test
  void an_unusual_hull_number_is_only_remarked() throws IOException {
    write(Surveys.with("ABC12345D617", "old plate 7"));
    assertThat(reader.read(folder).remarks())
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.place()).hasToString("survey.json: boat.hin, line 19");
              assertThat(p.fault()).contains("not the usual form");
            });
  }

  private void write(String json) throws IOException {
    Files.writeString(folder.resolve("survey.json"), json);
  }

  private void earlier(String name, String passage, String other) throws IOException {
    var there = Files.createDirectories(temp.resolve(name).resolve("photos")).getParent();
    Files.write(there.resolve("photos/p1.jpg"), PICTURE);
    Files.writeString(there.resolve("survey.json"), Surveys.with(passage, other));
  }

  private Path zip(Map<String, byte[]> entries) throws IOException {
    var bytes = new ByteArrayOutputStream();
    try (var zip = new ZipOutputStream(bytes)) {
      for (var entry : entries.entrySet()) {
        zip.putNextEntry(new ZipEntry(entry.getKey()));
        zip.write(entry.getValue());
      }
    }
    return Files.write(temp.resolve("survey.zip"), bytes.toByteArray());
  }

  private List<Problem> refused(Path path) {
    return catchThrowableOfType(Refused.class, () -> reader.read(path)).problems();
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static void replace(byte[] bytes, String passage, String other) {
    var text = new String(bytes, StandardCharsets.ISO_8859_1);
    for (int i = text.indexOf(passage); i >= 0; i = text.indexOf(passage, i + 1)) {
      System.arraycopy(bytes(other), 0, bytes, i, other.length());
    }
  }
}
