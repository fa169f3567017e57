package org.seafettle.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import org.seafettle.assessment.NextLook;
import org.seafettle.assessment.Sighting;
import org.seafettle.catalogue.Check;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.Outcome;
import org.seafettle.catalogue.Subsystem;

/**
 * What was not seen.
 *
 * @param looks the expected checks that were not seen in full, the most telling first
 * @param why the reason that all of them have, a sentence; empty where they differ
 * @param raises whether any of them raises an index by itself
 * @param notAboard what does not exist on this boat, with the surveyor's reason
 * @param furtherTests what could be tested besides, by subsystem
 */
public record UnseenPart(
    List<Look> looks, String why, boolean raises, List<Row> notAboard, List<Row> furtherTests) {

  private static final int MOST_NAMED = 8;

  public UnseenPart {
    looks = List.copyOf(looks);
    notAboard = List.copyOf(notAboard);
    furtherTests = List.copyOf(furtherTests);
  }

  /**
   * An expected check that was not seen.
   *
   * @param number its rank
   * @param check what and where
   * @param why it was not seen
   * @param hides what it could hide
   * @param raises by how much a look in which all is well would raise the index at worst; empty
   *     where it does not by itself
   */
  public record Look(String number, String check, String why, String hides, String raises) {}

  static UnseenPart of(Manuscript m) {
    var looks = looks(m);
    var reasons = looks.stream().map(Look::why).distinct().toList();
    return new UnseenPart(
        looks,
        reasons.size() == 1
            ? m.words().say("unseen.why-all", m.phrases().within(reasons.get(0)))
            : "",
        looks.stream().anyMatch(look -> !look.raises().isEmpty()),
        notAboard(m),
        furtherTests(m));
  }

  /** What one look is like the other, such as the same check on two engines. */
  private record Alike(String check, String why, String hides, String raises) {}

  private static List<Look> looks(Manuscript m) {
    var alike = new LinkedHashMap<Alike, List<String>>();
    for (var look : m.assessment().plan().looks()) {
      var result = look.result();
      alike
          .computeIfAbsent(
              new Alike(
                  result.check().guidance().title(),
                  why(m, result.sighting()),
                  VerdictPart.hides(m, result.worst()),
                  raises(m, look)),
              a -> new ArrayList<>())
          .add(m.phrases().title(result.component()));
    }
    var looks = new ArrayList<Look>();
    alike.forEach(
        (a, on) ->
            looks.add(
                new Look(
                    Integer.toString(looks.size() + 1),
                    m.words().say("look", a.check(), m.phrases().list(on)),
                    a.why(),
                    a.hides(),
                    a.raises())));
    return looks;
  }

  private static String why(Manuscript m, Sighting sighting) {
    if (sighting instanceof Sighting.Unseen unseen) {
      return Phrases.capital(Evidenced.reason(m, unseen.reason()));
    } else if (sighting instanceof Sighting.Seen seen) {
      return m.words()
          .say("unseen.partly", seen.partly().map(r -> Evidenced.reason(m, r)).orElse(""));
    }
    throw new IllegalStateException("what is not aboard leaves nothing open");
  }

  private static String raises(Manuscript m, NextLook look) {
    int points = (int) Math.floor(look.raisesLowBy());
    return points < 1
        ? ""
        : m.words()
            .say("unseen.raises", SubsystemRow.name(m, look.subsystem()), Integer.toString(points));
  }

  private static List<Row> notAboard(Manuscript m) {
    var rows = new ArrayList<Row>();
    for (var result : m.assessment().results()) {
      if (result.sighting() instanceof Sighting.NotApplicable not) {
        rows.add(Row.of(m.look(result), not.reason()));
      }
    }
    return rows;
  }

  /** There are many, so only the most telling are named; the catalogue tells how each is done. */
  private static List<Row> furtherTests(Manuscript m) {
    var bySubsystem = new EnumMap<Subsystem, List<Check>>(Subsystem.class);
    for (var check : m.assessment().plan().furtherTests()) {
      bySubsystem.computeIfAbsent(check.subsystem(), s -> new ArrayList<>()).add(check);
    }
    return bySubsystem.entrySet().stream()
        .map(
            e ->
                Row.of(Phrases.capital(SubsystemRow.name(m, e.getKey())), further(m, e.getValue())))
        .toList();
  }

  private static String further(Manuscript m, List<Check> checks) {
    var named =
        m.phrases()
            .series(
                checks.stream()
                    .sorted(Comparator.comparing(UnseenPart::gravest).reversed())
                    .limit(MOST_NAMED)
                    .map(c -> m.phrases().within(c.guidance().title()))
                    .toList());
    int more = checks.size() - MOST_NAMED;
    var said = more > 0 ? m.words().count("further.more", more, named) : named;
    return Phrases.capital(m.words().say("sentence", said));
  }

  private static FindingClass gravest(Check check) {
    return check.outcomes().stream()
        .map(Outcome::findingClass)
        .max(Comparator.naturalOrder())
        .orElseThrow();
  }
}
