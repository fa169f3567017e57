package org.seafettle.samples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * A yard of boats that do not exist, each with a survey and six photographs, the same for the same
 * number. Started by itself it writes one: {@code DrawnYard FOLDER BOATS [WIDTH]}.
 */
public final class DrawnYard {

  private static final int WIDTH = 1600;

  private static final List<String> FIRST =
      List.of(
          "Marsh",
          "Little",
          "Quiet",
          "Amber",
          "Seldom",
          "Second",
          "Northern",
          "Patient",
          "Salt",
          "Wandering",
          "Early",
          "Brave",
          "Slow",
          "Copper",
          "Windward",
          "Misty");
  private static final List<String> SECOND =
      List.of(
          "Dunlin",
          "Turnstone",
          "Pipit",
          "Thimble",
          "Lantern",
          "Sandpiper",
          "Bramble",
          "Wheatear",
          "Curlew",
          "Button",
          "Osprey",
          "Kittiwake",
          "Pebble",
          "Sparrow",
          "Rowan",
          "Tinker");
  private static final List<String> PLACES =
      List.of("Fjellhamn", "Quillhaven", "Osterwik", "Penlowan");

  private static final List<String> PHOTOS =
      List.of("dipstick", "belt", "exhaust-elbow", "impeller", "anode", "expansion-tank");

  private DrawnYard() {}

  public static void main(String[] arguments) throws IOException {
    int width = arguments.length > 2 ? Integer.parseInt(arguments[2]) : WIDTH;
    draw(Path.of(arguments[0]), Integer.parseInt(arguments[1]), width);
  }

  /**
   * Writes the yard; what is there already is left as it is.
   *
   * @param width of the photographs, in pixels
   */
  public static void draw(Path folder, int boats, int width) throws IOException {
    var camera = new YardCamera(width, PHOTOS);
    for (int boat = 1; boat <= boats; boat++) {
      var survey = folder.resolve(String.format(Locale.ROOT, "berth-%04d", boat));
      if (Files.exists(survey.resolve("survey.json"))) {
        continue;
      }
      Files.createDirectories(survey.resolve("photos"));
      for (int i = 0; i < PHOTOS.size(); i++) {
        var file = survey.resolve("photos").resolve(PHOTOS.get(i) + ".jpg");
        Files.write(file, camera.picture(i, name(boat) + ", berth " + boat));
      }
      Files.writeString(survey.resolve("survey.json"), survey(boat));
    }
  }

  private static String name(int boat) {
    int first = boat * 7 % FIRST.size();
    int second = (boat * 5 + boat / FIRST.size()) % SECOND.size();
    return FIRST.get(first) + " " + SECOND.get(second);
  }

  private static String survey(int boat) {
    var random = new Random(boat * 7919L);
    var place = PLACES.get(boat % PLACES.size());
    return """
    {
      "format": "seafettle-survey/1",
      "survey": {
        "id": "YD-2026-%04d", "purpose": "season-end", "date": "2026-10-%02d",
        "place": "%s, hall %d", "afloat": false, "engines-cold": true, "air": "9 °C",
        "by": { "name": "%s Yard, bench %d", "role": "yard" }
      },
      "boat": { "name": "%s", "length": "%d.%d m", "built": %d, "water": "salt",
                "fuel": { "kind": "diesel", "tank": "%d L" } },
      "engines": [ { "id": "main", "type": "inboard-diesel", "year": %d, "cylinders": 3,
                     "power": "%d kW", "hours": "%d h", "cooling": "closed-circuit" } ],
      "batteries": [ { "id": "start", "serves": ["main"], "chemistry": "flooded",
                       "nominal": "12 V", "capacity": "80 Ah" } ],
      "pumps": [ { "id": "bilge", "rated": "2000 L/h" } ],
      "findings": [
    %s
      ],
      "photos": [
    %s
      ],
      "prices": { "currency": "EUR", "labour": 72,
                  "items": { "seacock": 84, "hose-and-clamps": 38, "exhaust-elbow": 240,
                             "battery": 189, "coolant": 26, "separator-element": 22,
                             "engine-oil": 46, "oil-filter": 17, "belt": 24 } }
    }
    """
        .formatted(
            boat,
            1 + random.nextInt(30),
            place,
            1 + random.nextInt(4),
            place,
            1 + random.nextInt(6),
            name(boat),
            6 + random.nextInt(7),
            random.nextInt(10),
            1985 + random.nextInt(38),
            80 + 20 * random.nextInt(12),
            2000 + random.nextInt(24),
            12 + random.nextInt(40),
            200 + random.nextInt(4000),
            findings(random),
            photos(boat));
  }

  private static String findings(Random random) {
    var lines = new ArrayList<String>();
    lines.add(reading("oil-level", "main", "position", (2 + random.nextInt(9)) / 10.0 + "", 0));
    lines.add(choice(random, "oil-appearance", "main", 0, "near-black", "brown", "milky"));
    int years = random.nextInt(2);
    lines.add(
        "{ \"check\": \"engine-oil-change\", \"on\": \"main\", \"last\": { \"date\": \""
            + (2025 + years)
            + "-09-20\", \"hours\": \"190 h\" } }");
    lines.add(choice(random, "coolant-level", "main", 5, "full", "full", "low", "far-below"));
    lines.add(choice(random, "drive-belts", "main", 1, "tight-and-clean", "cracked"));
    lines.add(
        choice(random, "cooling-hoses", "main", -1, "sound", "minor-cracks-or-rust", "leaking"));
    lines.add(choice(random, "exhaust-elbow", "main", 2, "sound", "surface-rust", "gas-escapes"));
    lines.add(choice(random, "winter-protection", "main", -1, "filled-and-measured", "too-weak"));
    lines.add(choice(random, "fuel-leak-or-vapour", "", -1, "none", "none", "none", "drip"));
    lines.add(choice(random, "fuel-hose-condition", "", -1, "sound", "hardening", "cracked"));
    lines.add(choice(random, "fuel-appearance", "", -1, "clear-and-bright", "hazy", "drops"));
    lines.add(choice(random, "wiring-condition", "main", -1, "sound", "sleeve-chafed"));
    lines.add(choice(random, "battery-case", "start", -1, "sound", "sound", "dirty", "bulged"));
    var volts = String.format(Locale.ROOT, "12.%02d V", 5 + random.nextInt(70));
    lines.add(
        "{ \"check\": \"battery-rest-voltage\", \"on\": \"start\", \"readings\": { \"voltage\": \""
            + volts
            + "\", \"temperature\": \"9 °C\", \"rested\": \"14 h\" } }");
    lines.add(choice(random, "seacocks", "", -1, "free", "stiff", "single-clamp", "seized"));
    if (random.nextInt(3) > 0) {
      lines.add(choice(random, "bilge-water", "", -1, "dry", "damp", "up-to-the-switch"));
    }
    return "    " + String.join(",\n    ", lines);
  }

  private static String choice(Random random, String check, String on, int photo, String... words) {
    // most boats are well: the first word comes half of the time
    var word = words[random.nextBoolean() ? 0 : random.nextInt(words.length)];
    return "{ \"check\": \"%s\"%s, \"is\": \"%s\"%s }".formatted(check, on(on), word, shown(photo));
  }

  private static String reading(String check, String on, String what, String value, int photo) {
    return "{ \"check\": \"%s\"%s, \"readings\": { \"%s\": %s }%s }"
        .formatted(check, on(on), what, value, shown(photo));
  }

  private static String on(String component) {
    return component.isEmpty() ? "" : ", \"on\": \"" + component + "\"";
  }

  private static String shown(int photo) {
    return photo < 0 ? "" : ", \"photos\": [\"" + PHOTOS.get(photo) + "\"]";
  }

  private static String photos(int boat) {
    return PHOTOS.stream()
        .map(
            photo ->
                "    { \"id\": \"%s\", \"file\": \"photos/%s.jpg\", \"caption\": \"%s, berth %d\" }"
                    .formatted(photo, photo, photo, boat))
        .collect(java.util.stream.Collectors.joining(",\n"));
  }
}
