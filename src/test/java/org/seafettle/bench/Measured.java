package org.seafettle.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * What a process took.
 *
 * @param seconds from its start to its end, on the wall clock
 * @param megabytes the most that it held, where the system tells; of its children nothing is known
 */
record Measured(double seconds, double megabytes) {

  /** Runs a command to its end. */
  static Measured of(List<String> command) {
    try {
      var log = Files.createTempFile("bench", ".txt");
      long start = System.nanoTime();
      var process =
          new ProcessBuilder(command)
              .redirectOutput(log.toFile())
              .redirectErrorStream(true)
              .start();
      double megabytes = 0;
      while (process.isAlive()) {
        megabytes = Math.max(megabytes, peak(process.pid()));
        Thread.sleep(5);
      }
      double seconds = (System.nanoTime() - start) / 1e9;
      if (process.exitValue() != 0) {
        throw new IllegalStateException(Files.readString(log));
      }
      Files.delete(log);
      return new Measured(seconds, megabytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  private static double peak(long pid) {
    try (var lines = Files.lines(Path.of("/proc/" + pid + "/status"))) {
      return lines
          .filter(line -> line.startsWith("VmHWM"))
          .mapToDouble(line -> Double.parseDouble(line.replaceAll("\\D", "")) / 1024)
          .max()
          .orElse(0);
    } catch (IOException | UncheckedIOException ended) {
      return 0;
    }
  }
}
