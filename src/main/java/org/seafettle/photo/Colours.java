package org.seafettle.photo;

import java.awt.Color;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.awt.image.ColorConvertOp;
import java.awt.image.ColorModel;
import java.awt.image.ComponentColorModel;
import java.awt.image.IndexColorModel;
import java.util.Arrays;
import java.util.Optional;

/** Brings pictures to eight bits of sRGB on a white ground. */
final class Colours {

  private static final int WHITE = 255;

  private Colours() {}

  static BufferedImage srgb(BufferedImage image, Optional<ICC_Profile> profile) {
    return profile.map(found -> srgb(labelled(image, found))).orElseGet(() -> srgb(image));
  }

  static BufferedImage srgb(BufferedImage image) {
    var model = image.getColorModel();
    if (model instanceof IndexColorModel) {
      return onWhite(image);
    }
    if (model.getColorSpace().getType() == ColorSpace.TYPE_GRAY) {
      return grey(image);
    }
    if (model.getColorSpace().isCS_sRGB()) {
      return isPlain(image) ? image : onWhite(image);
    }
    var converted = empty(image, BufferedImage.TYPE_INT_ARGB);
    return onWhite(new ColorConvertOp(null).filter(image, converted));
  }

  private static boolean isPlain(BufferedImage image) {
    return image.getType() == BufferedImage.TYPE_INT_RGB
        || image.getType() == BufferedImage.TYPE_3BYTE_BGR;
  }

  /** The same pixels, said to be colours of the profile. */
  private static BufferedImage labelled(BufferedImage image, ICC_Profile profile) {
    var model = image.getColorModel();
    if (model instanceof IndexColorModel) {
      return labelled(onWhite(image), profile);
    }
    if (model instanceof ComponentColorModel) {
      var space = new ICC_ColorSpace(profile);
      var labelled =
          new ComponentColorModel(
              space,
              model.hasAlpha(),
              model.isAlphaPremultiplied(),
              model.getTransparency(),
              model.getTransferType());
      return new BufferedImage(labelled, image.getRaster(), model.isAlphaPremultiplied(), null);
    }
    var bytes = empty(image, BufferedImage.TYPE_3BYTE_BGR);
    bytes.createGraphics().drawImage(image, 0, 0, null);
    return labelled(bytes, profile);
  }

  private static BufferedImage onWhite(BufferedImage image) {
    var flat = empty(image, BufferedImage.TYPE_INT_RGB);
    var pen = flat.createGraphics();
    pen.drawImage(image, 0, 0, Color.WHITE, null);
    pen.dispose();
    return flat;
  }

  /**
   * Greys keep their stored value. The platform would take them for amounts of light and make them
   * paler.
   */
  private static BufferedImage grey(BufferedImage image) {
    var flat = empty(image, BufferedImage.TYPE_INT_RGB);
    int width = image.getWidth();
    var greys = new int[width];
    var alphas = new int[width];
    for (int y = 0; y < image.getHeight(); y++) {
      readRow(image, y, greys, alphas);
      for (int x = 0; x < width; x++) {
        int grey = (greys[x] * alphas[x] + WHITE * (255 - alphas[x]) + 127) / 255;
        greys[x] = grey * 0x010101;
      }
      flat.setRGB(0, y, width, 1, greys, 0, width);
    }
    return flat;
  }

  private static void readRow(BufferedImage image, int y, int[] greys, int[] alphas) {
    var model = image.getColorModel();
    image.getRaster().getSamples(0, y, greys.length, 1, 0, greys);
    scaleTo255(greys, model, 0);
    if (model.hasAlpha()) {
      image.getRaster().getSamples(0, y, alphas.length, 1, 1, alphas);
      scaleTo255(alphas, model, 1);
    } else {
      Arrays.fill(alphas, 255);
    }
  }

  private static void scaleTo255(int[] samples, ColorModel model, int component) {
    long most = (1L << model.getComponentSize(component)) - 1;
    for (int x = 0; x < samples.length; x++) {
      samples[x] = (int) ((samples[x] * 255L + most / 2) / most);
    }
  }

  private static BufferedImage empty(BufferedImage like, int type) {
    return new BufferedImage(like.getWidth(), like.getHeight(), type);
  }
}
