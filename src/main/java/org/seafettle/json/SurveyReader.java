package org.seafettle.json;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.regex.Pattern;
import org.seafettle.catalogue.Catalogue;
import org.seafettle.problem.Place;
import org.seafettle.problem.Problem;
import org.seafettle.problem.Refused;
import org.seafettle.survey.Survey;

/** Reads surveys: a survey.json, the folder that holds one, or a .zip of such a folder. */
public final class SurveyReader {

  /**
   * The form of a hull identification number in 33 CFR 181.25: maker, serial without I, O and Q,
   * month, years; some countries put their code in front.
   */
  private static final Pattern HIN =
      Pattern.compile("(?:[A-Z]{2}-?)?[A-Z0-9]{3}[A-HJ-NPR-Z0-9]{5}[A-L][0-9]{3}");

  private final Catalogue catalogue;
  private final IntPredicate printable;
  private final Enclosures enclosures;
  private final SurveySchema schema;

  /**
   * @param catalogue the checks that a survey may name
   * @param printable whether the fonts at hand have a glyph for a code point
   * @param enclosures takes out of an earlier report what lies in it
   */
  public SurveyReader(Catalogue catalogue, IntPredicate printable, Enclosures enclosures) {
    this.catalogue = catalogue;
    this.printable = printable;
    this.enclosures = enclosures;
    this.schema = new SurveySchema(catalogue);
  }

  /**
   * Reads a survey, looks for its photographs and reads the earlier surveys that it names.
   *
   * @throws Refused with every fault of all of them
   */
  public SurveySource read(Path path) {
    return read(path, PhotoInspection.NONE);
  }

  /**
   * The same, looking into each of its photographs on the way.
   *
   * @throws Refused with every fault of the survey, the earlier ones and the photographs
   */
  public SurveySource read(Path path, PhotoInspection inspection) {
    var folder = open(path);
    var json = folder.survey();
    var reading = new Reading(DocumentParser.parse(folder.fileName(), json));
    PhotoFiles.look(reading.root, folder, inspection);
    var earlier =
        new EarlierSurveys(folder, this::alone, this::enclosed).read(reading.root, reading.survey);
    reading.faults.addAll(earlier.problems());
    return new SurveySource(
        reading.survey(), json, reading.remarks(), earlier.sources(), Optional.empty());
  }

  /**
   * The same, or the survey that a report was made from, with what it printed then.
   *
   * @param path of a survey or of a report
   * @throws Refused with every fault of the survey, or where a report carries none
   */
  public SurveySource readAlsoReport(Path path) {
    var name = fileName(path);
    if (!EarlierSurveys.isReport(name)) {
      return read(path);
    }
    if (!Files.isRegularFile(path)) {
      throw new Refused(
          new Problem(Place.file(name), "There is no such file.", "Check the path of the report."));
    }
    return enclosed(name, beside(path).read(name));
  }

  /** A survey without the earlier ones that it names. */
  private SurveySource alone(SurveyFolder folder) {
    var json = folder.survey();
    var reading = new Reading(DocumentParser.parse(folder.fileName(), json));
    PhotoFiles.look(reading.root, folder, PhotoInspection.NONE);
    return new SurveySource(reading.survey(), json, reading.remarks(), List.of(), Optional.empty());
  }

  /** A survey that lies in a report, whose photographs stand on its pages. */
  private SurveySource enclosed(String name, byte[] report) {
    var files = enclosures.in(name, report);
    var json = files.get(ZipFolder.SURVEY);
    if (json == null) {
      throw new Refused(
          new Problem(
              Place.file(name),
              "The PDF carries no survey.json.",
              "Take a report that this program made, or the survey itself."));
    }
    var reading = new Reading(DocumentParser.parse(name + "/" + ZipFolder.SURVEY, json));
    var printed =
        Optional.ofNullable(files.get("assessment.json"))
            .map(bytes -> PrintedReader.read(name + "/assessment.json", bytes));
    return new SurveySource(reading.survey(), json, reading.remarks(), List.of(), printed);
  }

  /**
   * Reads the text of a survey file without looking for its photographs and earlier surveys.
   *
   * @throws Refused with every fault that it has
   */
  public Survey read(String json) {
    return new Reading(DocumentParser.parse(ZipFolder.SURVEY, json)).survey();
  }

  /**
   * The same in one step, for a single text whose characters can all be printed.
   *
   * @throws Refused with every fault that it has
   */
  public static Survey bind(String json, Catalogue catalogue) {
    return new SurveyReader(catalogue, c -> true, (name, report) -> Map.of()).read(json);
  }

  static SurveyFolder open(Path path) {
    var name = fileName(path);
    if (Files.isDirectory(path)) {
      if (!Files.isRegularFile(path.resolve(ZipFolder.SURVEY))) {
        throw new Refused(
            new Problem(
                Place.file(name),
                "There is no survey.json in this folder.",
                "Name the folder that holds one, or the file itself."));
      }
      return new DiskFolder(path, ZipFolder.SURVEY);
    }
    if (!Files.isRegularFile(path)) {
      throw new Refused(
          new Problem(Place.file(name), "There is no such file.", "Check the path of the survey."));
    }
    return name.toLowerCase(Locale.ROOT).endsWith(".zip") ? ZipFolder.open(path) : beside(path);
  }

  static String fileName(Path path) {
    return Optional.ofNullable(path.getFileName()).map(Path::toString).orElse("");
  }

  /** The folder of a file, also where its path is its name alone. */
  static DiskFolder beside(Path file) {
    return new DiskFolder(
        Optional.ofNullable(file.getParent()).orElse(Path.of("")), fileName(file));
  }

  /** One file on its way to become a survey. */
  private final class Reading {

    private final Faults faults;
    private final Field root;
    private final Optional<Survey> survey;

    Reading(JsonDocument document) {
      faults = new Faults(document);
      root = Field.root(faults, document.root());
      survey = new SurveyBinder(catalogue).bind(root);
      Plausibility.look(root);
      schema.validate(document.root(), faults);
      new TextChecks(faults, printable).look("", document.root());
    }

    Survey survey() {
      Refused.ifAny(faults.inOrder());
      return survey.orElseThrow(
          () -> new IllegalStateException("a survey without faults that could not be read"));
    }

    List<Problem> remarks() {
      return root
          .child("boat")
          .child("hin")
          .text()
          .filter(hin -> !HIN.matcher(hin).matches())
          .map(
              hin ->
                  new Problem(
                      faults.place("boat.hin"),
                      "\"" + hin + "\" has not the usual form of a hull identification number.",
                      "Compare it with the hull: 12 characters, such as ABC12345D617."))
          .stream()
          .toList();
    }
  }
}
