package org.seafettle.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.jspecify.annotations.Nullable;

/** Reads a printed document back, to see whether what was given is really in it. */
public final class Printed implements AutoCloseable {

  private final PDDocument document;

  public Printed(byte[] pdf) {
    try {
      document = Loader.loadPDF(pdf);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public PDDocument document() {
    return document;
  }

  public int pages() {
    return document.getNumberOfPages();
  }

  /** The text of all pages, line by line as the eye finds it; text in drawings is not text. */
  public String text() {
    return text(1, document.getNumberOfPages());
  }

  /** The text of one page, counted from 1. */
  public String text(int page) {
    return text(page, page);
  }

  private String text(int first, int last) {
    try {
      var stripper = new PDFTextStripper();
      stripper.setLineSeparator("\n");
      stripper.setSortByPosition(true);
      stripper.setStartPage(first);
      stripper.setEndPage(last);
      return stripper.getText(document);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * What a screen reader says, one line for each element that holds text or is a figure: the order
   * of the structure, whatever the order on paper.
   */
  public List<String> readAloud() {
    var spoken = new ArrayList<String>();
    readAloud(document.getDocumentCatalog().getStructureTreeRoot(), null, marked(), spoken, false);
    return spoken;
  }

  /**
   * What the eye reads, in the order of the structure: as {@link #readAloud}, but of a link its own
   * words, and of a table's head that each page repeats only one.
   */
  public List<String> words() {
    var words = new ArrayList<String>();
    readAloud(document.getDocumentCatalog().getStructureTreeRoot(), null, marked(), words, true);
    return words;
  }

  private static void readAloud(
      PDStructureNode node,
      @Nullable PDPage page,
      Map<PDPage, Map<Integer, String>> marked,
      List<String> spoken,
      boolean asWritten) {
    if (node instanceof PDStructureElement element
        && element.getAlternateDescription() != null
        && !(asWritten && "Link".equals(element.getStructureType()))) {
      spoken.add(element.getAlternateDescription());
      return;
    }
    for (Object kid : node.getKids()) {
      if (kid instanceof PDStructureElement element) {
        var at = element.getPage() == null ? page : element.getPage();
        var words = new ArrayList<String>();
        readAloud(element, at, marked, words, asWritten);
        boolean repeated = asWritten && "TH".equals(element.getStructureType());
        spoken.addAll(repeated ? words.stream().distinct().toList() : words);
      } else if (kid instanceof PDMarkedContentReference reference) {
        spoken.add(text(marked, reference.getPage(), reference.getMCID()));
      } else if (kid instanceof Integer number) {
        spoken.add(text(marked, page, number));
      }
    }
  }

  private static String text(
      Map<PDPage, Map<Integer, String>> marked, @Nullable PDPage page, int number) {
    return marked.getOrDefault(page, Map.of()).getOrDefault(number, "");
  }

  private Map<PDPage, Map<Integer, String>> marked() {
    var marked = new HashMap<PDPage, Map<Integer, String>>();
    for (var page : document.getPages()) {
      try {
        var extractor = new PDFMarkedContentExtractor();
        extractor.processPage(page);
        var texts = new HashMap<Integer, String>();
        extractor
            .getMarkedContents()
            .forEach(content -> texts.put(content.getMCID(), text(content)));
        marked.put(page, texts);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return marked;
  }

  private static String text(PDMarkedContent content) {
    return content.getContents().stream()
        .map(part -> part instanceof TextPosition glyph ? glyph.getUnicode() : "")
        .collect(Collectors.joining());
  }

  /** A glyph on paper: its box in points from the left and the top. */
  private record Glyph(String text, float x, float y, float width) {}

  private List<Glyph> glyphs(int page) {
    var glyphs = new ArrayList<Glyph>();
    try {
      var stripper =
          new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition at) {
              if (!at.getUnicode().isBlank()) {
                glyphs.add(
                    new Glyph(
                        at.getUnicode(), at.getXDirAdj(), at.getYDirAdj(), at.getWidthDirAdj()));
              }
            }
          };
      stripper.setStartPage(page);
      stripper.setEndPage(page);
      stripper.getText(document);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return glyphs;
  }

  /** The lines of a page of which a part lies less than so many millimetres from its sides. */
  public Set<String> outsideMargins(int page, float millimetres) {
    float margin = millimetres * 72 / 25.4f - 0.5f;
    float right = document.getPage(page - 1).getMediaBox().getWidth() - margin;
    var glyphs = glyphs(page);
    return glyphs.stream()
        .filter(g -> g.x() < margin || g.x() + g.width() > right)
        .map(g -> line(glyphs, g))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** The lines of a page in which one letter is printed on another. */
  public Set<String> overprinted(int page) {
    var glyphs = glyphs(page);
    var lines = new TreeMap<Integer, List<Glyph>>();
    glyphs.forEach(g -> lines.computeIfAbsent(Math.round(g.y()), y -> new ArrayList<>()).add(g));
    var found = new TreeSet<String>();
    for (var line : lines.values()) {
      line.sort(Comparator.comparing(Glyph::x));
      for (int i = 1; i < line.size(); i++) {
        var before = line.get(i - 1);
        if (before.x() + before.width() > line.get(i).x() + 1) {
          found.add(line(glyphs, before));
        }
      }
    }
    return found;
  }

  private static String line(List<Glyph> glyphs, Glyph on) {
    return glyphs.stream()
        .filter(g -> Math.abs(g.y() - on.y()) < 1)
        .map(Glyph::text)
        .collect(Collectors.joining());
  }

  /** The alternative texts of all figures, in the order of reading. */
  public List<String> alternativeTexts() {
    return elements().stream()
        .filter(element -> "Figure".equals(element.getStructureType()))
        .map(element -> String.valueOf(element.getAlternateDescription()))
        .toList();
  }

  /** The structure types of all elements, such as {@code H1} and {@code TH}, in reading order. */
  public List<String> structure() {
    return elements().stream().map(PDStructureElement::getStructureType).toList();
  }

  public List<PDStructureElement> elements() {
    var found = new ArrayList<PDStructureElement>();
    collect(document.getDocumentCatalog().getStructureTreeRoot(), found);
    return found;
  }

  private static void collect(PDStructureNode node, Collection<PDStructureElement> found) {
    for (Object kid : node.getKids()) {
      if (kid instanceof PDStructureElement element) {
        found.add(element);
        collect(element, found);
      }
    }
  }

  /** How many pictures are stored in the document; one that is shown twice counts once. */
  public int pictures() {
    return pictureStreams().size();
  }

  /** The pictures as they are stored: of a JPEG, the bytes of its file. */
  public List<byte[]> pictureBytes() {
    return pictureStreams().stream()
        .map(
            image -> {
              try (var raw = image.getCOSObject().createRawInputStream()) {
                return raw.readAllBytes();
              } catch (IOException e) {
                throw new UncheckedIOException(e);
              }
            })
        .toList();
  }

  private List<PDImageXObject> pictureStreams() {
    var seen = Collections.newSetFromMap(new IdentityHashMap<COSBase, Boolean>());
    var found = new ArrayList<PDImageXObject>();
    try {
      for (var page : document.getPages()) {
        for (var name : page.getResources().getXObjectNames()) {
          if (page.getResources().getXObject(name) instanceof PDImageXObject image
              && seen.add(image.getCOSObject())) {
            found.add(image);
          }
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return found;
  }

  /** The attached files by their names. */
  public Map<String, PDComplexFileSpecification> attachments() {
    try {
      var names = new PDDocumentNameDictionary(document.getDocumentCatalog());
      return new LinkedHashMap<>(names.getEmbeddedFiles().getNames());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The bookmarks as a reader sees them, each with its depth in front, such as {@code 1 Oil}. */
  public List<String> bookmarks() {
    var titles = new ArrayList<String>();
    collect(document.getDocumentCatalog().getDocumentOutline(), 1, titles);
    return titles;
  }

  private static void collect(PDOutlineNode node, int depth, List<String> titles) {
    for (PDOutlineItem item : node.children()) {
      titles.add(depth + " " + item.getTitle());
      collect(item, depth + 1, titles);
    }
  }

  /** The names of all fonts in the document, without the mark of the subset. */
  public Set<String> fonts() {
    var names = new TreeSet<String>();
    for (var key : document.getDocument().getXrefTable().keySet()) {
      var object = document.getDocument().getObjectFromPool(key);
      if (object.getObject() instanceof COSDictionary dictionary
          && COSName.FONT.equals(dictionary.getCOSName(COSName.TYPE))) {
        names.add(dictionary.getNameAsString(COSName.BASE_FONT).replaceFirst("^[A-Z]{6}\\+", ""));
      }
    }
    return names;
  }

  @Override
  public void close() {
    try {
      document.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
