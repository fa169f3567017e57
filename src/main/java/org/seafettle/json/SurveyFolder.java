package org.seafettle.json;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.seafettle.problem.Refused;

/** The folder of a survey, on the disk or in a .zip. */
sealed interface SurveyFolder permits DiskFolder, ZipFolder {

  /** A picture from a camera has 5 to 30 MB; the photo package reads up to this. */
  int MOST_PHOTO_BYTES = 64 << 20;

  /** The survey file's name as it is told in faults: a name without the folders before it. */
  String fileName();

  /**
   * @throws Refused where it cannot be read
   */
  byte[] survey();

  /** The files in the folder, as paths with / between folders. */
  List<String> files();

  /** Why there is no such file to be read here; empty where there is. */
  Optional<Missing> missing(String file);

  /**
   * A file of the folder.
   *
   * @throws Refused where it cannot be read
   */
  byte[] read(String file);

  /** The folder of an earlier survey that lies within this one, where it cannot be on the disk. */
  Optional<SurveyFolder> packed(String path);

  /** Where a path that leaves the folder leads on the disk. */
  Path outside(String path);

  /**
   * Why a file cannot be read.
   *
   * @param fault what is wrong
   * @param remedy what to do
   */
  record Missing(String fault, String remedy) {}
}
