package org.seafettle.json;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.seafettle.catalogue.Catalogue;
import org.seafettle.catalogue.Check;
import org.seafettle.catalogue.Outcome;
import org.seafettle.quantity.Kind;
import org.seafettle.survey.Photo;
import org.seafettle.survey.Prices;
import org.seafettle.survey.Work;

/** Reads what goes with the findings: photographs, service log and price list. */
final class RecordBinder {

  private RecordBinder() {}

  static List<Photo> photos(Field list) {
    var photos = new ArrayList<Photo>();
    var ids = new HashSet<String>();
    for (var item : list.items()) {
      var id = item.child("id");
      id.text()
          .filter(name -> !ids.add(name))
          .ifPresent(
              name ->
                  id.blame(
                      "Another photograph is called \"" + name + "\" already.",
                      "Give every photograph a name of its own."));
      photo(item).ifPresent(photos::add);
    }
    return photos;
  }

  private static Optional<Photo> photo(Field item) {
    var marks = item.child("marks").items().stream().flatMap(m -> mark(m).stream()).toList();
    var caption = item.child("caption").text();
    return item.child("id")
        .text()
        .flatMap(id -> item.child("file").text().map(file -> new Photo(id, file, caption, marks)));
  }

  private static Optional<Photo.Mark> mark(Field mark) {
    var at = mark.child("at").items();
    var shape = mark.child("shape").word(Photo.Mark.Shape.class).orElse(Photo.Mark.Shape.RING);
    if (at.size() != 2 || !at.stream().allMatch(RecordBinder::share)) {
      return Optional.empty();
    }
    return mark.child("says")
        .text()
        .map(
            says ->
                new Photo.Mark(
                    at.get(0).node().doubleValue(), at.get(1).node().doubleValue(), shape, says));
  }

  private static boolean share(Field field) {
    double value = field.node().doubleValue();
    return field.node().isNumber() && value >= 0 && value <= 1;
  }

  static List<Work> work(Field list, ComponentNames names) {
    var work = new ArrayList<Work>();
    for (var item : list.items()) {
      var at = item.child("hours").notNegative(Kind.DURATION);
      var on = item.child("on");
      var date = item.child("date").date();
      on.text()
          .filter(id -> there(on, id, names))
          .flatMap(
              id ->
                  item.child("what")
                      .text()
                      .flatMap(
                          what ->
                              date.map(d -> new Work(d, id, what, item.child("by").text(), at))))
          .ifPresent(work::add);
    }
    return work;
  }

  private static boolean there(Field on, String id, ComponentNames names) {
    if (names.kind(id).isPresent()) {
      return true;
    }
    on.blame("There is nothing called \"" + id + "\".", Hints.words(id, names.all()));
    return false;
  }

  static Optional<Prices> prices(Field prices, Catalogue catalogue) {
    var currency = prices.child("currency");
    var code = currency.text().filter(c -> isCurrency(currency, c));
    var labour = price(prices.child("labour"));
    var items = items(prices.child("items"), parts(catalogue));
    var tax = tax(prices.child("tax"));
    return code.map(c -> new Prices(c, labour, items, tax));
  }

  private static Optional<Prices.Tax> tax(Field tax) {
    var included = tax.child("included").flag();
    return price(tax.child("percent"))
        .flatMap(percent -> included.map(in -> new Prices.Tax(percent, in)));
  }

  private static boolean isCurrency(Field field, String code) {
    var codes =
        Currency.getAvailableCurrencies().stream()
            .map(Currency::getCurrencyCode)
            .collect(Collectors.toCollection(TreeSet::new));
    if (!codes.contains(code)) {
      field.blame(
          "There is no currency \"" + code + "\".",
          "Write the three letters of ISO 4217, such as EUR or USD.");
    }
    return codes.contains(code);
  }

  private static Map<String, BigDecimal> items(Field items, SortedSet<String> parts) {
    var bound = new LinkedHashMap<String, BigDecimal>();
    for (var name : items.names()) {
      var field = items.child(name);
      if (!parts.contains(name)) {
        field.blame(
            "No piece of work needs a part called \"" + name + "\".", Hints.words(name, parts));
      }
      price(field).ifPresent(p -> bound.put(name, p));
    }
    return bound;
  }

  private static Optional<BigDecimal> price(Field field) {
    if (!field.node().isNumber()) {
      return Optional.empty();
    }
    var price = field.node().decimalValue();
    if (price.signum() < 0) {
      field.blame("A price of " + price.toPlainString() + " cannot be.", "Write 0 or more.");
    }
    return Optional.of(price);
  }

  /** The parts that the catalogue's work needs. */
  static SortedSet<String> parts(Catalogue catalogue) {
    return catalogue.checks().stream()
        .map(Check::outcomes)
        .flatMap(List::stream)
        .flatMap(o -> o.advice().map(Outcome.Advice::action).stream())
        .flatMap(a -> a.parts().stream())
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
