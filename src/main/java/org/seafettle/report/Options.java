package org.seafettle.report;

/**
 * How a report is set.
 *
 * @param units in which its numbers are told
 * @param paper the sheet
 * @param draft whether every page says that it is a draft
 */
public record Options(Units units, Paper paper, boolean draft) {

  public static final Options USUAL = new Options(Units.AS_RECORDED, Paper.A4, false);
}
