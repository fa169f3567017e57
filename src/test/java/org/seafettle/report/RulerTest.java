package org.seafettle.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Values beneath a scale can be read. */
class RulerTest {

  private static final Ruler RULER = new Ruler(0, 6440);

  @Test
  void two_limits_whose_values_would_touch_are_not_both_told() {
    assertThat(RULER.apart(100, "100 mg/kg", 1000, "1000 mg/kg")).isFalse();
    assertThat(RULER.apart(1000, "1000 mg/kg", 4000, "4000 mg/kg")).isTrue();
  }

  @Test
  void short_values_may_stand_nearer_together_than_long_ones() {
    assertThat(RULER.apart(1000, "1", 2000, "2")).isTrue();
    assertThat(RULER.apart(1000, "1000 mg/kg", 2000, "2000 mg/kg")).isFalse();
  }
}
