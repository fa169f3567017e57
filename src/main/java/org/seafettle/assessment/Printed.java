package org.seafettle.assessment;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What an earlier report printed when it was made, by the catalogue and the scale of that day.
 *
 * @param survey number of its survey
 * @param day of its survey
 * @param program version of the program
 * @param catalogue version of the catalogue
 * @param digest of the catalogue
 * @param scoring version of the scale
 * @param grades each engine as a whole, then its subsystems
 */
public record Printed(
    String survey,
    LocalDate day,
    String program,
    String catalogue,
    String digest,
    String scoring,
    List<PrintedGrade> grades) {

  public Printed {
    grades = List.copyOf(grades);
  }

  /** The grade of an engine as a whole, or of one of its subsystems. */
  public Optional<PrintedGrade> grade(String engine, Optional<String> subsystem) {
    return grades.stream()
        .filter(g -> g.engine().equals(engine) && g.subsystem().equals(subsystem))
        .findFirst();
  }

  /**
   * A grade as it was printed.
   *
   * @param engine the engine
   * @param subsystem its subsystem; empty for the engine as a whole
   * @param index 0 to 100, rounded down
   * @param atWorst 0 to {@code index}
   * @param word its word; empty where it was withheld
   */
  public record PrintedGrade(
      String engine, Optional<String> subsystem, int index, int atWorst, Optional<String> word) {}
}
