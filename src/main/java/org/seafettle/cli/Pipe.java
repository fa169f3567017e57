package org.seafettle.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.seafettle.assessment.Assessment;
import org.seafettle.assessment.Assessor;
import org.seafettle.catalogue.Catalogue;
import org.seafettle.house.House;
import org.seafettle.house.Logo;
import org.seafettle.html.Templates;
import org.seafettle.html.Typesetter;
import org.seafettle.html.WebPage;
import org.seafettle.json.AssessmentWriter;
import org.seafettle.json.CatalogueReader;
import org.seafettle.json.HouseReader;
import org.seafettle.json.SurveyReader;
import org.seafettle.json.SurveySource;
import org.seafettle.pdf.Attachment;
import org.seafettle.pdf.Enclosed;
import org.seafettle.pdf.PdfPrinter;
import org.seafettle.pdf.Relationship;
import org.seafettle.pdf.Typefaces;
import org.seafettle.problem.Problem;
import org.seafettle.report.Letterhead;
import org.seafettle.report.Options;
import org.seafettle.report.Reminders;
import org.seafettle.report.Report;
import org.seafettle.report.Words;
import org.seafettle.yard.Fleet;
import org.seafettle.yard.Overview;

/** The way of a survey through the house: read, assess, compose, typeset, print. */
public final class Pipe {

  private final Ahead<PdfPrinter> printer;
  private final Typesetter typesetter;
  private final WebPage web;
  private final Words words;
  private final Catalogue catalogue;
  private final Translation translation;
  private final SurveyReader reader;
  private final Options options;
  private final boolean keepMetadata;
  private final Optional<House> house;

  /**
   * @param templates what the pages are set with
   * @param language of their words
   * @param options how they are set
   * @param keepMetadata whether the printed photographs keep what the camera wrote down
   */
  public Pipe(Templates templates, String language, Options options, boolean keepMetadata) {
    this(templates, language, options, keepMetadata, Optional.empty());
  }

  /**
   * The same with the face of a house.
   *
   * @param house where its house.json is
   * @throws org.seafettle.problem.Refused with every fault of the house
   */
  public Pipe(
      Templates templates,
      String language,
      Options options,
      boolean keepMetadata,
      Optional<Path> house) {
    var typefaces = new Typefaces();
    this.printer = Ahead.make(() -> PdfPrinter.awake(typefaces));
    this.typesetter = new Typesetter(templates);
    this.web = new WebPage(templates);
    this.words = templates.words(language);
    this.catalogue = CatalogueReader.supplied();
    this.translation = new Translation(catalogue, templates, language);
    this.reader = new SurveyReader(catalogue, typefaces::covers, Enclosed::in);
    this.options = options;
    this.keepMetadata = keepMetadata;
    this.house = house.map(new HouseReader(typefaces::covers)::read);
  }

  /**
   * A finished report.
   *
   * @param name of its files, without an ending
   * @param pdf the report
   * @param assessment the same as JSON
   * @param html the same pages for a browser, as one file
   * @param reminders what to be reminded of
   * @param remarks what is no fault but worth a second look
   * @param judged what the report was written from, in its language
   * @param written what its pages say
   */
  public record Made(
      String name,
      byte[] pdf,
      byte[] assessment,
      Supplier<String> html,
      Supplier<Reminders> reminders,
      List<Problem> remarks,
      Assessment judged,
      Report written) {}

  /**
   * Makes the report of a survey.
   *
   * @param step told what is being done
   * @throws org.seafettle.problem.Refused with every fault of the survey
   */
  public Made make(Path path, Consumer<String> step) {
    return make(path, Prints.MADE, step);
  }

  /** The same with prints of photographs that may have been made before. */
  Made make(Path path, Prints from, Consumer<String> step) {
    step.accept("reading the survey");
    var pictures = new Pictures();
    var source = reader.read(path, pictures);
    var survey = source.survey();
    var prints = Ahead.make(() -> withLogo(pictures.prints(survey, keepMetadata, from)));

    step.accept("judging");
    var earlier = source.earlier().stream().map(SurveySource::survey).toList();
    var assessment = new Assessor(catalogue).assess(survey, earlier);
    var data = AssessmentWriter.write(assessment, Version.text());

    step.accept("setting the pages");
    var told = translation.tell(assessment, earlier);
    var printed = source.earlier().stream().flatMap(s -> s.printed().stream()).toList();
    var beside = new Report.Beside(pictures.facts(survey), printed, house);
    var report = Report.of(told, words, beside, options);
    var xhtml = typesetter.set(report);

    step.accept("printing");
    var metadata = DocumentMetadata.of(report, assessment, words);
    var pdf = printer.get().print(xhtml, prints.get(), attachments(source, data), metadata);
    Supplier<String> html = () -> web.of(xhtml, prints.get());
    Supplier<Reminders> reminders = () -> Reminders.of(told, words, options);
    var remarks = Stream.concat(source.remarks().stream(), translation.remark().stream()).toList();
    return new Made(FileName.of(survey), pdf, data, html, reminders, remarks, told, report);
  }

  /** Makes the overview of a season. */
  byte[] overview(Fleet fleet) {
    var xhtml = typesetter.set(Overview.of(fleet, translation.told(), words, options.paper()));
    return printer.get().print(xhtml, Map.of(), List.of(), DocumentMetadata.of(fleet, words));
  }

  /** Of the catalogue by which it judges. */
  String digest() {
    return catalogue.digest();
  }

  private Map<String, byte[]> withLogo(Map<String, byte[]> prints) {
    house
        .flatMap(House::logo)
        .filter(Logo.Picture.class::isInstance)
        .map(Logo.Picture.class::cast)
        .ifPresent(logo -> prints.put(Letterhead.PICTURE, logo.print().bytes()));
    return prints;
  }

  private List<Attachment> attachments(SurveySource source, byte[] assessment) {
    return List.of(
        new Attachment(
            "survey.json",
            "application/json",
            words.say("attached.survey"),
            Relationship.SOURCE,
            source.json()),
        new Attachment(
            "assessment.json",
            "application/json",
            words.say("attached.assessment"),
            Relationship.DATA,
            assessment));
  }
}
