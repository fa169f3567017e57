package org.seafettle.html;

import freemarker.cache.StringTemplateLoader;
import freemarker.core.ParseException;
import freemarker.core.TemplateClassResolver;
import freemarker.core.XHTMLOutputFormat;
import freemarker.template.Configuration;
import freemarker.template.SimpleObjectWrapper;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Optional;
import java.util.TimeZone;
import java.util.stream.Collectors;
import org.seafettle.problem.Place;
import org.seafettle.problem.Problem;
import org.seafettle.problem.Refused;
import org.seafettle.report.Report;
import org.seafettle.yard.Overview;

/** Sets a report as XHTML. The same report gives the same text. Safe for many threads. */
public final class Typesetter {

  private static final String REMEDY =
      "Mend it there, or take the file out of the folder so that the supplied one is used.";

  private final Templates templates;
  private final Configuration configuration;

  public Typesetter(Templates templates) {
    this.templates = templates;
    this.configuration = configuration(templates);
  }

  /**
   * Templates are text, not programs: they reach no class, no file and nothing beside the model.
   */
  private static Configuration configuration(Templates templates) {
    var configuration = new Configuration(Configuration.VERSION_2_3_35);
    var loader = new StringTemplateLoader();
    templates.names().forEach(name -> loader.putTemplate(name, templates.text(name), 0));
    configuration.setTemplateLoader(loader);
    configuration.setRecognizeStandardFileExtensions(false);
    configuration.setOutputFormat(XHTMLOutputFormat.INSTANCE);
    configuration.setObjectWrapper(new SimpleObjectWrapper(Configuration.VERSION_2_3_35));
    configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
    configuration.setAPIBuiltinEnabled(false);
    configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
    configuration.setLogTemplateExceptions(false);
    configuration.setWrapUncheckedExceptions(true);
    configuration.setLocalizedLookup(false);
    configuration.setTemplateUpdateDelayMilliseconds(Long.MAX_VALUE);
    configuration.setDefaultEncoding("UTF-8");
    configuration.setLocale(Locale.ROOT);
    configuration.setTimeZone(TimeZone.getTimeZone("UTC"));
    return configuration;
  }

  /**
   * Sets a report with the template of its purpose.
   *
   * @throws Refused where a template is faulty, with its name and line
   */
  public String set(Report report) {
    return set(report.purpose() + ".ftlh", report);
  }

  /**
   * Sets the overview of a season.
   *
   * @throws Refused where a template is faulty, with its name and line
   */
  public String set(Overview overview) {
    return set("season-overview.ftlh", overview);
  }

  private String set(String template, Record model) {
    var out = new StringWriter();
    try {
      configuration.getTemplate(template).process(PlainModel.of(model), out);
    } catch (ParseException | TemplateException e) {
      throw refused(template, e);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toString();
  }

  /** A fault in a part is told with that part's own name and line, not those of its user. */
  private Refused refused(String used, Exception fault) {
    var name = used;
    int line = 1;
    var message = "";
    for (Throwable cause = fault; cause != null; cause = cause.getCause()) {
      if (cause instanceof ParseException e) {
        name = Optional.ofNullable(e.getTemplateName()).orElse(name);
        line = e.getLineNumber();
        message = e.getEditorMessage();
      } else if (cause instanceof TemplateException e) {
        name = Optional.ofNullable(e.getTemplateSourceName()).orElse(name);
        line = Optional.ofNullable(e.getLineNumber()).orElse(line);
        message = e.getMessageWithoutStackTop();
      }
    }
    return new Refused(
        new Problem(
            Place.line(templates.place(name).file(), "", line),
            "The template cannot be used: " + sentence(message),
            REMEDY));
  }

  /** The first paragraph of what the library says, without its arrows and repeated places. */
  private static String sentence(String message) {
    return message
        .strip()
        .lines()
        .takeWhile(line -> !line.isBlank() && !line.startsWith("----"))
        .map(line -> line.replaceAll("^==> |\\s*\\[in template .*]$", "").strip())
        .collect(Collectors.joining(" "))
        .replaceAll("[:.]*$", ".");
  }
}
