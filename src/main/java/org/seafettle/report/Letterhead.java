package org.seafettle.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.seafettle.house.Accent;
import org.seafettle.house.House;
import org.seafettle.house.Logo;

/**
 * The face of the house that a report comes from.
 *
 * @param name of the house
 * @param address in one line
 * @param reach telephone and mail in one line; empty where neither was given
 * @param accent its colour as CSS writes it; empty where it has none
 * @param logo its mark
 * @param closing what it says before the signature
 */
public record Letterhead(
    String name,
    String address,
    String reach,
    String accent,
    Optional<Mark> logo,
    List<String> closing) {

  /** The name by which a page asks for a logo of pixels. */
  public static final String PICTURE = "house-logo";

  /** A line of capitals, two lines of text: as high as the name beside it. */
  private static final double HEIGHT = 34;

  private static final double MOST_WIDTH = 150;

  public Letterhead {
    closing = List.copyOf(closing);
  }

  /**
   * A logo ready to be set.
   *
   * @param width on paper, in points
   * @param height on paper, in points
   * @param box what the drawing shows, as SVG writes it; empty for pixels
   * @param shapes of the drawing; none for pixels
   */
  public record Mark(String width, String height, String box, List<Logo.Shape> shapes) {

    public Mark {
      shapes = List.copyOf(shapes);
    }
  }

  static Letterhead of(House house) {
    var reach = new ArrayList<String>();
    house.phone().ifPresent(reach::add);
    house.mail().ifPresent(reach::add);
    return new Letterhead(
        house.name(),
        String.join(" · ", house.address()),
        String.join(" · ", reach),
        house.accent().map(Accent::written).orElse(""),
        house.logo().map(Letterhead::mark),
        house.closing());
  }

  private static Mark mark(Logo logo) {
    double height = Math.min(HEIGHT, MOST_WIDTH / logo.ratio());
    var wide = points(height * logo.ratio());
    return logo instanceof Logo.Drawing drawing
        ? new Mark(wide, points(height), box(drawing), drawing.shapes())
        : new Mark(wide, points(height), "", List.of());
  }

  private static String box(Logo.Drawing drawing) {
    return drawing.box().stream().map(Letterhead::points).collect(Collectors.joining(" "));
  }

  private static String points(double number) {
    return String.format(Locale.ROOT, "%.2f", number);
  }
}
