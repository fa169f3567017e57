package org.seafettle.pdf;

/**
 * A file that travels inside the document.
 *
 * @param name its file name, without a folder
 * @param mediaType such as {@code application/json}
 * @param description one line for the reader's list of attachments
 * @param relationship what it is to the document
 * @param content its bytes; not copied, so they must not change afterwards
 */
public record Attachment(
    String name, String mediaType, String description, Relationship relationship, byte[] content) {

  public Attachment {
    if (name.isBlank() || name.contains("/") || name.contains("\\")) {
      throw new IllegalArgumentException("an attachment is named without a folder: " + name);
    }
    if (!mediaType.matches("[a-z]+/[a-z0-9.+-]+")) {
      throw new IllegalArgumentException("not a media type: " + mediaType);
    }
    if (description.isBlank()) {
      throw new IllegalArgumentException("an attachment needs a description: " + name);
    }
  }
}
