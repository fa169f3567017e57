package org.seafettle.pdf;

import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/**
 * By what names the content of a page calls the properties of its artifacts. The library marks the
 * background of every box as an artifact with properties of its own, also of the many boxes that
 * have none: seven hundred on three pages. Here they all share one, an artifact of layout, which
 * needs no rectangle (ISO 32000-1, table 330). The heads and feet of a page keep their own.
 */
final class Marks extends COSDictionary {

  private static final COSName BACKGROUND = COSName.getPDFName("Background");

  private Marks() {
    var layout = new COSDictionary();
    layout.setItem(COSName.TYPE, COSName.getPDFName("Layout"));
    setItem(BACKGROUND, layout);
  }

  /** The next page of a document, with such names. */
  static PDPage page(PDDocument document, float width, float height) {
    var page = new PDPage(new PDRectangle(width, height));
    var resources = new PDResources();
    resources.getCOSObject().setItem(COSName.PROPERTIES, new Marks());
    page.setResources(resources);
    document.addPage(page);
    return page;
  }

  @Override
  public boolean containsValue(Object properties) {
    return properties instanceof COSDictionary mark
        && COSName.BACKGROUND.equals(mark.getCOSName(COSName.TYPE));
  }

  @Override
  public COSName getKeyForValue(Object properties) {
    return BACKGROUND;
  }
}
