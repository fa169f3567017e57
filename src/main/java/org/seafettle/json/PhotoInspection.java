package org.seafettle.json;

import org.seafettle.problem.Place;

/** Looks into a photograph's file while its survey is read, so that all faults are told at once. */
@FunctionalInterface
public interface PhotoInspection {

  /** For those who only want to know that the files are there. */
  PhotoInspection NONE = (file, bytes, place) -> {};

  /**
   * @param file its path within the survey's folder
   * @param bytes the file
   * @param place where the survey names it
   * @throws org.seafettle.problem.Refused where it cannot be used
   */
  void inspect(String file, byte[] bytes, Place place);
}
