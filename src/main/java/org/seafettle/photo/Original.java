package org.seafettle.photo;

import java.io.IOException;
import org.seafettle.problem.Place;
import org.seafettle.problem.Refused;

/**
 * A picture as it came from the camera: looked at, never changed.
 *
 * <p>Reading it takes the file apart and checks that all of it is there, without decoding a pixel;
 * so all pictures of a survey can be checked before any is printed. What only decoding shows is
 * refused by {@link Print#of}.
 */
public final class Original {

  /** The largest file that is read, in bytes. */
  public static final int MOST_BYTES = 64 << 20;

  /** The largest picture that is read, in pixels: a hundred megapixels. */
  public static final long MOST_PIXELS = 100_000_000;

  /** The shortest edge on which anything can be seen, in pixels. */
  public static final int SHORTEST_EDGE = 16;

  private static final String CAMERA_FILE = "Name the file as it came from the camera.";

  private final Place place;
  private final String name;
  private final Container container;
  private final Size stored;
  private final Fingerprint fingerprint;
  private final Metadata metadata;

  private Original(
      Place place, String name, Container container, Size stored, Fingerprint fingerprint) {
    this.place = place;
    this.name = name;
    this.container = container;
    this.stored = stored;
    this.fingerprint = fingerprint;
    this.metadata = container.exif().map(ExifBlock::read).orElse(Metadata.NONE);
  }

  /**
   * Reads a picture; its format is told by its content. Damaged metadata never refuses a good
   * picture: see {@link Metadata#readable}.
   *
   * @param bytes the whole file
   * @param place where the picture is named, for what is refused
   * @param name the picture's name as a reader knows it
   * @throws Refused where the file is no picture that can be read, is cut short or damaged, is
   *     larger than {@link #MOST_BYTES} or {@link #MOST_PIXELS}, or has an edge shorter than {@link
   *     #SHORTEST_EDGE}
   */
  public static Original read(byte[] bytes, Place place, String name) {
    try {
      var container = Container.open(formatOf(bytes), bytes);
      var stored = checked(measured(container));
      return new Original(place, name, container, stored, Fingerprint.of(bytes));
    } catch (Refused refused) {
      throw at(place, refused);
    }
  }

  private static Format formatOf(byte[] bytes) {
    if (bytes.length == 0) {
      throw Refused.because("The file is empty.", "Copy it again from the camera.");
    }
    if (bytes.length > MOST_BYTES) {
      throw Refused.because(
          "The file has " + bytes.length / (1 << 20) + " MiB; at most 64 MiB are read.",
          "Save the picture as JPEG with fewer pixels.");
    }
    return Format.announcedBy(bytes)
        .orElseThrow(
            () ->
                Foreign.announcedBy(bytes)
                    .map(foreign -> new Refused(foreign.problem()))
                    .orElseGet(Original::noPicture));
  }

  private static Refused noPicture() {
    return Refused.because(
        "The file is not a picture; " + Format.ALL_READ + " pictures are read.", CAMERA_FILE);
  }

  private static Size measured(Container container) {
    try (var decoder = Decoder.of(container)) {
      return decoder.size();
    } catch (IOException | RuntimeException damaged) {
      throw Container.damaged(container.format());
    }
  }

  private static Size checked(Size size) {
    if (size.pixels() > MOST_PIXELS) {
      throw Refused.because(
          "The picture has " + size + " pixels; at most 100 megapixels are read.",
          "Save it with fewer pixels.");
    }
    if (size.shortestEdge() < SHORTEST_EDGE) {
      throw Refused.because(
          "The picture has " + size + " pixels, too few to show anything.", CAMERA_FILE);
    }
    return size;
  }

  static Refused at(Place place, Refused refused) {
    return new Refused(refused.problems().stream().map(problem -> problem.at(place)).toList());
  }

  public Place place() {
    return place;
  }

  /** As a reader knows it. */
  public String name() {
    return name;
  }

  public Format format() {
    return container.format();
  }

  /** Of the file's bytes, as they came. */
  public Fingerprint fingerprint() {
    return fingerprint;
  }

  public Metadata metadata() {
    return metadata;
  }

  /** The size of the picture standing upright. */
  public Size size() {
    return metadata.orientation().upright(stored);
  }

  /** The size as stored, before {@link Metadata#orientation} is applied. */
  Size stored() {
    return stored;
  }

  Container container() {
    return container;
  }
}
