package org.seafettle.yard;

/** What a season keeps of one survey: no page and no photograph. */
public sealed interface Entry permits Surveyed, Faulty {

  /** The name of the folder or archive that the survey came in; unique in a season. */
  String source();
}
