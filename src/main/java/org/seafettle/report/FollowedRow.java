package org.seafettle.report;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.seafettle.assessment.Followed;
import org.seafettle.assessment.Result;
import org.seafettle.assessment.Sighting;

/**
 * A finding of an earlier survey, and what became of it.
 *
 * @param number which it keeps
 * @param reference where it stands in this report; empty where nothing is left of it
 * @param what was found then, on what
 * @param since when it was first reported
 * @param then its class then
 * @param now its class now; empty where it was not seen
 * @param status what became of it
 * @param open whether it still has to be settled, as far as is known
 */
public record FollowedRow(
    String number,
    Optional<Reference> reference,
    String what,
    String since,
    String then,
    String now,
    String status,
    boolean open) {

  static List<FollowedRow> all(Manuscript m) {
    return m.assessment().history().followed().stream().map(f -> of(m, f)).toList();
  }

  private static FollowedRow of(Manuscript m, Followed followed) {
    return new FollowedRow(
        Integer.toString(followed.number()),
        followed.now().filter(Result::reports).map(r -> Reference.to(m, r)),
        Phrases.capital(m.headline(followed.then())),
        m.phrases().date(followed.since()),
        m.words().of("class", followed.then().counts()),
        followed
            .now()
            .flatMap(Result::seen)
            .map(Sighting.Seen::counts)
            .map(c -> m.words().of("class", c))
            .orElse(""),
        status(m, followed.status()),
        isOpen(followed.status()));
  }

  private static String status(Manuscript m, Followed.Status status) {
    return m.words().of("status", status);
  }

  private static boolean isOpen(Followed.Status status) {
    return switch (status) {
      case COMPLETED, GONE -> false;
      case IN_PROGRESS, OUTSTANDING, WORSE, BACK, NOT_LOOKED_AT -> true;
    };
  }

  /** How a finding of this survey stands to the earlier ones; empty where there is none. */
  static String standing(Manuscript m, Result finding) {
    var history = m.assessment().history();
    if (history.past().isEmpty()) {
      return "";
    }
    return history.followed().stream()
        .filter(f -> f.now().filter(finding::equals).isPresent())
        .findFirst()
        .map(f -> m.words().say("standing", status(m, f.status()), m.phrases().date(f.since())))
        .orElse(m.words().say("status.new"));
  }

  /** How many became what; empty where earlier surveys left nothing open. */
  static String summary(Manuscript m) {
    Map<Followed.Status, Integer> counts = new EnumMap<>(Followed.Status.class);
    m.assessment().history().followed().forEach(f -> counts.merge(f.status(), 1, Integer::sum));
    return m.phrases()
        .list(
            counts.entrySet().stream()
                .map(e -> m.words().say("status.count", e.getValue() + "", status(m, e.getKey())))
                .toList());
  }
}
