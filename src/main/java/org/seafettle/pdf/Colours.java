package org.seafettle.pdf;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.util.Arrays;

/** The colour space that every colour in the document is meant in: sRGB. */
final class Colours {

  /** The field of the header that names the maker's platform, ICC.1:2010, 7.2 (from memory). */
  private static final int PLATFORM = 40;

  private Colours() {}

  /** The same bytes from every JDK: they differ in the platform alone, which may be left empty. */
  static byte[] profile() {
    var profile = ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();
    Arrays.fill(profile, PLATFORM, PLATFORM + 4, (byte) 0);
    return profile;
  }
}
