package org.seafettle.survey;

import java.util.List;
import java.util.Optional;

/**
 * A photograph that goes with a survey.
 *
 * @param id the word by which findings name it
 * @param file its path within the survey's folder
 * @param caption what it shows
 * @param marks places to look at
 */
public record Photo(String id, String file, Optional<String> caption, List<Mark> marks) {

  public Photo {
    marks = List.copyOf(marks);
  }

  /**
   * A place in a photograph.
   *
   * @param x from the left edge, 0 to 1 of the width, as the picture is seen upright
   * @param y from the upper edge, 0 to 1 of the height
   * @param shape ring or arrow
   * @param says what is to be seen there
   */
  public record Mark(double x, double y, Shape shape, String says) {

    public Mark {
      if (!(x >= 0 && x <= 1 && y >= 0 && y <= 1)) {
        throw new IllegalArgumentException("a mark outside the picture: " + x + ", " + y);
      }
    }

    /** How a mark is drawn. */
    public enum Shape implements Word {
      RING,
      ARROW;

      @Override
      public String word() {
        return Word.of(this);
      }
    }
  }
}
