package org.seafettle.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class FingerprintTest {

  /** The one-block example of FIPS 180-4's example values for SHA-256. */
  private static final String ABC =
      "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

  @Test
  void a_file_is_known_by_the_sha_256_of_its_bytes() {
    assertThat(Fingerprint.of(Pictures.latin("abc")).hex()).isEqualTo(ABC);
  }

  @Test
  void under_a_picture_stand_twelve_digits_in_groups_of_four() {
    assertThat(new Fingerprint(ABC).shortHash()).isEqualTo("ba78 16bf 8f01");
  }

  @Test
  void what_is_not_64_hexadecimal_digits_is_no_fingerprint() {
    assertThatThrownBy(() -> new Fingerprint(ABC.substring(1))).hasMessageContaining("SHA-256");
  }
}
