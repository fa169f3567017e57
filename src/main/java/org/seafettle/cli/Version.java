package org.seafettle.cli;

import picocli.CommandLine.IVersionProvider;

/** The program's version, from its jar. */
final class Version implements IVersionProvider {

  static String text() {
    var version = Version.class.getPackage().getImplementationVersion();
    return version == null ? "unreleased" : version;
  }

  @Override
  public String[] getVersion() {
    return new String[] {"seafettle " + text()};
  }
}
