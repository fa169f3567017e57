package org.seafettle.bench;

import java.nio.file.Path;
import java.util.Arrays;
import org.seafettle.cli.Pipe;
import org.seafettle.html.Templates;
import org.seafettle.report.Options;

/** Many reports in one process on one thread: says the median milliseconds of the last ones. */
public final class WarmLoop {

  private WarmLoop() {}

  public static void main(String[] arguments) {
    int warmUp = 150;
    var times = new double[30];
    var pipe = new Pipe(Templates.supplied(), "en", Options.USUAL, false);
    for (int i = -warmUp; i < times.length; i++) {
      long start = System.nanoTime();
      pipe.make(Path.of(arguments[0]), step -> {});
      if (i >= 0) {
        times[i] = (System.nanoTime() - start) / 1e6;
      }
    }
    Arrays.sort(times);
    System.out.println(times[times.length / 2]);
  }
}
