package org.seafettle.yard;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.seafettle.assessment.Verdict;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.Subsystem;
import org.seafettle.report.Reminders;

/**
 * The boats of a season.
 *
 * @param surveyed those whose reports were written, the gravest first
 * @param faulty the surveys that could not be used, by their names
 */
public record Fleet(List<Surveyed> surveyed, List<Faulty> faulty) {

  private static final Comparator<Surveyed> GRAVEST_FIRST =
      Comparator.comparing((Surveyed s) -> s.standing().readiness())
          .thenComparingInt(s -> s.standing().weakest().printed())
          .thenComparing(s -> s.boat().name())
          .thenComparing(Surveyed::source);

  public Fleet {
    surveyed = List.copyOf(surveyed);
    faulty = List.copyOf(faulty);
  }

  /** The same fleet whatever the order of the entries. */
  public static Fleet of(List<Entry> entries) {
    return new Fleet(
        entries.stream()
            .flatMap(e -> e instanceof Surveyed surveyed ? Stream.of(surveyed) : Stream.empty())
            .sorted(GRAVEST_FIRST)
            .toList(),
        entries.stream()
            .flatMap(e -> e instanceof Faulty faulty ? Stream.of(faulty) : Stream.empty())
            .sorted(Comparator.comparing(Faulty::source))
            .toList());
  }

  /**
   * A part that several boats need.
   *
   * @param part the catalogue's word for it
   * @param pieces how many, one for each job that names it
   * @param boats on how many boats
   * @param price of those that are priced, together
   * @param unpriced how many pieces have no price
   */
  public record Order(String part, int pieces, int boats, Amounts price, int unpriced) {}

  /** What to order, by the names of the parts. */
  public List<Order> orders() {
    var orders = new TreeMap<String, Order>();
    for (var boat : surveyed) {
      var needed = new TreeMap<String, Order>();
      for (var job : boat.jobs()) {
        for (var need : job.parts()) {
          needed.merge(need.part(), order(need), Fleet::onOneBoat);
        }
      }
      needed.forEach((part, order) -> orders.merge(part, order, Fleet::onTwoBoats));
    }
    return List.copyOf(orders.values());
  }

  private static Order order(Job.Need need) {
    int unpriced = need.price().byCurrency().isEmpty() ? 1 : 0;
    return new Order(need.part(), 1, 1, need.price(), unpriced);
  }

  private static Order onOneBoat(Order a, Order b) {
    return sum(a, b, a.boats());
  }

  private static Order onTwoBoats(Order a, Order b) {
    return sum(a, b, a.boats() + b.boats());
  }

  private static Order sum(Order a, Order b, int boats) {
    return new Order(
        a.part(),
        a.pieces() + b.pieces(),
        boats,
        a.price().plus(b.price()),
        a.unpriced() + b.unpriced());
  }

  int boats(Verdict.Readiness readiness) {
    return (int) surveyed.stream().filter(s -> s.standing().readiness() == readiness).count();
  }

  /** On how many boats a subsystem is as grave as this; unseen and clean ones are not counted. */
  int boats(Subsystem subsystem, FindingClass gravest) {
    return (int)
        states(subsystem)
            .filter(s -> s.gravest() == gravest)
            .filter(s -> s.enoughSeen() || gravest != FindingClass.OK)
            .count();
  }

  /** On how many boats nothing was found, but too little was seen to say so. */
  int boatsUnseen(Subsystem subsystem) {
    return (int)
        states(subsystem).filter(s -> s.gravest() == FindingClass.OK && !s.enoughSeen()).count();
  }

  boolean looksAt(Subsystem subsystem) {
    return states(subsystem).findAny().isPresent();
  }

  private Stream<Surveyed.State> states(Subsystem subsystem) {
    return surveyed.stream()
        .flatMap(s -> s.subsystems().stream())
        .filter(s -> s.subsystem() == subsystem);
  }

  public Span hours() {
    return surveyed.stream().map(Surveyed::hours).reduce(Span.NOTHING, Span::plus);
  }

  public Amounts cost() {
    return surveyed.stream().map(Surveyed::cost).reduce(Amounts.NONE, Amounts::plus);
  }

  /**
   * What falls due on all boats, each thing once: of two surveys of one boat the later one knows.
   * Two boats that cannot be told apart keep both of theirs.
   */
  public List<Reminders> reminders() {
    var latest = new TreeMap<String, LocalDate>();
    for (var boat : surveyed) {
      for (var reminder : boat.reminders().all()) {
        latest.merge(reminder.key(), boat.boat().date(), Fleet::later);
      }
    }
    var told = new HashSet<String>();
    return surveyed.stream()
        .map(
            boat ->
                new Reminders(
                    boat.boat().name(),
                    boat.boat().date(),
                    boat.reminders().all().stream()
                        .filter(r -> latest.get(r.key()).equals(boat.boat().date()))
                        .map(r -> told.add(r.key()) ? r : apart(r, boat))
                        .toList()))
        .toList();
  }

  private static LocalDate later(LocalDate a, LocalDate b) {
    return a.isAfter(b) ? a : b;
  }

  private static Reminders.Reminder apart(Reminders.Reminder reminder, Surveyed boat) {
    return new Reminders.Reminder(
        reminder.key() + "/" + boat.source(), reminder.day(), reminder.title(), reminder.text());
  }

  /** The day of the first survey. */
  public Optional<LocalDate> from() {
    return surveyed.stream().map(s -> s.boat().date()).min(Comparator.naturalOrder());
  }

  /** The day of the last survey. */
  public Optional<LocalDate> to() {
    return surveyed.stream().map(s -> s.boat().date()).max(Comparator.naturalOrder());
  }
}
