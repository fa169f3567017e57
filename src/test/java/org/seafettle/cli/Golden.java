package org.seafettle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** What the program is known to say, kept as files. */
final class Golden {

  private static final Path FOLDER = Path.of("src/test/resources/org/seafettle/cli/golden");

  private Golden() {}

  static void assertSays(String name, String said) throws IOException {
    hold(FOLDER.resolve(name + ".txt"), said, "mvn test");
  }

  /**
   * Compares with any file.
   *
   * @param command what to run, with the property that writes the file anew, if the change is meant
   */
  static void hold(Path file, String said, String command) throws IOException {
    if (Boolean.getBoolean("seafettle.rebaseline")) {
      Files.createDirectories(file.getParent());
      Files.writeString(file, said);
    }
    assertThat(Files.exists(file) ? Files.readString(file) : "")
        .as("%s is stale; if it may change: %s -Dseafettle.rebaseline=true", file, command)
        .isEqualTo(said);
  }
}
