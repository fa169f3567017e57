package org.seafettle.report;

import org.seafettle.assessment.Result;

/**
 * A finding named elsewhere.
 *
 * @param number its number
 * @param anchor where it stands
 */
public record Reference(String number, String anchor) {

  static Reference to(Result finding) {
    var number = Integer.toString(finding.number().orElseThrow());
    return new Reference(number, "finding-" + number);
  }
}
