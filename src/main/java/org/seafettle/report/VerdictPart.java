package org.seafettle.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.seafettle.assessment.Result;
import org.seafettle.assessment.Sighting;
import org.seafettle.assessment.Verdict;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.Outcome;
import org.seafettle.catalogue.StopOrder;
import org.seafettle.survey.Component;

/**
 * The verdict.
 *
 * @param critical whether something stands against use
 * @param says the sentences, the gravest first; never empty
 * @param counts how many findings of each class
 * @param unseen how much was not seen and what it could hide; empty where all was seen
 */
public record VerdictPart(boolean critical, List<String> says, String counts, String unseen) {

  public VerdictPart {
    says = List.copyOf(says);
  }

  static VerdictPart of(Manuscript m) {
    var verdict = m.assessment().verdict();
    boolean critical =
        verdict.readiness() == Verdict.Readiness.STOP
            || verdict.readiness() == Verdict.Readiness.NOT_BEFORE_WORK;
    return new VerdictPart(critical, says(m, verdict), counts(m, verdict), unseen(m));
  }

  private static List<String> says(Manuscript m, Verdict verdict) {
    int work = verdict.counts().get(FindingClass.BEFORE_USE);
    return switch (verdict.readiness()) {
      case STOP -> stops(m, verdict);
      case NOT_BEFORE_WORK -> List.of(m.words().count("verdict.before-work", work));
      case NOT_ENOUGH_SEEN -> List.of(m.words().say("verdict.not-enough"));
      case READY_AS_FAR_AS_SEEN -> List.of(m.words().say("verdict.as-far-as-seen"));
      case READY -> List.of(m.words().say("verdict.ready"));
    };
  }

  private record Order(StopOrder order, Component on) {}

  /** One sentence an order, however many findings give it. */
  private static List<String> stops(Manuscript m, Verdict verdict) {
    var reasons = new LinkedHashMap<Order, List<String>>();
    for (var stop : verdict.stops()) {
      reasons
          .computeIfAbsent(
              new Order(stop.order(), stop.because().component()), o -> new ArrayList<>())
          .add(Manuscript.outcome(stop.because()).saying().brief());
    }
    return reasons.entrySet().stream()
        .sorted(Comparator.comparing(e -> e.getKey().order()))
        .map(e -> stop(m, e.getKey(), e.getValue()))
        .toList();
  }

  private static String stop(Manuscript m, Order order, List<String> reasons) {
    var why = m.phrases().listApart(reasons.stream().distinct().toList());
    boolean engine = order.on().kind() == Component.Kind.ENGINE;
    boolean asOfEngine =
        EnumSet.of(StopOrder.DO_NOT_START, StopOrder.DO_NOT_CRANK, StopOrder.DO_NOT_SWITCH_ON)
            .contains(order.order());
    var key = "stop." + order.order().word() + (asOfEngine && !engine ? ".elsewhere" : "");
    return m.words().say(key, m.phrases().the(order.on()), why);
  }

  private static String counts(Manuscript m, Verdict verdict) {
    var open =
        Stream.of(FindingClass.values())
            .sorted(Comparator.reverseOrder())
            .filter(c -> c != FindingClass.OK && verdict.counts().get(c) > 0)
            .map(c -> m.words().count("count." + c.word(), verdict.counts().get(c)))
            .collect(Collectors.toCollection(ArrayList::new));
    long settled =
        m.assessment().findings().stream()
            .flatMap(r -> r.seen().stream())
            .filter(Sighting.Seen::settled)
            .count();
    if (settled > 0) {
      open.add(m.words().count("count.settled", (int) settled));
    }
    return open.isEmpty()
        ? m.words().say("count.none")
        : Phrases.capital(m.words().say("count.all", m.phrases().list(open)));
  }

  /** What something unseen could hide: its class, and what it is. */
  static String hides(Manuscript m, Outcome outcome) {
    return m.words()
        .say(
            "unseen.hides",
            m.words().of("class", outcome.findingClass()),
            outcome.saying().brief());
  }

  /** Naming as hidden what was found already would tell nothing. */
  private static String unseen(Manuscript m) {
    var open = m.assessment().open();
    var found =
        m.assessment().findings().stream()
            .map(f -> Manuscript.outcome(f).saying().brief())
            .collect(Collectors.toSet());
    int expected = (int) m.assessment().results().stream().filter(Result::expected).count();
    return open.stream()
        .map(Result::worst)
        .max(
            Comparator.comparing(Outcome::findingClass)
                .thenComparing(o -> !found.contains(o.saying().brief()))
                .thenComparing(o -> StopOrder.place(o.stop()), Comparator.reverseOrder()))
        .map(
            w ->
                m.words()
                    .count(
                        "unseen.summary",
                        open.size(),
                        expected + "",
                        m.words().of("class", w.findingClass()),
                        w.saying().brief()))
        .orElse("");
  }
}
