package org.seafettle.photo;

import java.awt.color.CMMException;
import java.awt.color.ICC_ColorSpace;
import java.awt.color.ICC_Profile;
import java.util.Optional;

/** Colour profiles (ISO 15076-1) that come with pictures. */
final class Profiles {

  /** Two steps of 255: less than anyone sees. */
  private static final float SAME = 2f / 255;

  private Profiles() {}

  /**
   * The profile in the bytes, if there is one that can be used for so many colour components and
   * that gives other colours than sRGB. Greys are taken as they are.
   */
  static Optional<ICC_Profile> unlikeSrgb(byte[] bytes, int components) {
    if (bytes.length == 0 || components < 3) {
      return Optional.empty();
    }
    try {
      var profile = ICC_Profile.getInstance(bytes);
      var space = new ICC_ColorSpace(profile);
      boolean fits = space.getNumComponents() == components;
      return fits && !isLikeSrgb(space) ? Optional.of(profile) : Optional.empty();
    } catch (IllegalArgumentException | CMMException unusable) {
      return Optional.empty();
    }
  }

  private static boolean isLikeSrgb(ICC_ColorSpace space) {
    boolean like = space.getNumComponents() == 3;
    for (int corner = 0; like && corner < 27; corner++) {
      var colour = new float[] {corner % 3 / 2f, corner / 3 % 3 / 2f, corner / 9 / 2f};
      like = isSame(colour, space.toRGB(colour));
    }
    return like;
  }

  private static boolean isSame(float[] one, float[] other) {
    return Math.abs(one[0] - other[0]) <= SAME
        && Math.abs(one[1] - other[1]) <= SAME
        && Math.abs(one[2] - other[2]) <= SAME;
  }
}
