package org.seafettle.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * The typefaces supplied with the program: Roboto in four weights, and DejaVu Sans for every
 * character that Roboto lacks. Fonts of the machine are never used. Safe for many threads; keep one
 * for the life of the program, since it holds the files once read.
 */
public final class Typefaces {

  /** Directions that need a reordering of the line, which the printer does not do. */
  private static final Set<Byte> REORDERED =
      Set.of(
          Character.DIRECTIONALITY_RIGHT_TO_LEFT,
          Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC,
          Character.DIRECTIONALITY_ARABIC_NUMBER,
          Character.DIRECTIONALITY_LEFT_TO_RIGHT_EMBEDDING,
          Character.DIRECTIONALITY_LEFT_TO_RIGHT_OVERRIDE,
          Character.DIRECTIONALITY_LEFT_TO_RIGHT_ISOLATE,
          Character.DIRECTIONALITY_RIGHT_TO_LEFT_EMBEDDING,
          Character.DIRECTIONALITY_RIGHT_TO_LEFT_OVERRIDE,
          Character.DIRECTIONALITY_RIGHT_TO_LEFT_ISOLATE,
          Character.DIRECTIONALITY_FIRST_STRONG_ISOLATE,
          Character.DIRECTIONALITY_POP_DIRECTIONAL_FORMAT,
          Character.DIRECTIONALITY_POP_DIRECTIONAL_ISOLATE);

  private static final int OBJECT_REPLACEMENT = 0xFFFC;
  private static final int REPLACEMENT = 0xFFFD;

  private final Map<Typeface, byte[]> files = new ConcurrentHashMap<>();
  private final Map<Typeface, CmapLookup> characters = new ConcurrentHashMap<>();

  /**
   * Whether this character can be printed: some supplied upright typeface draws it, and it is read
   * from left to right. False for control characters other than tab and line ends.
   */
  public boolean covers(int codePoint) {
    if (codePoint == '\t' || codePoint == '\n' || codePoint == '\r') {
      return true;
    }
    if (Character.isISOControl(codePoint)
        || codePoint == OBJECT_REPLACEMENT
        || codePoint == REPLACEMENT) {
      return false;
    }
    return !REORDERED.contains(Character.getDirectionality(codePoint))
        && (draws(Typeface.ROBOTO, codePoint) || draws(Typeface.DEJAVU, codePoint));
  }

  /**
   * The characters of the text that cannot be printed, each once, in the order of their numbers.
   */
  public Set<Integer> uncovered(String text) {
    return text.codePoints()
        .filter(codePoint -> !covers(codePoint))
        .boxed()
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** The families by the names that a style sheet may use. */
  static Set<String> families() {
    return Arrays.stream(Typeface.Family.values())
        .map(Typeface.Family::cssName)
        .collect(Collectors.toUnmodifiableSet());
  }

  byte[] file(Typeface typeface) {
    return files.computeIfAbsent(typeface, Typeface::bytes);
  }

  private boolean draws(Typeface typeface, int codePoint) {
    return characters.computeIfAbsent(typeface, this::read).getGlyphId(codePoint) != 0;
  }

  private CmapLookup read(Typeface typeface) {
    try (var font = new TTFParser().parse(new RandomAccessReadBuffer(file(typeface)))) {
      return font.getUnicodeCmapLookup();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
