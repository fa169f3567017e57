package org.seafettle.report;

/**
 * A photograph on a page.
 *
 * @param name by which the picture is asked for
 * @param says what it shows, for who cannot see it
 * @param number such as {@code Photograph 3}
 * @param caption what it shows, and what its marks are
 * @param taken when, and by which clock, a sentence
 * @param file the name of the file that it came from
 * @param hash the beginning of its SHA-256
 * @param tall whether it is higher than wide
 */
public record PhotoPart(
    String name,
    String says,
    String number,
    String caption,
    String taken,
    String file,
    String hash,
    boolean tall) {}
