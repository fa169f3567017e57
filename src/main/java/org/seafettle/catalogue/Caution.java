package org.seafettle.catalogue;

/**
 * A usual caution, printed beside the action that can hurt.
 *
 * @param id the word by which the catalogue's data names it; among cautions of one name the first
 *     that covers is meant
 * @param scope for what it is true
 * @param text what it says
 */
public record Caution(String id, Scope scope, String text) {}
