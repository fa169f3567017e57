package org.seafettle.photo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Something a reader of the report should know about a picture as evidence. */
public sealed interface Remark {

  /** The camera's notes are damaged, so neither time nor orientation is known. */
  record MetadataUnreadable() implements Remark {}

  /** The camera wrote down no date, or something that is none. */
  record TimeUnknown() implements Remark {}

  /** The camera's clock is known but not the zone it was set to. */
  record ZoneUnknown() implements Remark {}

  /**
   * Taken on another day than the survey's.
   *
   * @param taken the day by the camera's clock
   * @param survey the day of the survey
   */
  record OtherDay(LocalDate taken, LocalDate survey) implements Remark {}

  /** All remarks on a picture of a survey made on a day; the dates are compared as local dates. */
  static List<Remark> on(Metadata metadata, LocalDate survey) {
    if (!metadata.readable()) {
      return List.of(new MetadataUnreadable());
    }
    if (metadata.taken().isEmpty()) {
      return List.of(new TimeUnknown());
    }
    var taken = metadata.taken().get();
    var remarks = new ArrayList<Remark>();
    if (!taken.clock().toLocalDate().equals(survey)) {
      remarks.add(new OtherDay(taken.clock().toLocalDate(), survey));
    }
    if (taken.zone().isEmpty()) {
      remarks.add(new ZoneUnknown());
    }
    return List.copyOf(remarks);
  }
}
