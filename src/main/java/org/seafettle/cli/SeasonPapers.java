package org.seafettle.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.seafettle.calendar.CalendarFile;
import org.seafettle.json.WorkListWriter;
import org.seafettle.problem.Place;
import org.seafettle.problem.Problem;
import org.seafettle.problem.Refused;
import org.seafettle.yard.Fleet;
import org.seafettle.yard.Kept;
import org.seafettle.yard.WorkTable;

/** What is written about all boats of a season together. */
final class SeasonPapers {

  /** More would hide the one that tells what happened. */
  private static final int MOST_NAMED = 5;

  /** Not written where nothing falls due on a known day: a calendar without an event is none. */
  private static final String CALENDAR = "season-calendar.ics";

  private final Pipe pipe;
  private final Path out;

  SeasonPapers(Pipe pipe, Path out) {
    this.pipe = pipe;
    this.out = out;
  }

  /**
   * The fleet that one or several runs have left records of, the same however it was divided.
   *
   * @throws Refused where the record of an expected survey is missing, or two of them differ
   */
  static Fleet fleet(List<SeasonState> states) throws IOException {
    var kept = new TreeMap<String, Kept>();
    var missing = new TreeMap<String, Problem>();
    for (var state : states) {
      for (var source : state.expected().orElse(List.of())) {
        missing.put(source, unmade(source));
      }
    }
    var different = new ArrayList<Problem>();
    for (var source : missing.keySet()) {
      for (var state : states) {
        var found = state.kept(source);
        if (found.isPresent()) {
          var other = kept.putIfAbsent(source, found.get());
          if (other != null && !other.equals(found.get())) {
            different.add(different(source));
          }
        }
      }
    }
    missing.keySet().removeAll(kept.keySet());
    Refused.ifAny(different);
    Refused.ifAny(missing.values().stream().limit(MOST_NAMED).toList());
    return Fleet.of(kept.values().stream().map(Kept::entry).toList());
  }

  private static Problem unmade(String source) {
    return new Problem(
        Place.file(source),
        "No part has made its report yet.",
        "Run the part again to which it belongs; what is made already is not made again.");
  }

  private static Problem different(String source) {
    return new Problem(
        Place.file(source),
        "Two of the folders tell different things of it.",
        "Run both parts again with the same surveys, templates and program.");
  }

  /** Writes them; an earlier one is replaced, since it can be made again at any time. */
  List<Path> write(Fleet fleet, SeasonState state) throws IOException {
    var papers = new LinkedHashMap<String, byte[]>();
    papers.put("season-overview.pdf", pipe.overview(fleet));
    papers.put("season-work.csv", WorkTable.of(fleet).getBytes(UTF_8));
    papers.put("season-work.json", WorkListWriter.write(fleet));
    CalendarFile.write(fleet.reminders()).ifPresent(ics -> papers.put(CALENDAR, ics));
    Files.createDirectories(out);
    if (!papers.containsKey(CALENDAR)) {
      Files.deleteIfExists(out.resolve(CALENDAR));
    }
    var written = new ArrayList<Path>();
    for (Map.Entry<String, byte[]> paper : papers.entrySet()) {
      var target = out.resolve(paper.getKey());
      state.workbench().put(target, paper.getValue());
      written.add(target);
    }
    return written;
  }
}
