package org.seafettle.pdf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.verapdf.core.EncryptedPdfException;
import org.verapdf.core.ModelParsingException;
import org.verapdf.core.ValidationException;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;

/** Holds a document against PDF/A-3a and PDF/UA-1, as veraPDF reads them. */
public final class Validation {

  static {
    VeraGreenfieldFoundryProvider.initialise();
  }

  private Validation() {}

  /** Every rule of both standards that the document breaks, each once; empty when it conforms. */
  public static List<String> faults(byte[] pdf) {
    var faults = new ArrayList<String>();
    faults.addAll(faults(pdf, PDFAFlavour.PDFA_3_A));
    faults.addAll(faults(pdf, PDFAFlavour.PDFUA_1));
    return faults;
  }

  private static List<String> faults(byte[] pdf, PDFAFlavour flavour) {
    try (var foundry = Foundries.defaultInstance();
        var in = new ByteArrayInputStream(pdf);
        var parser = foundry.createParser(in, flavour);
        var validator = foundry.createValidator(flavour, false)) {
      var result = validator.validate(parser);
      var broken =
          result.getTestAssertions().stream()
              .filter(assertion -> assertion.getStatus() == TestAssertion.Status.FAILED)
              .map(assertion -> describe(flavour, assertion))
              .distinct()
              .toList();
      return result.isCompliant() || !broken.isEmpty()
          ? broken
          : List.of(flavour + ": not compliant, no rule named");
    } catch (IOException | ModelParsingException | ValidationException | EncryptedPdfException e) {
      throw new AssertionError("the document cannot be read as " + flavour, e);
    }
  }

  private static String describe(PDFAFlavour flavour, TestAssertion assertion) {
    var rule = assertion.getRuleId();
    return flavour
        + " "
        + rule.getClause()
        + "-"
        + rule.getTestNumber()
        + ": "
        + assertion.getMessage()
        + " at "
        + assertion.getLocation().getContext();
  }
}
