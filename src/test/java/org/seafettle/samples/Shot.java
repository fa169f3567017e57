package org.seafettle.samples;

import java.util.function.Consumer;

/**
 * A photograph that the samples contain.
 *
 * @param file where, below {@code sample-surveys}
 * @param upright whether it is higher than wide
 * @param scene what it shows
 * @param taken what its camera wrote beside it
 */
record Shot(String file, boolean upright, Consumer<Canvas> scene, Taken taken) {

  private static final int LONG_SIDE = 1600;
  private static final int SHORT_SIDE = 1200;

  Canvas drawn() {
    int width = upright ? SHORT_SIDE : LONG_SIDE;
    var canvas = new Canvas(width, LONG_SIDE + SHORT_SIDE - width, file.hashCode());
    scene.accept(canvas);
    return canvas;
  }

  String kind() {
    return file.substring(file.lastIndexOf('.') + 1);
  }
}
