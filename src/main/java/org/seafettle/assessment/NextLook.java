package org.seafettle.assessment;

import org.seafettle.catalogue.Subsystem;

/**
 * An unseen check that is worth a look.
 *
 * @param result the check
 * @param subsystem in which it counts
 * @param raisesLowBy by how much the index at worst would rise if all were well
 */
public record NextLook(Result result, Subsystem subsystem, double raisesLowBy) {}
