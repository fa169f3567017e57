package org.seafettle.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

/** Where the program starts. */
public final class Main {

  private Main() {}

  public static void main(String[] arguments) {
    // UTF-8 whatever the machine is set to: units and names are not all in its code page
    var out = writer(FileDescriptor.out);
    var err = writer(FileDescriptor.err);
    System.exit(new Program(new Console(out, err, System.console() != null)).run(arguments));
  }

  private static PrintWriter writer(FileDescriptor descriptor) {
    return new PrintWriter(new FileOutputStream(descriptor), true, StandardCharsets.UTF_8);
  }
}
