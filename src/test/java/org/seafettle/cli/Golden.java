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
    var file = FOLDER.resolve(name + ".txt");
    if (Boolean.getBoolean("seafettle.rebaseline")) {
      Files.createDirectories(FOLDER);
      Files.writeString(file, said);
    }
    assertThat(said)
        .as("what stands in %s; if it may change: mvn test -Dseafettle.rebaseline=true", file)
        .isEqualTo(Files.readString(file));
  }
}
