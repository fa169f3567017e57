package org.seafettle.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.seafettle.assessment.Assessment;
import org.seafettle.assessment.Assessor;
import org.seafettle.html.Templates;
import org.seafettle.html.Typesetter;
import org.seafettle.json.AssessmentWriter;
import org.seafettle.json.CatalogueReader;
import org.seafettle.json.SurveyReader;
import org.seafettle.json.SurveySource;
import org.seafettle.pdf.Attachment;
import org.seafettle.pdf.PdfPrinter;
import org.seafettle.pdf.Relationship;
import org.seafettle.pdf.Typefaces;
import org.seafettle.report.Options;
import org.seafettle.report.Paper;
import org.seafettle.report.Report;
import org.seafettle.report.Units;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes a report. */
@Command(
    name = "report",
    description = "Grades a survey and writes its condition report.",
    mixinStandardHelpOptions = true)
final class ReportCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(
      paramLabel = "SURVEY",
      description = "A survey.json, the folder that holds one, or a .zip of that folder.")
  private Path path = Path.of("");

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Where the report goes (default: ${DEFAULT-VALUE}).")
  private Path out = Path.of("output");

  @Option(
      names = "--templates",
      paramLabel = "DIR",
      description = "A folder of own templates; each file there replaces the supplied one.")
  private Optional<Path> templates = Optional.empty();

  @Option(names = "--json", description = "Also write assessment.json beside the report.")
  private boolean json;

  @Option(names = "--html", description = "Also write the XHTML that was printed.")
  private boolean html;

  @Option(names = "--draft", description = "Say DRAFT on every page.")
  private boolean draft;

  @Option(
      names = "--keep-metadata",
      description =
          "Leave what the camera wrote down (time, place, device) in the printed photographs.")
  private boolean keepMetadata;

  ReportCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws IOException {
    var typefaces = new Typefaces();
    var printer = Ahead.make(() -> PdfPrinter.awake(typefaces));
    var supplied = templates.map(Templates::with).orElseGet(Templates::supplied);

    console.progress("reading the survey");
    var catalogue = CatalogueReader.supplied();
    var pictures = new Pictures();
    var source = new SurveyReader(catalogue, typefaces::covers).read(path, pictures);
    var survey = source.survey();
    var prints = Ahead.make(() -> pictures.prints(survey, keepMetadata));

    console.progress("judging");
    var assessment = new Assessor(catalogue).assess(survey, earlier(source));
    var data = AssessmentWriter.write(assessment, Version.text());

    console.progress("setting the pages");
    var report =
        Report.of(
            assessment,
            supplied.words("en"),
            pictures.facts(survey),
            new Options(Units.AS_RECORDED, Paper.A4, draft));
    var xhtml = new Typesetter(supplied).set(report);

    console.progress("printing");
    var pdf =
        printer
            .get()
            .print(
                xhtml,
                prints.get(),
                attachments(source, data),
                DocumentMetadata.of(report, assessment));

    put(assessment, pdf, data, xhtml);
    source.remarks().forEach(problem -> console.remark(problem.toString()));
    return ExitCode.DONE.code();
  }

  private static List<org.seafettle.survey.Survey> earlier(SurveySource source) {
    return source.earlier().stream().map(SurveySource::survey).toList();
  }

  private static List<Attachment> attachments(SurveySource source, byte[] assessment) {
    return List.of(
        new Attachment(
            "survey.json",
            "application/json",
            "The survey as it was recorded",
            Relationship.SOURCE,
            source.json()),
        new Attachment(
            "assessment.json",
            "application/json",
            "The assessment that this report prints",
            Relationship.DATA,
            assessment));
  }

  private void put(Assessment assessment, byte[] pdf, byte[] data, String xhtml)
      throws IOException {
    var name = FileName.of(assessment.survey());
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put(name + ".pdf", pdf);
    if (json) {
      files.put(name + ".assessment.json", data);
    }
    if (html) {
      files.put(name + ".html", xhtml.getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }
    var placed = new Destination(out).put(files);
    console.progressEnds();
    for (var file : placed) {
      console.say(file.path().toString());
      file.kept().ifPresent(kept -> console.remark("The earlier one was kept as " + kept));
    }
  }
}
