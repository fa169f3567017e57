package org.seafettle.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.seafettle.survey.Battery;
import org.seafettle.survey.Pump;

/** The batteries and pumps as the survey names them: what many a limit was reckoned from. */
final class OutfitRows {

  private final Manuscript m;

  private OutfitRows(Manuscript m) {
    this.m = m;
  }

  /** A line each; none of one of which nothing but its name is known. */
  static List<Row> of(Manuscript m) {
    var rows = new OutfitRows(m);
    var outfit = m.survey().outfit();
    var all = new ArrayList<Row>();
    outfit.batteries().forEach(b -> all.add(Row.of(m.phrases().title(b), rows.battery(b))));
    outfit.pumps().forEach(p -> all.add(Row.of(m.phrases().title(p), rows.pump(p))));
    return all.stream()
        .filter(row -> !row.text().isEmpty())
        .map(row -> Row.of(Phrases.capital(row.label()), row.text()))
        .toList();
  }

  private String battery(Battery battery) {
    return together(
        Stream.of(
            battery.chemistry().map(c -> m.words().of("chemistry", c)),
            battery.nominal().map(m.phrases()::quantity),
            battery.capacity().map(m.phrases()::quantity),
            battery.cranking().map(a -> m.words().say("outfit.cranking", m.phrases().quantity(a))),
            battery.installed().isPresent()
                ? Optional.of(
                    m.words()
                        .say("outfit.installed", Integer.toString(battery.installed().getAsInt())))
                : Optional.empty()));
  }

  private String pump(Pump pump) {
    return together(
        Stream.of(
            pump.rated().map(q -> m.words().say("outfit.rated", m.phrases().quantity(q))),
            pump.draws().map(a -> m.words().say("outfit.draws", m.phrases().quantity(a))),
            pump.fedBy()
                .flatMap(
                    id ->
                        m.survey().outfit().batteries().stream()
                            .filter(b -> b.id().equals(id))
                            .findFirst())
                .map(b -> m.words().say("outfit.fed-by", m.phrases().the(b)))));
  }

  private String together(Stream<Optional<String>> known) {
    return known
        .flatMap(Optional::stream)
        .collect(Collectors.joining(m.words().say("list.between")));
  }
}
