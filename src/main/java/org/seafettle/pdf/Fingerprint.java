package org.seafettle.pdf;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A number for all that goes into a document, from which the identifier of the file is made. */
final class Fingerprint {

  private final MessageDigest digest;

  private Fingerprint() {
    try {
      digest = MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e); // every Java has it
    }
  }

  static long of(
      String xhtml, Map<String, byte[]> pictures, List<Attachment> attachments, Metadata metadata) {
    var fingerprint = new Fingerprint();
    fingerprint.add(xhtml);
    new TreeMap<>(pictures).forEach(fingerprint::add);
    attachments.forEach(
        attachment -> {
          fingerprint.add(attachment.name(), attachment.content());
          fingerprint.add(attachment.description());
        });
    fingerprint.add(metadata.toString());
    return ByteBuffer.wrap(fingerprint.digest.digest()).getLong();
  }

  private void add(String name, byte[] content) {
    add(name);
    add(content);
  }

  private void add(String text) {
    add(text.getBytes(StandardCharsets.UTF_8));
  }

  /** With the length before it, so that no two inputs run together into one. */
  private void add(byte[] bytes) {
    digest.update(ByteBuffer.allocate(Integer.BYTES).putInt(0, bytes.length));
    digest.update(bytes);
  }
}
