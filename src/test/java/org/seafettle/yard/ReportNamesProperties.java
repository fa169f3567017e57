package org.seafettle.yard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

class ReportNamesProperties {

  private static final ReportNames NAMES =
      new ReportNames(
          source -> source.replaceAll("[^a-c]", ""),
          source -> Integer.toHexString(source.hashCode()));

  @Property
  void no_two_boats_share_a_name(
      @ForAll @Size(min = 1, max = 12)
          Map<
                  @StringLength(min = 1, max = 3) @CharRange(from = 'a', to = 'd') String,
                  @StringLength(min = 1, max = 2) @CharRange(from = 'a', to = 'b') String>
              wanted) {
    var given = NAMES.give(new TreeMap<>(wanted));
    assertThat(given.keySet()).isEqualTo(new TreeMap<>(wanted).keySet());
    assertThat(new HashSet<>(given.values())).hasSameSizeAs(given.values());
  }

  @Test
  void a_boat_alone_with_her_name_keeps_it() {
    var given = NAMES.give(new TreeMap<>(Map.of("a", "tern", "b", "tern", "c", "gull")));
    assertThat(given).isEqualTo(Map.of("a", "tern-a", "b", "tern-b", "c", "gull"));
  }
}
