package org.seafettle.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.seafettle.assessment.Result;
import org.seafettle.assessment.Sighting;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.survey.Photo;

/**
 * What the findings rest on.
 *
 * @param register every photograph
 * @param figures every photograph, as a figure
 * @param others the photographs that no finding shows
 * @param outfit batteries and pumps as the survey names them
 * @param readings every reading, as it was recorded
 * @param instruments what the readings were taken with, and how certain they are
 */
public record EvidencePart(
    List<Registered> register,
    List<PhotoPart> figures,
    List<PhotoPart> others,
    List<Row> outfit,
    List<Reading> readings,
    List<InstrumentRow> instruments) {

  public EvidencePart {
    register = List.copyOf(register);
    figures = List.copyOf(figures);
    others = List.copyOf(others);
    outfit = List.copyOf(outfit);
    readings = List.copyOf(readings);
    instruments = List.copyOf(instruments);
  }

  /**
   * A photograph in the register.
   *
   * @param number its number
   * @param file as it came
   * @param taken when, and by which clock
   * @param size in pixels
   * @param findings that show it
   * @param hash SHA-256 of the file as it came
   */
  public record Registered(
      String number,
      String file,
      String taken,
      String size,
      List<Reference> findings,
      String hash) {

    public Registered {
      findings = List.copyOf(findings);
    }
  }

  /**
   * What was read for a check.
   *
   * @param check what was looked at, and on what
   * @param values by name, as they were recorded
   * @param scale against its limits; what is not in order has its scale with its finding
   * @param judged its class
   */
  public record Reading(String check, String values, Optional<Scale> scale, String judged) {}

  static EvidencePart of(Manuscript m) {
    var photos = m.survey().photos();
    return new EvidencePart(
        photos.stream().map(p -> registered(m, p)).toList(),
        photos.stream().map(p -> figure(m, p)).toList(),
        photos.stream().filter(p -> showing(m, p).isEmpty()).map(p -> figure(m, p)).toList(),
        OutfitRows.of(m),
        readings(m),
        InstrumentRow.all(m));
  }

  private static PhotoPart figure(Manuscript m, Photo photo) {
    var shows =
        showing(m, photo).stream()
            .map(m::headline)
            .map(Phrases::capital)
            .findFirst()
            .orElse(m.words().say("photo.no-finding"));
    return m.photographs().part(photo, shows);
  }

  private static Registered registered(Manuscript m, Photo photo) {
    var facts = m.photographs().facts(photo);
    return new Registered(
        Integer.toString(m.photographs().number(photo)),
        photo.file(),
        m.photographs().taken(photo),
        facts.size().toString().replace("x", "×").replace(' ', '\u00A0'),
        showing(m, photo).stream().map(r -> Reference.to(m, r)).toList(),
        MethodPart.grouped(facts.fingerprint().hex()));
  }

  private static List<Result> showing(Manuscript m, Photo photo) {
    return m.assessment().findings().stream()
        .filter(r -> r.finding().filter(f -> f.photos().contains(photo.id())).isPresent())
        .toList();
  }

  private static List<Reading> readings(Manuscript m) {
    return m.assessment().results().stream()
        .filter(
            r ->
                interval(m, r).isPresent()
                    || r.finding().filter(f -> !f.evidence().readings().isEmpty()).isPresent())
        .map(r -> new Reading(m.look(r), values(m, r), scale(m, r), judged(m, r)))
        .toList();
  }

  private static Optional<ReadingWords> interval(Manuscript m, Result result) {
    return result
        .seen()
        .flatMap(Sighting.Seen::measured)
        .map(x -> new ReadingWords(m, result, x))
        .filter(ReadingWords::isInterval);
  }

  private static String values(Manuscript m, Result result) {
    var said = new ArrayList<String>();
    interval(m, result).map(ReadingWords::used).ifPresent(said::add);
    result
        .finding()
        .map(f -> f.evidence().readings())
        .orElse(Map.of())
        .forEach(
            (name, values) ->
                said.add(
                    m.words()
                        .say("reading.named", m.numberName(name), m.phrases().evidence(values))));
    ReadingWords.taken(m, result).ifPresent(said::add);
    return m.phrases().series(said);
  }

  private static Optional<Scale> scale(Manuscript m, Result result) {
    return result
        .seen()
        .filter(seen -> seen.found() == FindingClass.OK)
        .flatMap(Sighting.Seen::measured)
        .flatMap(x -> new ReadingScale(m, result, x).scale());
  }

  private static String judged(Manuscript m, Result result) {
    var word =
        result
            .seen()
            .map(s -> m.words().of("class", s.found()))
            .orElse(m.words().say("readings.not-judged"));
    boolean numbered =
        result.number().isPresent()
            && result.seen().filter(s -> s.found() != FindingClass.OK).isPresent();
    return numbered
        ? m.words().say("readings.finding", word, result.number().getAsInt() + "")
        : word;
  }
}
