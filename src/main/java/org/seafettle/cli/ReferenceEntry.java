package org.seafettle.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.seafettle.catalogue.Caution;
import org.seafettle.catalogue.Check;

/** A check in words, as an entry of a reference page in Markdown. */
final class ReferenceEntry {

  private final Check check;
  private final CheckInWords words;
  private final List<String> lines = new ArrayList<>();

  ReferenceEntry(Check check) {
    this.check = check;
    this.words = new CheckInWords(check);
  }

  List<String> lines() {
    block("### " + check.id());
    block(Markdown.strong(check.guidance().title()));
    facts();
    howAndWhy();
    readings();
    limits();
    outcomes();
    cautions();
    return lines;
  }

  private void facts() {
    lines.add("- " + Spoken.upper(Markdown.text(words.place())));
    lines.add("- Gravest class: " + words.gravest());
    lines.add("- Expected for: " + (words.expected().isEmpty() ? "no survey" : words.expected()));
    if (!check.guidance().instrument().isEmpty()) {
      lines.add("- Instrument: " + Markdown.text(check.guidance().instrument()));
    }
    if (!check.words().isEmpty()) {
      lines.add(
          "- A finding may say: "
              + check.words().stream().map(Markdown::code).collect(Collectors.joining(", ")));
    }
    lines.add("");
  }

  private void howAndWhy() {
    int n = 1;
    for (var step : check.guidance().how()) {
      lines.add(n++ + ". " + Markdown.text(step));
    }
    lines.add("");
    block("Why: " + Markdown.text(check.guidance().why()));
  }

  private void readings() {
    if (!words.readings().isEmpty()) {
      block("Readings:");
      words.readings().forEach(r -> item(Markdown.code(r.about()) + ": ", r.text()));
      lines.add("");
    }
  }

  private void limits() {
    if (words.limits().isEmpty() && !words.makerComesFirst()) {
      return;
    }
    block("Limits:");
    words.due().forEach(due -> item("", due));
    words.limits().forEach(l -> item("", l.about() + ": " + l.text()));
    if (words.makerComesFirst()) {
      item("", "a limit from the engine maker's manual, given in the survey, comes first");
    }
    lines.add("");
  }

  private void outcomes() {
    lines.addAll(Markdown.head("Outcome", "Class", "What it says", "What to do", "Limit from"));
    for (var outcome : words.outcomes()) {
      var toDo = new ArrayList<String>();
      outcome.stop().map(Markdown::strong).ifPresent(toDo::add);
      outcome.action().map(Markdown::text).ifPresent(toDo::add);
      lines.add(
          Markdown.row(
              List.of(
                  Markdown.code(outcome.name()),
                  outcome.grave(),
                  Markdown.text(outcome.says() + " In brief: " + outcome.brief() + "."),
                  String.join(" ", toDo),
                  Markdown.text(outcome.source()))));
    }
    lines.add("");
  }

  private void cautions() {
    if (!words.cautions().isEmpty()) {
      block(
          "Cautions: "
              + words.cautions().stream()
                  .map(Caution::id)
                  .distinct()
                  .map(Markdown::link)
                  .collect(Collectors.joining(", ")));
    }
  }

  private void item(String lead, String text) {
    lines.add("- " + lead + Markdown.text(text));
  }

  private void block(String text) {
    lines.add(text);
    lines.add("");
  }
}
