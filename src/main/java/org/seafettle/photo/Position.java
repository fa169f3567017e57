package org.seafettle.photo;

/**
 * Where a picture was taken, by the camera.
 *
 * @param latitude degrees north of the equator, -90 to 90
 * @param longitude degrees east of Greenwich, -180 to 180
 */
public record Position(double latitude, double longitude) {

  public Position {
    if (!(Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180)) {
      throw new IllegalArgumentException("no place on earth: " + latitude + ", " + longitude);
    }
  }
}
