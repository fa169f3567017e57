package org.seafettle.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.seafettle.pdf.Printed;

/** The page of a report, as a browser sees it. */
class WebPageInBrowserTest {

  private static final Map<String, String> REPORTS =
      Map.of(
          "neglected", "2026-10-17-marsh-heron-pre-purchase",
          "diesel-inboard", "2026-10-29-patient-griet-season-end",
          "sound-pair/2026", "2026-09-26-tern-s-errand-yearly-record");

  /** Reads a page in a frame of a width, and writes down what it measured. */
  private static final String MEASURE =
      """
      <!DOCTYPE html><meta charset="utf-8"><body>
      <iframe src="page.html" style="border:0;width:WIDTHpx;height:800px"></iframe>
      <script>
      onload = () => {
        const page = document.querySelector('iframe').contentDocument;
        const says = (name, value) => {
          const p = document.createElement('p');
          p.id = name;
          p.textContent = value;
          document.body.append(p);
        };
        const root = page.documentElement;
        says('width', root.clientWidth);
        says('overflow', root.scrollWidth - root.clientWidth);
        const images = [...page.images];
        says('images', images.length);
        says('broken', images.filter(i => !i.complete || i.naturalWidth < 2).length);
        const small = [...page.querySelectorAll('main p, main td, main tbody th')]
          .filter(e => !e.matches('.cap, .hash, .line'))
          .filter(e => parseFloat(page.defaultView.getComputedStyle(e).fontSize) < 16);
        says('small', small.map(e => e.textContent.trim()).join('|'));
        const hidden = [...page.querySelectorAll('.scroll')]
          .filter(e => e.scrollWidth > e.clientWidth + 1);
        says('hidden', hidden.map(e => e.querySelector('table').className).join('|'));
      };
      </script></body>
      """;

  @TempDir private Path folder;
  private Browser browser;

  @BeforeEach
  void find_a_browser() {
    var found = Browser.onThisMachine(folder);
    assumeTrue(
        found.isPresent(),
        "SKIPPED: no Chromium on this machine, so no page was looked at in a browser");
    browser = found.orElseThrow();
  }

  private Path page(String sample) throws IOException {
    var run = Run.of("report", "sample-surveys/" + sample, "--html", "--out", folder.toString());
    assertThat(run.code()).as(run.err()).isZero();
    return Files.copy(folder.resolve(REPORTS.get(sample) + ".html"), folder.resolve("page.html"));
  }

  private Map<String, String> measured(int width) throws IOException {
    var probe = folder.resolve("measure-" + width + ".html");
    Files.writeString(probe, MEASURE.replace("WIDTH", width + ""));
    var said = browser.open(probe, "--dump-dom");
    assertThat(said.console()).isEmpty();
    var measured = new java.util.TreeMap<String, String>();
    Jsoup.parse(said.out()).select("body > p[id]").forEach(p -> measured.put(p.id(), p.text()));
    return measured;
  }

  @ParameterizedTest
  @ValueSource(strings = {"neglected", "diesel-inboard", "sound-pair/2026"})
  void fits_a_telephone_and_a_desk_with_every_picture_and_prints(String sample) throws IOException {
    var page = page(sample);
    var images = Jsoup.parse(Files.readString(page)).select("img").size();
    for (int width : List.of(360, 1200)) {
      assertThat(measured(width))
          .containsEntry("width", width + "")
          .containsEntry("overflow", "0")
          .containsEntry("images", images + "")
          .containsEntry("broken", "0")
          .containsEntry("small", "")
          .containsEntry("hidden", "");
    }
    var pdf = folder.resolve("page.pdf");
    var said = browser.open(page, "--no-pdf-header-footer", "--print-to-pdf=" + pdf);
    assertThat(said.console()).isEmpty();
    try (var printed = new Printed(Files.readAllBytes(pdf))) {
      assertThat(printed.pages()).isBetween(2, 60);
      assertThat(printed.text()).containsAnyOf("signature:", "Whom to ask");
    }
  }

  @Test
  void the_page_itself_forbids_what_somebody_might_put_into_it() throws IOException {
    var page = folder.resolve("tampered.html");
    Files.writeString(
        page,
        Files.readString(page("sound-pair/2026"))
            .replace("<main>", "<main><script>document.title = 'run'</script>"));
    var said = browser.open(page, "--dump-dom");
    assertThat(said.console()).anyMatch(line -> line.contains("Content Security Policy"));
    assertThat(Jsoup.parse(said.out()).title()).isNotEqualTo("run");
  }
}
