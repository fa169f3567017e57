package org.seafettle.house;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.seafettle.problem.Place;
import org.seafettle.problem.Problem;
import org.seafettle.problem.Refused;

class LogoTest {

  private static Logo read(String svg) {
    return Logo.read(svg.getBytes(StandardCharsets.UTF_8), Place.file("logo.svg"));
  }

  private static String svg(String inside) {
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\""
        + " viewBox=\"0 0 300 80\">"
        + inside
        + "</svg>";
  }

  private static List<Problem> faults(String svg) {
    return catchThrowableOfType(Refused.class, () -> read(svg)).problems();
  }

  @Test
  void of_a_drawing_nothing_is_left_but_its_shapes() {
    var logo =
        (Logo.Drawing)
            read(
                svg(
                    "<title>t</title><metadata>m</metadata><defs/><!-- c -->"
                        + "<g id=\"a\" style=\"fill:#12202E;stroke:none;fill-opacity:1\">"
                        + "<path d=\"M0 0h10v-1.5e1z\"/>"
                        + "<text x=\"1\" y=\"2\">A&amp;B</text></g>"));
    assertThat(logo.ratio()).isEqualTo(3.75);
    var group = logo.shapes().get(0).parts().get(0);
    assertThat(group.attributes())
        .containsExactly(
            new Logo.Attribute("fill", "#12202E"), new Logo.Attribute("stroke", "none"));
    assertThat(group.parts()).extracting(Logo.Shape::element).containsExactly("path", "text");
    assertThat(group.parts().get(1).parts().get(0).text()).isEqualTo("A&B");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<script>alert(1)</script>",
        "<foreignObject><p/></foreignObject>",
        "<image href='file:///etc/passwd'/>",
        "<use xlink:href='#a'/>",
        "<style>path{fill:url(http://evil.example)}</style>",
        "<a href='http://evil.example'><path d='M0 0'/></a>",
        "<animate attributeName='x'/>",
        "<svg/>",
        "<filter/>",
        "<rect onload='alert(1)'/>",
        "<rect fill='url(#g)'/>",
        "<rect style='fill:url(http://evil.example)'/>",
        "<rect clip-path='url(#c)'/>",
        "<rect xlink:href='#a'/>",
        "<rect opacity='0.5'/>",
        "<rect width='100%'/>",
        "<rect width='1e9'/>",
        "<rect fill='var(--x)'/>",
        "<path d='L0 0'/>",
        "<path d='M0'/>",
        "<path d='M0 0 C1 2 3'/>",
        "<path d='M0 0 zzz9'/>",
        "<path d='M0 0 X'/>",
        "<path d='M0 0 l1e999 1'/>",
        "<g transform='rotate(1 2)'/>",
        "<g transform='scale(1) '/><g transform='nonsense(1)'/>",
        "<text font-family='Comic Sans MS'>A</text>"
      })
  void what_runs_refers_animates_or_is_not_understood_is_refused(String inside) {
    assertThat(faults(svg(inside)))
        .hasSize(1)
        .allMatch(p -> p.place().file().equals("logo.svg"))
        .allMatch(p -> !p.remedy().isBlank());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "M0,0L10-5",
        "m.5.5-1-1z m1 1",
        "M0 0a5 5 0 0110 0A5,5,0,1,0,2,2",
        "M0 0C1 2 3 4 5 6S1 2 3 4Q1 2 3 4T5 6H1V2Z"
      })
  void paths_are_understood_however_tightly_they_are_written(String path) {
    assertThat(read(svg("<path d='" + path + "'/>")).ratio()).isPositive();
  }

  @Test
  void several_faults_are_told_at_once_and_each_once() {
    assertThat(faults(svg("<script/><script/><image/><rect rx='a'/>"))).hasSize(3);
  }

  @Test
  void entities_and_document_types_are_refused_unread() {
    var faults =
        faults(
            "<!DOCTYPE svg [<!ENTITY x SYSTEM \"file:///etc/passwd\">]>" + svg("<text>&x;</text>"));
    assertThat(faults).hasSize(1);
    assertThat(faults.get(0).fault()).contains("DOCTYPE");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "GIF89a",
        "<html/>",
        "<svg/>",
        "<svg xmlns='http://www.w3.org/2000/svg'/>",
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 0 1'/>",
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 900 10'/>",
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 10 900'/>",
        "<svg xmlns='http://www.w3.org/2000/svg' width='50%' height='10'/>"
      })
  void what_is_no_logo_is_refused(String text) {
    assertThat(faults(text)).hasSize(1);
  }

  @Test
  void a_drawing_too_long_too_deep_or_of_too_many_parts_is_refused() {
    assertThat(faults(svg("<path d='M0 0" + " ".repeat(200_000) + "'/>"))).hasSize(1);
    assertThat(faults(svg("<g>".repeat(30) + "</g>".repeat(30)))).hasSize(1);
    assertThat(faults(svg("<g/>".repeat(2100)))).hasSize(1);
  }

  @Test
  void a_long_number_costs_no_time() {
    assertThat(faults(svg("<rect width='" + "1".repeat(150_000) + "x'/>"))).hasSize(1);
    assertThat(faults(svg("<path d='M0 " + "1".repeat(150_000) + "x'/>"))).hasSize(1);
  }

  @Test
  void a_png_is_a_logo_and_a_jpeg_is_none() throws IOException {
    var image = new BufferedImage(200, 50, BufferedImage.TYPE_INT_ARGB);
    var logo = Logo.read(encoded(image, "png"), Place.file("logo.png"));
    assertThat(logo).isInstanceOf(Logo.Picture.class);
    assertThat(logo.ratio()).isEqualTo(4);
    var jpeg = encoded(new BufferedImage(200, 50, BufferedImage.TYPE_INT_RGB), "jpeg");
    assertThat(
            catchThrowableOfType(Refused.class, () -> Logo.read(jpeg, Place.file("l.jpg")))
                .problems()
                .get(0)
                .remedy())
        .isEqualTo("Save it as PNG or SVG.");
  }

  private static byte[] encoded(BufferedImage image, String format) throws IOException {
    var out = new ByteArrayOutputStream();
    ImageIO.write(image, format, out);
    return out.toByteArray();
  }
}
