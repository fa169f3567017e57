package org.seafettle.house;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/** What an attribute of a logo's drawing may say. */
final class DrawingValues {

  private static final String NUMBER = "[-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d{1,2})?";
  private static final Pattern ONE_NUMBER = Pattern.compile(NUMBER);
  private static final Pattern FLAG = Pattern.compile("[01]");
  private static final Pattern BETWEEN = Pattern.compile("[\\s,]*");
  private static final Pattern FUNCTION = Pattern.compile("([A-Za-z]+)\\s*\\(([^()]*)\\)[\\s,]*");

  /** How many numbers each function of a transform may take (SVG 1.1, 7.6). */
  private static final Map<String, Set<Integer>> FUNCTIONS =
      Map.of(
          "matrix", Set.of(6),
          "translate", Set.of(1, 2),
          "scale", Set.of(1, 2),
          "rotate", Set.of(1, 3),
          "skewX", Set.of(1),
          "skewY", Set.of(1));

  private static final Pattern COLOUR =
      Pattern.compile(
          "none|#[0-9A-Fa-f]{3}|#[0-9A-Fa-f]{6}|black|silver|gray|white|maroon|red|purple|fuchsia"
              + "|green|lime|olive|yellow|navy|blue|teal|aqua");

  /** How many numbers each command of a path takes at a time (SVG 1.1, 8.3). */
  private static final Map<Character, Integer> COMMANDS =
      Map.of('m', 2, 'l', 2, 'h', 1, 'v', 1, 'c', 6, 's', 4, 'q', 4, 't', 2, 'a', 7, 'z', 0);

  private static final Pattern SEGMENT = Pattern.compile("([A-Za-z])([^A-DF-Za-df-z]*)");

  /** Beyond it nothing of a logo lies. */
  private static final double FARTHEST = 100_000;

  private static final Map<String, Predicate<String>> ALLOWED = allowed();

  private DrawingValues() {}

  private static Map<String, Predicate<String>> allowed() {
    var allowed = new HashMap<String, Predicate<String>>();
    for (var name :
        "x y x1 y1 x2 y2 cx cy r rx ry width height dx dy stroke-width stroke-miterlimit font-size"
            .split(" ")) {
      allowed.put(name, DrawingValues::isLength);
    }
    for (var name : Set.of("fill", "stroke")) {
      allowed.put(name, COLOUR.asMatchPredicate());
    }
    for (var name : Set.of("opacity", "fill-opacity", "stroke-opacity")) {
      allowed.put(name, Pattern.compile("1(?:\\.0*)?").asMatchPredicate());
    }
    allowed.put("d", DrawingValues::isPath);
    allowed.put("points", DrawingValues::areNumbers);
    allowed.put("transform", DrawingValues::isTransform);
    allowed.put("stroke-dasharray", value -> value.equals("none") || areNumbers(value));
    allowed.put("fill-rule", Set.of("nonzero", "evenodd")::contains);
    allowed.put("stroke-linecap", Set.of("butt", "round", "square")::contains);
    allowed.put("stroke-linejoin", Set.of("miter", "round", "bevel")::contains);
    allowed.put("text-anchor", Set.of("start", "middle", "end")::contains);
    allowed.put("font-style", Set.of("normal", "italic")::contains);
    allowed.put("font-weight", Set.of("300", "400", "500", "700", "normal", "bold")::contains);
    allowed.put("font-family", Set.of("Roboto", "'Roboto'", "\"Roboto\"")::contains);
    return Map.copyOf(allowed);
  }

  static boolean allows(String name, String value) {
    return ALLOWED.getOrDefault(name, unknown -> false).test(value);
  }

  /** Names, versions, notes of drawing programs, and the opacity of what is not transparent. */
  static boolean saysNothing(String name, String value) {
    return Set.of("id", "class", "version", "baseProfile", "role").contains(name)
        || name.startsWith("xmlns")
        || name.startsWith("xml:")
        || name.startsWith("data-")
        || name.startsWith("aria-")
        || name.startsWith("-")
        || name.matches("(?:inkscape|sodipodi|sketch|serif):.*")
        || name.endsWith("opacity") && allows(name, value.strip())
        || name.equals("display") && value.strip().equals("inline");
  }

  static Map<String, String> declarations(String style) {
    var declarations = new LinkedHashMap<String, String>();
    for (var declaration : style.split(";")) {
      int colon = declaration.indexOf(':');
      if (colon > 0) {
        declarations.put(
            declaration.substring(0, colon).strip(), declaration.substring(colon + 1).strip());
      } else if (!declaration.isBlank()) {
        declarations.put("style", declaration);
      }
    }
    return declarations;
  }

  static boolean isNumber(String text) {
    return text.length() < 40
        && ONE_NUMBER.matcher(text).matches()
        && Math.abs(Double.parseDouble(text)) <= FARTHEST;
  }

  private static boolean isLength(String text) {
    return isNumber(text.endsWith("px") ? text.substring(0, text.length() - 2) : text);
  }

  private static boolean areNumbers(String text) {
    return count(text, false) > 0;
  }

  private static boolean isTransform(String text) {
    var function = FUNCTION.matcher(text);
    int end = 0;
    while (function.region(end, text.length()).lookingAt()) {
      var allowed = FUNCTIONS.getOrDefault(function.group(1), Set.of());
      if (!allowed.contains(count(function.group(2), false))) {
        return false;
      }
      end = function.end();
    }
    return end > 0 && end == text.length();
  }

  private static boolean isPath(String text) {
    var segments = SEGMENT.matcher(text);
    int end = 0;
    while (segments.find() && text.substring(end, segments.start()).isBlank()) {
      char command = Character.toLowerCase(segments.group(1).charAt(0));
      int each = COMMANDS.getOrDefault(command, -1);
      int numbers = count(segments.group(2), command == 'a');
      boolean starts = end > 0 || command == 'm';
      if (!starts || each < 0 || each == 0 && numbers != 0) {
        return false;
      }
      if (each > 0 && (numbers < each || numbers % each != 0)) {
        return false;
      }
      end = segments.end();
    }
    return end > 0 && text.substring(end).isBlank();
  }

  /** How many numbers a text is; -1 where there is anything else in it. */
  private static int count(String text, boolean arcs) {
    int at = text.length() - text.stripLeading().length();
    int count = 0;
    while (at < text.length()) {
      // the flags of an arc need nothing between them
      boolean isFlag = arcs && (count % 7 == 3 || count % 7 == 4);
      var next = (isFlag ? FLAG : ONE_NUMBER).matcher(text).region(at, text.length());
      if (!next.lookingAt() || Math.abs(Double.parseDouble(next.group())) > FARTHEST) {
        return -1;
      }
      count++;
      var between = BETWEEN.matcher(text).region(next.end(), text.length());
      at = between.lookingAt() ? between.end() : next.end();
    }
    return count;
  }
}
