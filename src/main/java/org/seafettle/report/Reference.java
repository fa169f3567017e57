package org.seafettle.report;

import org.seafettle.assessment.Result;

/**
 * A finding named elsewhere.
 *
 * @param number its number
 * @param anchor where it stands
 * @param title what was found on what
 */
public record Reference(String number, String anchor, String title) {

  static Reference to(Manuscript m, Result finding) {
    var number = Integer.toString(finding.number().orElseThrow());
    return new Reference(number, "finding-" + number, Phrases.capital(m.headline(finding)));
  }
}
