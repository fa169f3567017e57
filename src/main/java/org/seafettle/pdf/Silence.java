package org.seafettle.pdf;

import com.openhtmltopdf.util.Diagnostic;
import com.openhtmltopdf.util.XRLogger;
import java.util.logging.Level;

/** Keeps the library from writing to the console; its diagnostics are still delivered. */
final class Silence implements XRLogger {

  @Override
  public void log(String where, Level level, String message) {}

  @Override
  public void log(String where, Level level, String message, Throwable thrown) {}

  @Override
  public void setLevel(String logger, Level level) {}

  @Override
  public boolean isLogLevelEnabled(Diagnostic diagnostic) {
    return false;
  }
}
