package org.seafettle.assessment;

import org.seafettle.catalogue.Outcome;
import org.seafettle.formula.conformity.Verdict;

/**
 * A reading against the nearest limit, in the words of ILAC-G8:09/2019.
 *
 * @param limit the limit, in the unit of the reading
 * @param verdict pass, conditional pass, conditional fail or fail
 * @param conformity probability that the true value lies on the milder side, after JCGM 106:2012
 * @param otherSide what the reading would be on the other side
 */
public record Comparison(double limit, Verdict verdict, double conformity, Outcome otherSide) {}
