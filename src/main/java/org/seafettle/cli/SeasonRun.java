package org.seafettle.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorCompletionService;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.seafettle.json.SurveyGlance;
import org.seafettle.yard.ReportNames;

/** Makes the reports of a season, several at a time. */
final class SeasonRun {

  private final BoatRun boats;
  private final Part part;
  private final int jobs;

  /**
   * @param part only these surveys
   * @param jobs how many reports are made at once
   */
  SeasonRun(BoatRun boats, Part part, int jobs) {
    this.boats = boats;
    this.part = part;
    this.jobs = jobs;
  }

  /**
   * Makes what is not there yet.
   *
   * @param surveys all of the season, by their names
   * @return how many ended how
   * @throws IOException where nothing can be written any more; all that was written until then
   *     stays
   */
  Map<BoatRun.Ended, Integer> run(SortedMap<String, Path> surveys, ProgressLine progress)
      throws IOException {
    var names = names(surveys);
    var pool = Executors.newFixedThreadPool(jobs);
    try {
      return run(surveys, names, progress, pool);
    } finally {
      pool.shutdownNow();
    }
  }

  private Map<BoatRun.Ended, Integer> run(
      SortedMap<String, Path> surveys,
      Map<String, String> names,
      ProgressLine progress,
      ExecutorService pool)
      throws IOException {
    var running = new ExecutorCompletionService<BoatRun.Ended>(pool);
    int waiting = 0;
    for (var survey : surveys.entrySet()) {
      var source = survey.getKey();
      if (part.holds(source)) {
        running.submit(() -> boats.run(source, survey.getValue(), names.get(source)));
        waiting++;
      }
    }
    var ended = new EnumMap<BoatRun.Ended, Integer>(BoatRun.Ended.class);
    for (; waiting > 0; waiting--) {
      var one = next(running);
      ended.merge(one, 1, Integer::sum);
      progress.step(one != BoatRun.Ended.UNCHANGED);
    }
    return ended;
  }

  private static BoatRun.Ended next(ExecutorCompletionService<BoatRun.Ended> running)
      throws IOException {
    try {
      return running.take().get();
    } catch (ExecutionException e) {
      if (e.getCause() instanceof IOException storage) {
        throw storage;
      }
      throw new IllegalStateException(e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new UncheckedIOException(new IOException("interrupted"));
    }
  }

  /** Of all surveys, also of those in other parts: two of them may want the same name. */
  private static Map<String, String> names(SortedMap<String, Path> surveys) {
    var wanted = new TreeMap<String, String>();
    surveys.forEach((source, path) -> wanted.put(source, wanted(source, path)));
    return new ReportNames(FileName::plain, source -> Sha256.of(source).substring(0, 8))
        .give(wanted);
  }

  private static String wanted(String source, Path survey) {
    return SurveyGlance.title(survey)
        .map(t -> FileName.of(t.date(), t.boat(), t.id(), t.purpose()))
        .filter(name -> name.matches("[a-z0-9-]+"))
        .orElse("unread-" + FileName.plain(source));
  }
}
