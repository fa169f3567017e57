package org.seafettle.json;

import java.nio.charset.StandardCharsets;

/**
 * One file of the catalogue's data.
 *
 * @param file its name, such as {@code oil.yaml}; {@code common.yaml} holds what all share, the
 *     others are named by their subsystem
 * @param content YAML, in UTF-8
 */
public record CatalogueText(String file, byte[] content) {

  public CatalogueText {
    content = content.clone();
  }

  public static CatalogueText of(String file, String content) {
    return new CatalogueText(file, content.getBytes(StandardCharsets.UTF_8));
  }

  @Override
  public byte[] content() {
    return content.clone();
  }
}
