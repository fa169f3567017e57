package org.seafettle.samples;

/**
 * What a shape is made of.
 *
 * @param rgb its colour
 * @param opacity 0 to 1
 * @param edge how it ends
 * @param surface how it takes the light
 */
record Coat(int rgb, double opacity, Edge edge, Surface surface) {

  /**
   * @param soft width of the edge, in pixels
   * @param ragged 0 to 1: how much noise breaks the edge
   * @param scale of that noise, in pixels
   */
  record Edge(double soft, double ragged, double scale) {}

  /**
   * @param round width of the rounding, in pixels
   * @param gloss 0 to 1
   * @param metal 0 to 1: how much it mirrors its surroundings
   * @param bump height of the roughness, in pixels
   * @param mottle 0 to 1: how uneven the colour is
   * @param scale of roughness and mottle, in pixels
   */
  record Surface(
      double round, double gloss, double metal, double bump, double mottle, double scale) {}

  static Coat of(int rgb) {
    return new Coat(rgb, 1, new Edge(0, 0, 40), new Surface(0, 0, 0, 0, 0, 60));
  }

  static Coat rubber(int rgb, double round) {
    return of(rgb).round(round).gloss(0.12).rough(1.0, 14).mottled(0.12);
  }

  static Coat steel(double round) {
    return of(0xa3a9ae).round(round).gloss(0.38).metal(0.55).rough(0.4, 30);
  }

  static Coat castIron(int rgb, double round) {
    return of(rgb).round(round).gloss(0.10).rough(2.6, 13).mottled(0.2);
  }

  static Coat plastic(int rgb, double round) {
    return of(rgb).round(round).gloss(0.30).mottled(0.05);
  }

  static Coat liquid(int rgb, double opacity) {
    return of(rgb).opacity(opacity).round(12).gloss(0.6);
  }

  /** A film without thickness: rust, soot, a stain. */
  static Coat stain(int rgb, double opacity, double ragged) {
    return of(rgb).opacity(opacity).soft(8).ragged(ragged, 26).mottled(0.35);
  }

  Coat opacity(double share) {
    return new Coat(rgb, share, edge, surface);
  }

  Coat soft(double pixels) {
    return new Coat(rgb, opacity, new Edge(pixels, edge.ragged, edge.scale), surface);
  }

  Coat ragged(double share, double scale) {
    return new Coat(rgb, opacity, new Edge(edge.soft, share, scale), surface);
  }

  Coat round(double pixels) {
    var s = surface;
    return with(new Surface(pixels, s.gloss, s.metal, s.bump, s.mottle, s.scale));
  }

  Coat gloss(double share) {
    var s = surface;
    return with(new Surface(s.round, share, s.metal, s.bump, s.mottle, s.scale));
  }

  Coat metal(double share) {
    var s = surface;
    return with(new Surface(s.round, s.gloss, share, s.bump, s.mottle, s.scale));
  }

  Coat rough(double bump, double scale) {
    var s = surface;
    return with(new Surface(s.round, s.gloss, s.metal, bump, s.mottle, scale));
  }

  Coat mottled(double share) {
    var s = surface;
    return with(new Surface(s.round, s.gloss, s.metal, s.bump, share, s.scale));
  }

  private Coat with(Surface other) {
    return new Coat(rgb, opacity, edge, other);
  }
}
