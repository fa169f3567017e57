package org.seafettle.house;

import java.util.List;
import java.util.Optional;

/**
 * A yard or a surveyor's office, as its reports show it.
 *
 * @param name as it signs
 * @param address line by line
 * @param phone as it is dialled
 * @param mail its address
 * @param logo beside its name
 * @param accent for rules and its name, never for what is dangerous
 * @param closing what it says before the signature, paragraph by paragraph
 */
public record House(
    String name,
    List<String> address,
    Optional<String> phone,
    Optional<String> mail,
    Optional<Logo> logo,
    Optional<Accent> accent,
    List<String> closing) {

  public House {
    address = List.copyOf(address);
    closing = List.copyOf(closing);
  }
}
