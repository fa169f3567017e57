package org.seafettle.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.seafettle.assessment.Assessor;
import org.seafettle.calendar.CalendarFile;
import org.seafettle.html.Templates;
import org.seafettle.json.CatalogueReader;
import org.seafettle.json.SurveyReader;
import org.seafettle.json.SurveySource;

/** What the sample of two outboards is to be reminded of. */
class RemindersTest {

  private static final Words WORDS = Templates.supplied().words("en");

  private static Reminders of(String folder) {
    var catalogue = CatalogueReader.supplied();
    var source =
        new SurveyReader(catalogue, c -> true, (name, report) -> Map.of())
            .read(Path.of("sample-surveys", folder));
    var earlier = source.earlier().stream().map(SurveySource::survey).toList();
    return Reminders.of(
        new Assessor(catalogue).assess(source.survey(), earlier), WORDS, Options.USUAL);
  }

  @Test
  void the_next_change_of_each_impeller_is_remembered_with_its_caution() {
    var impeller =
        of("sound-pair/2026").all().stream()
            .filter(r -> r.key().endsWith("impeller-change"))
            .toList();
    assertThat(impeller).hasSize(2);
    assertThat(impeller.get(0).title()).startsWith("Tern's Errand: ").contains("port engine");
    assertThat(impeller.get(0).text())
        .contains(
            "at 518 h",
            "Every: 24 months or 200 h, whichever comes first.",
            "Caution: ",
            "maker’s manual");
  }

  @Test
  void the_same_thing_has_the_same_key_in_every_year() {
    var then = of("sound-pair/2025").all().stream().map(Reminders.Reminder::key).toList();
    var now = of("sound-pair/2026").all().stream().map(Reminders.Reminder::key).toList();
    assertThat(now).filteredOn(k -> k.contains("change")).isNotEmpty().allMatch(then::contains);
  }

  @Test
  void no_reminder_lies_before_the_survey_and_the_soonest_comes_first() {
    for (var folder : List.of("sound-pair/2026", "neglected", "diesel-inboard")) {
      var reminders = of(folder);
      assertThat(reminders.all())
          .isNotEmpty()
          .allSatisfy(r -> assertThat(r.day()).isAfterOrEqualTo(reminders.surveyed()));
      assertThat(reminders.all()).extracting(Reminders.Reminder::day).isSorted();
    }
  }

  @Test
  void the_boats_of_a_yard_go_into_one_calendar() {
    var yard = List.of(of("sound-pair/2026"), of("neglected"), of("diesel-inboard"));
    assertThat(CalendarFile.write(yard)).isPresent();
  }
}
