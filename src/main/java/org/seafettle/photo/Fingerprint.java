package org.seafettle.photo;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * The SHA-256 (FIPS 180-4) of a file's bytes: by it anyone can see that a file is the one that was
 * looked at.
 *
 * @param hex 64 hexadecimal digits in lower case
 */
public record Fingerprint(String hex) {

  public Fingerprint {
    if (!hex.matches("[0-9a-f]{64}")) {
      throw new IllegalArgumentException("not a SHA-256: " + hex);
    }
  }

  public static Fingerprint of(byte[] bytes) {
    try {
      var digest = MessageDigest.getInstance("SHA-256").digest(bytes);
      return new Fingerprint(HexFormat.of().formatHex(digest));
    } catch (NoSuchAlgorithmException impossible) {
      throw new AssertionError("every Java platform has SHA-256", impossible);
    }
  }

  /** The first twelve digits in groups of four, as printed under a picture. */
  public String shortHash() {
    return hex.substring(0, 4) + " " + hex.substring(4, 8) + " " + hex.substring(8, 12);
  }
}
