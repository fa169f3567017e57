package org.seafettle.formula.engine;

import java.time.YearMonth;
import java.util.regex.Pattern;
import org.seafettle.formula.DoesNotHold;
import org.seafettle.formula.Validity;
import org.seafettle.problem.Refused;

/**
 * A hull identification number of the form in use since August 1984: 33 CFR 181.25. Three
 * characters of maker code, five of serial number (without I, O and Q), a letter for the month from
 * A for January, the last digit of the year of certification, and two digits of the model year.
 *
 * @param maker the maker's code
 * @param serial the serial number
 * @param certified month in which the boat was certified
 * @param modelYear four digits
 */
public record HullNumber(String maker, String serial, YearMonth certified, int modelYear) {

  private static final Pattern FORM =
      Pattern.compile("(?:US-?)?([A-Z][A-Z0-9]{2})([A-HJ-NPR-Z0-9]{5})([A-L])(\\d)(\\d{2})");

  /** The form began with model year 1984. */
  private static final int FIRST_MODEL_YEAR = 84;

  /**
   * @param written with capital letters, a leading {@code US-} allowed
   * @throws Refused when it is not of this form
   */
  public static HullNumber parse(String written) {
    var parts = FORM.matcher(written.strip());
    if (!parts.matches()) {
      throw invalid(written);
    }
    int twoDigits = Integer.parseInt(parts.group(5));
    int modelYear = twoDigits + (twoDigits >= FIRST_MODEL_YEAR ? 1900 : 2000);
    int year = certifiedYear(modelYear, parts.group(4).charAt(0) - '0', written);
    int month = parts.group(3).charAt(0) - 'A' + 1;
    return new HullNumber(parts.group(1), parts.group(2), YearMonth.of(year, month), modelYear);
  }

  /**
   * Years from the model year to the year in which an engine aboard was made.
   *
   * @param made from 1900
   * @param today the year of the look, the last that can be
   */
  public double yearsToEngineOf(double made, int today) {
    return Validity.within("A year of an engine", made, 1900, today, "") - modelYear;
  }

  /** A model year begins in the summer before: certified in that year or the one before. */
  private static int certifiedYear(int modelYear, int lastDigit, String written) {
    for (int year = modelYear; year >= modelYear - 1; year--) {
      if (year % 10 == lastDigit) {
        return year;
      }
    }
    throw invalid(written);
  }

  private static Refused invalid(String written) {
    return DoesNotHold.because(
        "hull-number-form",
        "\"" + written + "\" is not a hull identification number of the form since 1984.",
        "Copy it again from the transom: 12 characters, such as XYZ12345D404; give an older or"
            + " foreign number as a note.");
  }
}
