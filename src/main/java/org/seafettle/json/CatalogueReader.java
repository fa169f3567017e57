package org.seafettle.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.seafettle.catalogue.Catalogue;
import org.seafettle.catalogue.Check;
import org.seafettle.catalogue.Pattern;
import org.seafettle.catalogue.Subsystem;
import org.seafettle.problem.Refused;

/**
 * Reads the catalogue's data. Every fault is found before any is reported, each with its file and
 * the entry it is in.
 */
public final class CatalogueReader {

  private static final String SHARED = "common.yaml";

  private final CatalogueFaults faults = new CatalogueFaults();

  private CatalogueReader() {}

  /**
   * The catalogue that comes with the program.
   *
   * @throws IllegalStateException when its data is missing or faulty, which is a fault of the
   *     program and not of an input
   */
  public static Catalogue supplied() {
    var texts =
        Stream.concat(
                Stream.of(SHARED), Arrays.stream(Subsystem.values()).map(CatalogueReader::file))
            .map(CatalogueReader::supplied)
            .toList();
    try {
      return read(texts);
    } catch (Refused faulty) {
      throw new IllegalStateException(
          "The catalogue that comes with this program is faulty.\n" + faulty.getMessage(), faulty);
    }
  }

  /**
   * The catalogue that these files make together.
   *
   * @throws Refused with every fault of the data
   */
  public static Catalogue read(List<CatalogueText> texts) {
    return new CatalogueReader().catalogue(texts);
  }

  private static String file(Subsystem subsystem) {
    return subsystem.word() + ".yaml";
  }

  private static CatalogueText supplied(String file) {
    try (var in = Catalogue.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalStateException(
            "The program is not complete: its catalogue lacks " + file + ". Install it anew.");
      }
      return new CatalogueText(file, in.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException("The program's own " + file + " cannot be read.", e);
    }
  }

  private Catalogue catalogue(List<CatalogueText> texts) {
    var files = parse(texts);
    faults.end();
    files.forEach(CatalogueReader::onlyKnownSections);
    var vocabulary = CatalogueVocabulary.of(List.copyOf(files.values()));
    var checks = checks(files, vocabulary);
    var patterns = patterns(files, checks);
    var version = files.containsKey(SHARED) ? files.get(SHARED).text("version") : "";
    faults.end();
    return new Catalogue(
        version,
        digest(texts),
        List.copyOf(checks.values()),
        List.copyOf(patterns.values()),
        vocabulary.sources());
  }

  /** The files' fields. They are parsed side by side, since parsing is most of the work. */
  private Map<String, CatalogueEntry> parse(List<CatalogueText> texts) {
    var parsed = texts.parallelStream().map(CatalogueReader::parse).toList();
    var files = new LinkedHashMap<String, CatalogueEntry>();
    for (var file : parsed) {
      if (file.node() instanceof ObjectNode fields) {
        files.put(file.name(), new CatalogueEntry(faults, file.name(), "", fields));
      } else {
        faults.note(file.name(), file.line(), file.fault(), "Mend the YAML there.");
      }
    }
    return files;
  }

  private static Parsed parse(CatalogueText text) {
    try {
      var node = CatalogueYaml.read(text.content());
      return new Parsed(text.file(), node, "", "The file holds no sections.");
    } catch (JsonProcessingException e) {
      var line = e.getLocation() == null ? "" : "line " + e.getLocation().getLineNr();
      return new Parsed(text.file(), MissingNode.getInstance(), line, e.getOriginalMessage());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A file's content, and what is wrong with it where it has no fields. */
  private record Parsed(String name, JsonNode node, String line, String fault) {}

  private static void onlyKnownSections(String file, CatalogueEntry entry) {
    if (file.equals(SHARED)) {
      entry.only("version", "sources", "cautions", "actions");
    } else {
      entry.only("sources", "cautions", "actions", "checks", "patterns");
    }
  }

  private Map<String, Check> checks(
      Map<String, CatalogueEntry> files, CatalogueVocabulary vocabulary) {
    var reader = new CatalogueChecks(vocabulary);
    var checks = new LinkedHashMap<String, Check>();
    for (var subsystem : Subsystem.values()) {
      for (var entry : entries(files, file(subsystem), "checks")) {
        var check = reader.read(entry, subsystem);
        new CatalogueRules(check, entry).hold();
        if (checks.put(check.id(), check) != null) {
          entry.fault("There is another check of this id.", "Give each its own.");
        }
      }
    }
    return checks;
  }

  private Map<String, Pattern> patterns(
      Map<String, CatalogueEntry> files, Map<String, Check> checks) {
    var reader = new CataloguePatterns(checks);
    var patterns = new LinkedHashMap<String, Pattern>();
    for (var subsystem : Subsystem.values()) {
      for (var entry : entries(files, file(subsystem), "patterns")) {
        var pattern = reader.read(entry);
        if (pattern.isPresent() && patterns.put(pattern.get().id(), pattern.get()) != null) {
          entry.fault("There is another pattern of this id.", "Give each its own.");
        }
      }
    }
    return patterns;
  }

  /** The entries of a section, each called by its id. */
  private static List<CatalogueEntry> entries(
      Map<String, CatalogueEntry> files, String file, String section) {
    return Optional.ofNullable(files.get(file)).stream()
        .flatMap(f -> f.entries(section).stream())
        .map(e -> e.has("id") ? e.called(e.text("id")) : e)
        .toList();
  }

  private static String digest(List<CatalogueText> texts) {
    try {
      var sha = MessageDigest.getInstance("SHA-256");
      texts.stream()
          .sorted(Comparator.comparing(CatalogueText::file))
          .forEach(t -> sha.update(t.content()));
      return HexFormat.of().formatHex(sha.digest());
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java has SHA-256.", e);
    }
  }
}
