package org.seafettle.cli;

import java.util.ArrayList;
import java.util.List;
import org.seafettle.catalogue.Catalogue;
import org.seafettle.catalogue.Check;
import org.seafettle.catalogue.Pattern;

/** A check in words, for a terminal. */
final class Explanation {

  private final Catalogue catalogue;
  private final Check check;
  private final CheckInWords words;
  private final List<String> lines = new ArrayList<>();

  Explanation(Catalogue catalogue, Check check) {
    this.catalogue = catalogue;
    this.check = check;
    this.words = new CheckInWords(check);
  }

  List<String> lines() {
    lines.add(check.guidance().title() + " (" + check.id() + ")");
    paragraph("", words.place());
    howAndWhy();
    readings();
    limits();
    outcomes();
    cautions();
    patterns();
    return lines;
  }

  private void howAndWhy() {
    heading("How");
    int n = 1;
    for (var step : check.guidance().how()) {
      paragraph("  " + n++ + " ", step);
    }
    if (!check.guidance().instrument().isEmpty()) {
      paragraph("  with ", check.guidance().instrument());
    }
    heading("Why");
    paragraph("  ", check.guidance().why());
    if (!words.expected().isEmpty()) {
      paragraph("  expected for ", words.expected());
    }
  }

  private void readings() {
    if (!words.readings().isEmpty()) {
      heading("Readings");
      words.readings().forEach(line -> paragraph("  " + line.about() + ": ", line.text()));
    }
  }

  private void limits() {
    if (words.limits().isEmpty() && !words.makerComesFirst()) {
      return;
    }
    heading("Limits");
    words.due().forEach(due -> paragraph("  ", due));
    words.limits().forEach(line -> paragraph("  " + line.about() + ": ", line.text()));
    if (words.makerComesFirst()) {
      lines.add("  A limit from the engine maker's manual, given in the survey, comes first.");
    }
  }

  private void outcomes() {
    heading("What it can find");
    for (var outcome : words.outcomes()) {
      paragraph("  ", outcome.name() + " (" + outcome.grave() + "): " + outcome.says());
      outcome.stop().ifPresent(stop -> paragraph("      ", stop));
      outcome.action().ifPresent(action -> paragraph("      do: ", action));
      paragraph("      limit: ", outcome.source());
    }
  }

  private void cautions() {
    if (!words.cautions().isEmpty()) {
      heading("Cautions");
      words.cautions().forEach(caution -> paragraph("  ", Spoken.caution(caution)));
    }
  }

  private void patterns() {
    var own =
        catalogue.patterns().stream()
            .filter(p -> p.needs().stream().anyMatch(this::needs))
            .toList();
    if (!own.isEmpty()) {
      heading("Together with other findings");
      own.forEach(p -> paragraph("  ", p.cause() + " " + p.reasoning()));
    }
  }

  private boolean needs(Pattern.Need need) {
    return need.anyOf().stream().anyMatch(sign -> sign.check().equals(check.id()));
  }

  private void heading(String text) {
    lines.add("");
    lines.add(text);
  }

  private void paragraph(String lead, String text) {
    lines.addAll(Layout.paragraph(lead, text));
  }
}
