package org.seafettle.formula.galvanic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.seafettle.formula.galvanic.DrivePotential.Water;
import org.seafettle.problem.Refused;

class GalvanicTest {

  @Test
  void the_distance_from_the_window_has_a_sign() {
    assertThat(DrivePotential.outsideMillivolts(-800, Water.SALT)).isEqualTo(50);
    assertThat(DrivePotential.outsideMillivolts(-1180, Water.SALT)).isEqualTo(80);
    assertThat(DrivePotential.outsideMillivolts(-900, Water.SALT)).isEqualTo(-50);
    assertThat(DrivePotential.outsideMillivolts(-900, Water.FRESH)).isEqualTo(-150);
  }

  @Test
  void a_potential_without_its_sign_is_refused() {
    assertThatThrownBy(() -> DrivePotential.of(950, Water.SALT))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("outside -1600 to 0 mV");
  }

  @Test
  void an_anode_loses_what_its_weight_says() {
    assertThat(Anode.lossPercent(0.5, 1.25)).isCloseTo(60, within(1e-9));
    assertThatThrownBy(() -> Anode.lossPercent(1.3, 1.25)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Anode.years(1, 780, 1.2, 0.05)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Anode.years(1, 780, 0.85, 0)).isInstanceOf(Refused.class);
    assertThat(Anode.years(1, Anode.ZINC_AMPERE_HOURS, Anode.UTILISATION, 0.05))
        .isCloseTo(1.514, within(0.001));
  }
}
