package org.seafettle.catalogue;

/**
 * A usual caution, printed beside the action that can hurt.
 *
 * @param id the word by which the catalogue's data names it
 * @param text what it says
 */
public record Caution(String id, String text) {}
