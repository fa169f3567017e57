package org.seafettle.trend;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The 36 points of the data set "Norris" of NIST's Statistical Reference Datasets. */
public final class Norris {

  private Norris() {}

  public static Course course() {
    return new Course(
        lines().stream()
            .map(line -> line.split(","))
            .map(p -> new Course.Reading(Double.parseDouble(p[0]), Double.parseDouble(p[1])))
            .toList());
  }

  private static List<String> lines() {
    try (var in = Norris.class.getResourceAsStream("nist-norris.csv")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().skip(1).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
