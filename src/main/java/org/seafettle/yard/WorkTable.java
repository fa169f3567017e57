package org.seafettle.yard;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The work list as comma-separated values, RFC 4180: every value in quotes, lines end in CRLF. */
public final class WorkTable {

  private static final List<String> HEAD =
      List.of(
          "boat",
          "hin",
          "survey",
          "date",
          "engine",
          "on",
          "action",
          "class",
          "who",
          "by",
          "hours-least",
          "hours-most",
          "parts",
          "currency",
          "price-least",
          "price-most",
          "report");

  private WorkTable() {}

  /** One line for each thing to be done, in the order of the fleet. */
  public static String of(Fleet fleet) {
    var table = new StringBuilder(line(HEAD));
    for (var boat : fleet.surveyed()) {
      for (var job : boat.jobs()) {
        table.append(line(values(boat, job)));
      }
    }
    return table.toString();
  }

  private static List<String> values(Surveyed boat, Job job) {
    var cost = job.effort().cost().byCurrency().entrySet().stream().findFirst();
    var hours = job.effort().hours();
    var values = new ArrayList<String>();
    values.add(boat.boat().name());
    values.add(boat.boat().hin());
    values.add(boat.boat().survey());
    values.add(boat.boat().date().toString());
    values.add(String.join(" ", job.where().engines()));
    values.add(job.where().title());
    values.add(job.does());
    values.add(job.findingClass().word());
    values.add(job.who().stream().map(who -> who.word()).collect(Collectors.joining(" ")));
    values.add(job.by().word());
    values.add(hours.none() ? "" : number(hours.least()));
    values.add(hours.none() ? "" : number(hours.most()));
    values.add(job.parts().stream().map(Job.Need::part).collect(Collectors.joining(" ")));
    values.add(cost.map(c -> c.getKey()).orElse(""));
    values.add(cost.map(c -> number(c.getValue().least())).orElse(""));
    values.add(cost.map(c -> number(c.getValue().most())).orElse(""));
    values.add(boat.report());
    return values;
  }

  private static String number(BigDecimal number) {
    var plain = number.stripTrailingZeros();
    return (plain.scale() < 0 ? plain.setScale(0) : plain).toPlainString();
  }

  private static String line(List<String> values) {
    return values.stream()
        .map(value -> "\"" + text(value).replace("\"", "\"\"") + "\"")
        .collect(Collectors.joining(",", "", "\r\n"));
  }

  /** A spreadsheet would reckon out a text that starts like a formula. */
  private static String text(String value) {
    return !value.isEmpty() && "=+-@\t\r".indexOf(value.charAt(0)) >= 0 ? "'" + value : value;
  }
}
