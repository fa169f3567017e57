package org.seafettle.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.seafettle.house.Logo;
import org.seafettle.problem.Problem;
import org.seafettle.problem.Refused;

class HouseReaderTest {

  private static final HouseReader READER = new HouseReader(c -> c < 0x2000);
  private static final String HEAD = "\"format\": \"seafettle-house/1\", \"name\": \"Fjellhamn\"";

  @TempDir Path folder;

  private Path house(String fields) throws IOException {
    return Files.writeString(folder.resolve("house.json"), "{" + fields + "}");
  }

  private List<Problem> faults(String fields) throws IOException {
    var file = house(fields);
    return catchThrowableOfType(Refused.class, () -> READER.read(file)).problems();
  }

  @Test
  void the_sample_is_read_from_its_folder() {
    var house = new HouseReader(c -> true).read(Path.of("sample-surveys/house"));
    assertThat(house.name()).isEqualTo("Fjellhamn Boatyard");
    assertThat(house.address()).hasSize(2);
    assertThat(house.logo().orElseThrow()).isInstanceOf(Logo.Drawing.class);
    assertThat(house.accent().orElseThrow().written()).isEqualTo("#1F5F7A");
    assertThat(house.closing()).hasSize(1);
  }

  @Test
  void a_name_is_enough() throws IOException {
    assertThat(READER.read(house(HEAD)).logo()).isEmpty();
  }

  @Test
  void all_faults_are_told_at_once_each_with_its_place_and_remedy() throws IOException {
    var faults =
        faults(
            """
            "format": "seafettle-house/2",
            "name": 7,
            "adress": ["Slip road 3"],
            "phone": "call us",
            "mail": "nobody",
            "accent": "#FFCC00",
            "logo": "../secret.svg",
            "closing": ["\\u4e2d"]
            """);
    assertThat(faults)
        .extracting(p -> p.place().field())
        .containsExactly(
            "format", "name", "adress", "phone", "mail", "accent", "logo", "closing[0]");
    assertThat(faults).allMatch(p -> p.place().line().isPresent());
    assertThat(faults).anyMatch(p -> p.remedy().contains("\"address\""));
    assertThat(faults).anyMatch(p -> p.fault().contains("to 1 against white"));
  }

  @Test
  void a_logo_that_is_not_there_is_named_with_the_one_that_is() throws IOException {
    Files.writeString(folder.resolve("logo.svg"), "");
    assertThat(faults(HEAD + ", \"logo\": \"lgoo.svg\"").get(0).remedy()).contains("logo.svg");
  }

  @Test
  void a_logo_that_is_a_link_to_elsewhere_is_not_followed() throws IOException {
    Files.createSymbolicLink(folder.resolve("logo.svg"), Path.of("/etc/passwd"));
    assertThat(faults(HEAD + ", \"logo\": \"logo.svg\"").get(0).fault()).contains("no file");
  }

  @Test
  void faults_within_a_logo_are_told_with_its_own_name() throws IOException {
    Files.writeString(
        folder.resolve("logo.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 9 9'><script/><use/></svg>");
    assertThat(faults(HEAD + ", \"accent\": \"x\", \"logo\": \"logo.svg\""))
        .extracting(p -> Path.of(p.place().file()).getFileName().toString())
        .containsExactly("house.json", "logo.svg", "logo.svg");
  }

  @Test
  void a_letter_in_a_logo_that_no_typeface_draws_is_refused() throws IOException {
    Files.writeString(
        folder.resolve("logo.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 9 9'><text>\u4e2d</text></svg>");
    assertThat(faults(HEAD + ", \"logo\": \"logo.svg\"").get(0).remedy()).contains("paths");
  }

  @Test
  void a_house_that_is_not_there_is_refused() {
    var refused = catchThrowableOfType(Refused.class, () -> READER.read(folder.resolve("nowhere")));
    assertThat(refused.problems()).hasSize(1);
  }
}
