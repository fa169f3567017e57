package org.seafettle.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.zip.InflaterInputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.seafettle.problem.Place;
import org.seafettle.problem.Problem;
import org.seafettle.problem.Refused;

/** Takes the files out of a document that {@link Enclosure} put in. */
public final class Enclosed {

  /** More than any attachment of a report has; a limit against files that fill the memory. */
  private static final int MOST_BYTES = 32_000_000;

  private Enclosed() {}

  /**
   * The attached files by name; none where there are none.
   *
   * @param name of the PDF, for what is wrong with it
   * @throws Refused where it is no PDF that can be read
   */
  public static Map<String, byte[]> in(String name, byte[] pdf) {
    try (var document = Loader.loadPDF(pdf)) {
      var names = new PDDocumentNameDictionary(document.getDocumentCatalog());
      var files = new LinkedHashMap<String, byte[]>();
      var tree = names.getEmbeddedFiles();
      if (tree != null && tree.getNames() != null) {
        for (var entry : tree.getNames().entrySet()) {
          files.put(entry.getKey(), content(name, entry.getValue()));
        }
      }
      return files;
    } catch (IOException e) {
      throw refused(name, "The file is no PDF that can be read, or damaged.");
    }
  }

  private static byte[] content(String pdf, PDComplexFileSpecification file) throws IOException {
    var attached =
        Optional.ofNullable(file.getEmbeddedFile())
            .orElseThrow(() -> new IOException("an attachment without content"));
    try (var in = unpacked(attached.getCOSObject())) {
      var bytes = in.readNBytes(MOST_BYTES + 1);
      if (bytes.length > MOST_BYTES) {
        throw refused(pdf, "The attached \"" + file.getFilename() + "\" is longer than 32 MB.");
      }
      return bytes;
    }
  }

  /** The library would unpack all of it into the memory before the first byte can be read. */
  private static InputStream unpacked(COSStream packed) throws IOException {
    if (packed.getFilters() == null) {
      return packed.createRawInputStream();
    }
    if (COSName.FLATE_DECODE.equals(packed.getFilters())) {
      return new InflaterInputStream(packed.createRawInputStream());
    }
    throw new IOException("packed as no report is");
  }

  private static Refused refused(String file, String fault) {
    return new Refused(new Problem(Place.file(file), fault, "Take the report as it was made."));
  }
}
