package org.seafettle.calendar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.seafettle.problem.Refused;
import org.seafettle.report.Reminders;

/** What other programs read in our calendars. */
class CalendarFileTest {

  private static final LocalDate SURVEYED = LocalDate.of(2026, 9, 26);

  private static Reminders.Reminder reminder(String key, String day, String title, String text) {
    return new Reminders.Reminder(key, LocalDate.parse(day), title, text);
  }

  private static final Reminders.Reminder IMPELLER =
      reminder("boat/port/impeller", "2027-04-26", "Tern: impeller, port engine", "Due.");

  private static Reminders boat(LocalDate surveyed, Reminders.Reminder... all) {
    return new Reminders("Tern", surveyed, List.of(all));
  }

  private static String written(Reminders... boats) {
    return new String(CalendarFile.write(List.of(boats)).orElseThrow(), StandardCharsets.UTF_8);
  }

  private static ICalendar read(String file) {
    var faults = new ArrayList<List<biweekly.io.ParseWarning>>();
    var calendar = Biweekly.parse(file).warnings(faults).first();
    assertThat(faults.get(0)).isEmpty();
    assertThat(calendar.validate(ICalVersion.V2_0).getWarnings()).isEmpty();
    return calendar;
  }

  private static VEvent event(String file) {
    assertThat(read(file).getEvents()).hasSize(1);
    return read(file).getEvents().get(0);
  }

  @Test
  void a_reminder_is_an_event_of_a_whole_day_with_an_alarm_two_weeks_before() {
    var event = event(written(boat(SURVEYED, IMPELLER)));
    assertThat(event.getDateStart().getValue().hasTime()).isFalse();
    assertThat(event.getDateStart().getValue().getRawComponents().toString(false, false))
        .isEqualTo("20270426");
    assertThat(event.getDateEnd()).isNull();
    var alarm = event.getAlarms().get(0);
    assertThat(alarm.getAction().isDisplay()).isTrue();
    assertThat(alarm.getTrigger().getDuration().isPrior()).isTrue();
    assertThat(alarm.getTrigger().getDuration().getDays()).isEqualTo(14);
  }

  @Test
  void what_was_due_on_the_day_of_the_survey_rings_no_more() {
    var overdue = reminder("k", "2026-09-26", "Overdue", "Now.");
    assertThat(event(written(boat(SURVEYED, overdue))).getAlarms()).isEmpty();
  }

  @Test
  void text_with_commas_semicolons_backslashes_and_lines_comes_through() {
    var text = "Oil, filter; see C:\\manual\nSecond line: \"quoted\"";
    var event = event(written(boat(SURVEYED, reminder("k", "2027-01-01", "a, b; c\\n", text))));
    assertThat(event.getDescription().getValue()).isEqualTo(text);
    assertThat(event.getSummary().getValue()).isEqualTo("a, b; c\\n");
  }

  @Test
  void no_line_is_longer_than_75_octets_and_no_character_is_torn() {
    var text = "Tørrdokk – Ærø ⚓ 𝛀 ".repeat(30).strip();
    for (int shift = 0; shift < 8; shift++) {
      var title = "x".repeat(shift) + text;
      var file = written(boat(SURVEYED, reminder("k", "2027-01-01", title, text)));
      assertThat(file.split("\r\n"))
          .allSatisfy(
              line ->
                  assertThat(line.getBytes(StandardCharsets.UTF_8)).hasSizeLessThanOrEqualTo(75))
          .allSatisfy(line -> assertThat(Character.isLowSurrogate(line.charAt(0))).isFalse());
      assertThat(event(file).getSummary().getValue()).isEqualTo(title);
    }
  }

  @Test
  void every_line_ends_with_carriage_return_and_line_feed() {
    var file = written(boat(SURVEYED, IMPELLER));
    assertThat(file).endsWith("END:VCALENDAR\r\n");
    assertThat(file.replace("\r\n", "")).doesNotContain("\r", "\n");
  }

  @Test
  void next_year_s_file_moves_the_same_event() {
    var then = event(written(boat(SURVEYED, IMPELLER)));
    var moved = reminder(IMPELLER.key(), "2029-04-20", "Tern: impeller", "Due.");
    var now = event(written(boat(SURVEYED.plusYears(1), moved)));
    assertThat(now.getUid().getValue()).isEqualTo(then.getUid().getValue());
    assertThat(now.getSequence().getValue()).isGreaterThan(then.getSequence().getValue());
    assertThat(now.getDateTimeStamp().getValue()).isAfter(then.getDateTimeStamp().getValue());
  }

  @Test
  void many_boats_make_one_calendar() {
    var other = reminder("other/port/impeller", "2027-03-01", "Sedge: impeller", "Due.");
    assertThat(read(written(boat(SURVEYED, IMPELLER), boat(SURVEYED, other))).getEvents())
        .extracting(e -> e.getUid().getValue())
        .hasSize(2)
        .doesNotHaveDuplicates();
  }

  @Test
  void two_boats_that_cannot_be_told_apart_are_refused() {
    assertThatThrownBy(
            () -> CalendarFile.write(List.of(boat(SURVEYED, IMPELLER), boat(SURVEYED, IMPELLER))))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("Tern");
  }

  @Test
  void a_boat_without_anything_due_makes_no_calendar() {
    assertThat(CalendarFile.write(List.of(boat(SURVEYED)))).isEmpty();
  }

  @Test
  void it_is_no_invitation() {
    assertThat(read(written(boat(SURVEYED, IMPELLER))).getMethod()).isNull();
  }
}
