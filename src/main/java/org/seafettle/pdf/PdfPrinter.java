package org.seafettle.pdf;

import com.openhtmltopdf.extend.impl.FSDefaultCacheStore;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.CacheStore;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import com.openhtmltopdf.util.Diagnostic;
import com.openhtmltopdf.util.LogMessageId.LogMessageId0Param;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.logging.Level;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * Prints XHTML as a document that is PDF/A-3a (ISO 19005-3) and PDF/UA-1 (ISO 14289-1) at once. The
 * same input gives the same bytes, on every machine, in every zone and language. Nothing is
 * fetched: a picture is {@code <img src="photo:name" alt="..."/>} and comes from the given map, and
 * anything else from outside is a fault. Safe for many threads; keep one for the life of the
 * program.
 */
public final class PdfPrinter {

  /** Both ask for metadata in the head of the XHTML; {@link Identity} writes it in any case. */
  private static final Set<Enum<?>> HARMLESS =
      Set.of(
          LogMessageId0Param.GENERAL_PDF_ACCESSIBILITY_NO_DOCUMENT_TITLE_PROVIDED,
          LogMessageId0Param.GENERAL_PDF_ACCESSIBILITY_NO_DOCUMENT_DESCRIPTION_PROVIDED);

  private final Typefaces typefaces;
  private final StyleReader styles;
  private final ThreadLocal<DrawingMemory> drawings;
  private final FSDefaultCacheStore metrics = new FSDefaultCacheStore();
  private final byte[] colours = Colours.profile();

  /**
   * Also turns off, for the whole process, the temporary files in which ImageIO would keep what it
   * reads from memory, and the log of the library, whose every warning is a {@link Misprint} here.
   */
  public PdfPrinter(Typefaces typefaces) {
    this.typefaces = typefaces;
    this.styles = new StyleReader(typefaces);
    this.drawings = ThreadLocal.withInitial(() -> new DrawingMemory(typefaces));
    ImageIO.setUseCache(false);
    XRLog.setLoggerImpl(new Silence());
  }

  /**
   * A printer that has printed a page already, which nobody sees: its classes and typefaces are
   * loaded then. Worth it where that can go on beside something else.
   */
  public static PdfPrinter awake(Typefaces typefaces) {
    var printer = new PdfPrinter(typefaces);
    printer.print(FirstPage.XHTML, FirstPage.PICTURES, List.of(), FirstPage.METADATA);
    return printer;
  }

  /**
   * Prints one document.
   *
   * @param xhtml well-formed, with styles inside
   * @param pictures by name, {@code [A-Za-z0-9_-]+}; JPEG goes into the document byte for byte
   * @param attachments in the order in which a viewer shall list them, each name once
   * @throws Misprint when anything would be missing, or not as asked, in the printed document
   */
  public byte[] print(
      String xhtml, Map<String, byte[]> pictures, List<Attachment> attachments, Metadata metadata) {
    var faults = new LinkedHashSet<String>();
    if (xhtml.contains("<!ENTITY")) {
      faults.add("an entity of its own, which the parser would leave out");
    }
    var builder = builder(pictures, faults);
    builder.withHtmlContent(xhtml, "");
    builder.addDOMMutator(
        document -> {
          document.getDocumentElement().setAttribute("lang", metadata.language().toLanguageTag());
          faults.addAll(new Proofreader(styles).read(document));
        });
    try (var renderer = builder.buildPdfRenderer()) {
      stopAt(faults);
      try (var document = renderer.createPDFKeepOpen()) {
        stopAt(faults);
        Identity.write(document, metadata);
        new Enclosure(document, metadata).enclose(attachments);
        document.setDocumentId(Fingerprint.of(xhtml, pictures, attachments, metadata));
        return saved(document);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (Misprint e) {
      throw e;
    } catch (RuntimeException e) {
      faults.add("the page could not be set: " + e.getMessage());
      throw new Misprint(List.copyOf(faults), e);
    }
  }

  private PdfRendererBuilder builder(Map<String, byte[]> pictures, Set<String> faults) {
    var builder = new PdfRendererBuilder();
    builder.usePdfAConformance(PdfAConformance.PDFA_3_A);
    builder.usePdfUaAccessibility(true);
    builder.usePdfVersion(1.7f);
    builder.useColorProfile(colours);
    builder.useUnicodeLineBreaker(new LineEnds());
    builder.usePageSupplier(
        (document, width, height, number, part) -> Marks.page(document, width, height));
    builder.useCacheStore(CacheStore.PDF_FONT_METRICS, metrics);
    builder.withDiagnosticConsumer(diagnostic -> note(diagnostic, faults));
    useTypefaces(builder);
    new Pictures(pictures).use(builder);
    return builder;
  }

  private void useTypefaces(PdfRendererBuilder builder) {
    builder.useSVGDrawer(new Drawings(drawings.get()));
    for (var typeface : Typeface.values()) {
      use(builder, typeface, FSFontUseCase.DOCUMENT);
    }
    // for a style that names Roboto alone, and for what only the upright typeface draws
    use(builder, Typeface.DEJAVU, FSFontUseCase.FALLBACK_FINAL);
  }

  private void use(PdfRendererBuilder builder, Typeface typeface, FSFontUseCase purpose) {
    builder.useFont(
        () -> new ByteArrayInputStream(typefaces.file(typeface)),
        typeface.family().cssName(),
        typeface.weight(),
        typeface.style(),
        true,
        EnumSet.of(purpose));
  }

  private static void note(Diagnostic diagnostic, Set<String> faults) {
    if (diagnostic.getLevel().intValue() >= Level.WARNING.intValue()
        && !HARMLESS.contains(diagnostic.getLogMessageId().getEnum())) {
      faults.add(
          diagnostic.getLogMessageId().getEnum().name()
              + ": "
              + diagnostic.getFormattedMessage()
              + (diagnostic.hasError() ? " (" + diagnostic.getError() + ")" : ""));
    }
  }

  private static void stopAt(Set<String> faults) {
    if (!faults.isEmpty()) {
      throw new Misprint(new ArrayList<>(faults));
    }
  }

  private static byte[] saved(PDDocument document) throws IOException {
    var out = new ByteArrayOutputStream();
    document.save(out);
    return out.toByteArray();
  }
}
