package org.seafettle.formula.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.seafettle.problem.Refused;

class CompressionTest {

  @Test
  void a_dead_cylinder_is_a_spread_of_the_whole() {
    assertThat(Compression.spreadPercent(List.of(180.0, 0.0, 175.0))).isEqualTo(100);
  }

  @Test
  void one_cylinder_has_no_spread_and_no_cylinder_sucks() {
    assertThatThrownBy(() -> Compression.spreadPercent(List.of(180.0))).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Compression.spreadPercent(List.of(180.0, -1.0)))
        .isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Compression.spreadPercent(List.of(0.0, 0.0)))
        .isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Compression.leakDownPercent(80, 81)).isInstanceOf(Refused.class);
  }

  @Test
  void a_gearcase_that_cools_is_not_a_leak() {
    assertThat(SealedCase.correctedDrop(100, 87.14, 40, 20, 101.325)).isCloseTo(0, within(0.005));
    assertThat(SealedCase.correctedDrop(100, 80, 40, 20, 101.325)).isCloseTo(7.14, within(0.005));
    assertThatThrownBy(() -> SealedCase.tightPressure(-102, 20, 20, 101.325))
        .isInstanceOf(Refused.class);
  }
}
