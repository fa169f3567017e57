package org.seafettle.pdf;

/**
 * What an attached file is to the document: the values of {@code AFRelationship}, ISO 19005-3:2012,
 * annex E (from memory, unverified).
 */
public enum Relationship {
  /** The document was made from it. */
  SOURCE("Source"),
  /** The data behind what the document shows. */
  DATA("Data"),
  /** More on the same matter. */
  SUPPLEMENT("Supplement");

  private final String name;

  Relationship(String name) {
    this.name = name;
  }

  /** As it is written in the file. */
  String pdfName() {
    return name;
  }
}
