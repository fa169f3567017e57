package org.seafettle.cli;

import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import org.seafettle.report.Paper;
import org.seafettle.report.Units;
import org.seafettle.survey.Word;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A closed set of words that an option takes; capital letters make no difference. */
abstract class Choices<E extends Enum<E> & Word> implements ITypeConverter<E>, Iterable<String> {

  private final Class<E> words;

  private Choices(Class<E> words) {
    this.words = words;
  }

  @Override
  public E convert(String written) {
    return Word.find(words, written.toLowerCase(Locale.ROOT))
        .orElseThrow(
            () ->
                new TypeConversionException(
                    "there is " + String.join(", ", all()) + ", but no \"" + written + "\""));
  }

  @Override
  public Iterator<String> iterator() {
    return all().iterator();
  }

  private List<String> all() {
    return Word.all(words);
  }

  /** The sheets. */
  static final class Papers extends Choices<Paper> {
    Papers() {
      super(Paper.class);
    }
  }

  /** The systems of units. */
  static final class OfUnits extends Choices<Units> {
    OfUnits() {
      super(Units.class);
    }
  }
}
