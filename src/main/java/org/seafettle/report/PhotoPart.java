package org.seafettle.report;

/**
 * A photograph on a page.
 *
 * @param name by which the picture is asked for
 * @param says what it shows, for who cannot see it
 * @param number such as {@code Photograph 3}
 * @param caption what it shows, and what its marks are
 * @param evidence when it was taken, the file it came from, the beginning of its hash
 * @param tall whether it is higher than wide
 */
public record PhotoPart(
    String name, String says, String number, String caption, String evidence, boolean tall) {}
