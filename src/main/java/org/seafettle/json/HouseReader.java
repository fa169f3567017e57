package org.seafettle.json;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.seafettle.house.Accent;
import org.seafettle.house.House;
import org.seafettle.house.Logo;
import org.seafettle.problem.Place;
import org.seafettle.problem.Problem;
import org.seafettle.problem.Refused;

/** Reads a house.json, or the folder that holds one, with the logo beside it. */
public final class HouseReader {

  static final String RESOURCE = "/org/seafettle/schema/house.schema.json";

  private static final String HOUSE = "house.json";

  private final IntPredicate printable;

  /**
   * @param printable whether the fonts at hand have a glyph for a code point
   */
  public HouseReader(IntPredicate printable) {
    this.printable = printable;
  }

  /**
   * @throws Refused with every fault of the file and of its logo
   */
  public House read(Path path) {
    var file = Files.isDirectory(path) ? path.resolve(HOUSE) : path;
    var document = DocumentParser.parse(file.toString(), bytes(file));
    var faults = new Faults(document);
    var root = Field.root(faults, document.root());
    var folder = Optional.ofNullable(file.getParent()).orElse(Path.of(""));
    var accent = root.child("accent");
    var logo = root.child("logo");
    var house =
        new House(
            root.child("name").text().orElse("?"),
            lines(root.child("address")),
            root.child("phone").text(),
            root.child("mail").text(),
            logo.text().flatMap(name -> told(logo, () -> logo(logo, folder, name))),
            accent.text().flatMap(written -> told(accent, () -> Accent.of(written))),
            lines(root.child("closing")));
    var schema = SurveySchema.resource(RESOURCE);
    var words = new SchemaFaults(schema, faults);
    SurveySchema.load(schema).validate(document.root()).forEach(words::blame);
    new TextChecks(faults, printable).look("", document.root());
    Refused.ifAny(faults.inOrder());
    return house;
  }

  private static byte[] bytes(Path file) {
    if (!Files.isRegularFile(file)) {
      throw new Refused(
          new Problem(
              Place.file(file.toString()),
              "There is no such file.",
              "Name a house.json, or the folder that holds one."));
    }
    return new DiskFolder(Optional.ofNullable(file.getParent()).orElse(Path.of("")), name(file))
        .survey();
  }

  private static String name(Path file) {
    return file.getFileName().toString();
  }

  /** One text, or several, each a line or a paragraph. */
  private static List<String> lines(Field field) {
    return field.oneOrMore().stream().map(Field::text).flatMap(Optional::stream).toList();
  }

  /** What a field says; where it is refused, the field is blamed for the first fault of each. */
  private static <T> Optional<T> told(Field field, Supplier<T> read) {
    try {
      return Optional.of(read.get());
    } catch (Refused refused) {
      if (refused.problems().stream().allMatch(p -> p.place().equals(Place.NOWHERE))) {
        refused.problems().forEach(p -> field.blame(p.fault(), p.remedy()));
      } else {
        field.faults().addAll(refused.problems());
      }
      return Optional.empty();
    }
  }

  private Logo logo(Field field, Path folder, String name) {
    if (!name.matches("[^/\\\\:]+") || name.startsWith(".")) {
      throw Refused.because(
          "\"" + name + "\" is no name of a file beside house.json.",
          "Put the logo there, and write its name alone.");
    }
    var file = folder.resolve(name);
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      throw Refused.because(
          "There is no file \"" + name + "\" beside house.json.",
          Hints.words(name, beside(folder)));
    }
    try (var in = Files.newInputStream(file)) {
      var bytes = in.readNBytes(Logo.MOST_BYTES + 1);
      if (bytes.length > Logo.MOST_BYTES) {
        throw Refused.because("The logo is larger than 2 MB.", "Save it with fewer pixels.");
      }
      var logo = Logo.read(bytes, Place.file(file.toString()));
      letters(logo, field);
      return logo;
    } catch (IOException e) {
      throw Refused.because("The logo cannot be read.", "Check that it may be opened.");
    }
  }

  private static List<String> beside(Path folder) {
    try (var files = Files.list(folder.toString().isEmpty() ? Path.of(".") : folder)) {
      return files.map(HouseReader::name).filter(n -> n.matches("(?i).*\\.(svg|png)")).toList();
    } catch (IOException e) {
      return List.of();
    }
  }

  /** Text in a drawing is set in the typefaces of the report. */
  private void letters(Logo logo, Field field) {
    if (logo instanceof Logo.Drawing drawing) {
      texts(drawing.shapes())
          .flatMap(text -> text.codePoints().boxed())
          .filter(c -> !Character.isWhitespace(c) && !printable.test(c))
          .findFirst()
          .ifPresent(
              c ->
                  field.blame(
                      "The report's typeface has no character \""
                          + Character.toString(c)
                          + "\", which stands in the logo.",
                      "Turn the text of the drawing into paths."));
    }
  }

  private static Stream<String> texts(List<Logo.Shape> shapes) {
    return shapes.stream()
        .flatMap(shape -> Stream.concat(Stream.of(shape.text()), texts(shape.parts())));
  }
}
