package org.seafettle.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.seafettle.assessment.Exchange;
import org.seafettle.quantity.MeasuredUnit;
import org.seafettle.survey.Conditions;
import org.seafettle.survey.Person;

/**
 * What every report says first.
 *
 * @param boat her name
 * @param subtitle what the report is, and what the boat is
 * @param verdict what it comes to
 * @param engines the engines
 * @param shared the subsystems that count for every engine; empty with one engine
 * @param before what has to be done before use
 * @param stops whether something of it is a stop
 * @param facts who, what, where, when
 * @param notSeen the most telling of what was not seen; empty where all was seen
 */
public record PageOne(
    String boat,
    String subtitle,
    VerdictPart verdict,
    List<EnginePart> engines,
    List<SubsystemRow> shared,
    List<TaskRow> before,
    boolean stops,
    List<Row> facts,
    String notSeen) {

  /** More do not fit into one line; the rest stands where it is told in full. */
  private static final int MOST_NAMED = 3;

  public PageOne {
    engines = List.copyOf(engines);
    shared = List.copyOf(shared);
    before = List.copyOf(before);
    facts = List.copyOf(facts);
  }

  static PageOne of(Manuscript m) {
    return new PageOne(
        m.survey().boat().name(),
        subtitle(m),
        VerdictPart.of(m),
        m.assessment().engines().stream().map(e -> EnginePart.of(m, e)).toList(),
        m.sharedByAll().stream().map(s -> SubsystemRow.of(m, s)).toList(),
        m.assessment().plan().tasks().stream()
            .filter(TaskRow::critical)
            .map(t -> TaskRow.of(m, t))
            .toList(),
        !m.assessment().verdict().stops().isEmpty(),
        facts(m),
        notSeen(m));
  }

  private static String notSeen(Manuscript m) {
    var checks =
        m.assessment().plan().looks().stream()
            .map(l -> m.phrases().within(l.result().check().guidance().title()))
            .distinct()
            .toList();
    var named =
        checks.stream().limit(MOST_NAMED).collect(Collectors.joining(m.words().say("list.apart")));
    int more = checks.size() - MOST_NAMED;
    return more > 0 ? m.words().count("unseen.more", more, named) : named;
  }

  private static String subtitle(Manuscript m) {
    var boat = m.survey().boat();
    var words = m.words();
    return Stream.of(
            Optional.of(m.subject()),
            boat.length().map(m.phrases()::quantity),
            boat.built().isPresent()
                ? Optional.of(words.say("boat.built", boat.built().getAsInt() + ""))
                : Optional.<String>empty(),
            Optional.of(
                boat.hin()
                    .map(h -> words.say("boat.hin", h))
                    .orElseGet(() -> words.say("boat.no-hin"))),
            boat.water().map(w -> words.say("boat.water." + w.name().toLowerCase(Locale.ROOT))),
            boat.fuel().map(f -> words.of("fuel", f.kind())))
        .flatMap(Optional::stream)
        .collect(Collectors.joining(words.say("list.facts")));
  }

  private static List<Row> facts(Manuscript m) {
    var words = m.words();
    var occasion = m.survey().occasion();
    var rows = new ArrayList<Row>();
    rows.add(Row.of(words.say("fact.surveyed"), surveyed(m)));
    var by = person(words, occasion.by());
    rows.add(
        Row.of(
            words.say("fact.by"),
            occasion
                .orderedBy()
                .map(p -> words.say("fact.by-for", by, person(words, p)))
                .orElse(by)));
    rows.add(Row.of(words.say("fact.instruments"), instruments(m, occasion.conditions())));
    var followed = FollowedRow.summary(m);
    if (!followed.isEmpty()) {
      rows.add(Row.of(words.say("fact.since-last"), followed));
    }
    var exchanged = m.assessment().history().exchanged();
    if (!exchanged.isEmpty()) {
      rows.add(
          Row.of(
              words.say("fact.exchanged"),
              m.phrases().series(exchanged.stream().map(e -> exchanged(m, e)).toList())));
    }
    return rows;
  }

  private static String exchanged(Manuscript m, Exchange exchange) {
    var on = m.phrases().the(exchange.now());
    if (exchange instanceof Exchange.SetBack meter) {
      return m.words()
          .say(
              "exchanged.meter",
              on,
              m.phrases().value(meter.before().hours(), MeasuredUnit.HOUR),
              m.phrases().date(meter.before().day()),
              m.phrases().value(meter.after().hours(), MeasuredUnit.HOUR),
              m.phrases().date(meter.after().day()));
    }
    var renewed = (Exchange.Renewed) exchange;
    return m.words().say("exchanged.renewed", on, m.phrases().date(renewed.seen()));
  }

  private static String surveyed(Manuscript m) {
    var words = m.words();
    var occasion = m.survey().occasion();
    var conditions = occasion.conditions();
    return Stream.of(
            Optional.of(m.phrases().date(occasion.date())),
            Optional.of(occasion.place()),
            Optional.of(afloat(words, conditions)),
            conditions.air().map(a -> words.say("fact.air", m.phrases().quantity(a))),
            Optional.of(cold(m, conditions)))
        .flatMap(Optional::stream)
        .collect(Collectors.joining(words.say("list.between")));
  }

  private static String afloat(Words words, Conditions conditions) {
    return conditions
        .afloat()
        .map(afloat -> words.say(afloat ? "fact.afloat" : "fact.ashore"))
        .orElseGet(() -> words.say("fact.afloat-unknown"));
  }

  private static String cold(Manuscript m, Conditions conditions) {
    int engines = m.survey().engines().size();
    return conditions
        .enginesCold()
        .map(
            cold ->
                cold
                    ? m.words().count("fact.cold", engines)
                    : m.words().count("fact.warm", engines))
        .orElseGet(() -> m.words().count("fact.cold-unknown", engines));
  }

  private static String instruments(Manuscript m, Conditions conditions) {
    return conditions.instruments().isEmpty()
        ? m.words().say("fact.no-instruments")
        : String.join(m.words().say("list.between"), conditions.instruments());
  }

  static String person(Words words, Person person) {
    return Stream.of(Optional.of(person.name()), person.role(), person.contact())
        .flatMap(Optional::stream)
        .collect(Collectors.joining(words.say("list.between")));
  }
}
