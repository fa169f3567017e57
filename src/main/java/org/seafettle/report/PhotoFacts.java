package org.seafettle.report;

import java.util.List;
import org.seafettle.photo.Fingerprint;
import org.seafettle.photo.Metadata;
import org.seafettle.photo.Original;
import org.seafettle.photo.Remark;
import org.seafettle.photo.Size;
import org.seafettle.survey.Survey;

/**
 * What is known of a photograph as evidence.
 *
 * @param fingerprint of the file as it came
 * @param size of the picture as it came, upright
 * @param metadata what the camera wrote down
 * @param remarks what a reader has to know
 */
public record PhotoFacts(
    Fingerprint fingerprint, Size size, Metadata metadata, List<Remark> remarks) {

  public PhotoFacts {
    remarks = List.copyOf(remarks);
  }

  public static PhotoFacts of(Original original, Survey survey) {
    return new PhotoFacts(
        original.fingerprint(),
        original.size(),
        original.metadata(),
        Remark.on(original.metadata(), survey.occasion().date()));
  }
}
