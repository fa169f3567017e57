package org.seafettle.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import org.seafettle.catalogue.Catalogue;
import org.seafettle.catalogue.Caution;
import org.seafettle.catalogue.Check;
import org.seafettle.catalogue.Source;
import org.seafettle.catalogue.Subsystem;

/** The whole catalogue as a page of reference in Markdown. */
final class ReferencePage {

  private final Catalogue catalogue;
  private final List<String> lines = new ArrayList<>();

  ReferencePage(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  List<String> lines() {
    block(
        "Generated from the data; do not edit. `seafettle catalogue --format markdown` prints it.");
    block("# Catalogue " + catalogue.version());
    block(
        catalogue.checks().size()
            + " checks, "
            + catalogue.patterns().size()
            + " patterns. Uncertainties are expanded (k = 2). A value exactly on a limit belongs to"
            + " the milder side. The engine maker's manual, local codes and licensed practice come"
            + " before anything that stands here.");
    contents();
    for (var subsystem : Subsystem.values()) {
      block("## " + Spoken.upper(Spoken.word(subsystem)));
      checks(subsystem).forEach(check -> lines.addAll(new ReferenceEntry(check).lines()));
    }
    block("## Patterns");
    block("Causes that only several findings together point to; all that is needed must be found.");
    catalogue.patterns().forEach(p -> lines.addAll(new PatternEntry(catalogue, p).lines()));
    cautions();
    sources();
    return lines.subList(0, lines.size() - 1);
  }

  private void contents() {
    for (var subsystem : Subsystem.values()) {
      lines.addAll(
          Markdown.head(
              Spoken.upper(Spoken.word(subsystem)), "Check", "Gravest class", "Expected for"));
      for (var check : checks(subsystem)) {
        var words = new CheckInWords(check);
        lines.add(
            Markdown.row(
                List.of(
                    Markdown.link(check.id()),
                    Markdown.text(check.guidance().title()),
                    words.gravest(),
                    words.expected())));
      }
      lines.add("");
    }
  }

  private List<Check> checks(Subsystem subsystem) {
    return catalogue.checks().stream().filter(c -> c.subsystem() == subsystem).toList();
  }

  private void cautions() {
    block("## Cautions");
    catalogue.checks().stream()
        .flatMap(check -> new CheckInWords(check).cautions().stream())
        .distinct()
        .collect(Collectors.groupingBy(Caution::id, LinkedHashMap::new, Collectors.toList()))
        .forEach(
            (id, variants) -> {
              block("### " + id);
              variants.forEach(caution -> block(Markdown.text(Spoken.caution(caution))));
            });
  }

  private void sources() {
    block("## Sources");
    block("By rank, highest first; a lower one never replaces a higher.");
    for (var rank : Source.Rank.values()) {
      var sources = catalogue.sources().stream().filter(s -> s.rank() == rank).toList();
      // the maker's own limits come with a survey, so the catalogue has no source of that rank
      if (!sources.isEmpty()) {
        block("### " + Spoken.upper(rank(rank)));
        // where no document was read, the rank says it all
        var titles = sources.stream().map(Source::title).filter(t -> !t.isEmpty()).toList();
        titles.forEach(title -> lines.add("- " + Markdown.text(title)));
        if (!titles.isEmpty()) {
          lines.add("");
        }
      }
    }
  }

  private static String rank(Source.Rank rank) {
    return switch (rank) {
      case MAKER -> "the manual of the surveyed engine's maker";
      case LAW -> "law, whether or not it binds the boat";
      case STANDARD -> "standard, read in the standard itself";
      case GOVERNMENT -> "manual or publication of a government or its services";
      case PRINTED -> "printed manual of another maker or trade";
      case QUOTED -> "page or article that quotes another";
      case COMMON_PRACTICE -> "common practice; no document was read";
      case FROM_MEMORY -> "from memory, unverified";
      case PROGRAM_DEFAULT -> "program default, a choice of this program";
    };
  }

  private void block(String text) {
    lines.add(text);
    lines.add("");
  }
}
