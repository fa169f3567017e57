package org.seafettle.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class FirstPageTest {

  @Test
  void a_printer_that_is_awake_prints_the_same_as_one_that_is_not() {
    var typefaces = new Typefaces();
    var awake =
        PdfPrinter.awake(typefaces)
            .print(FirstPage.XHTML, FirstPage.PICTURES, List.of(), FirstPage.METADATA);
    var asleep =
        new PdfPrinter(typefaces)
            .print(FirstPage.XHTML, FirstPage.PICTURES, List.of(), FirstPage.METADATA);
    assertThat(awake).isEqualTo(asleep);
    assertThat(Validation.faults(awake)).isEmpty();
  }
}
