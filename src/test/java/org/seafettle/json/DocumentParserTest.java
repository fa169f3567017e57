package org.seafettle.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.seafettle.problem.Problem;
import org.seafettle.problem.Refused;

class DocumentParserTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          {~"a": 1,~}             | 3 | 1  | there is a comma after the last entry      | Remove the comma.
          {"a": [1, 2,]}          | 1 | 13 | there is a comma after the last entry      | Remove the comma.
          {~// one~"a": 1}        | 2 | 1  | there is a comment                         | Remove it; a remark goes into a "note".
          {/* one */ "a": 1}      | 1 | 2  | there is a comment                         | Remove it; a remark goes into a "note".
          {~# one~"a": 1}         | 2 | 1  | there is a comment                         | Remove it; a remark goes into a "note".
          {"a": NaN}              | 1 | 10 | a word stands where a number is wanted     | Leave out what was not read.
          {"a": -Infinity}        | 1 | 16 | a word stands where a number is wanted     | Leave out what was not read.
          {"a": 1~"b": 2}         | 2 | 1  | a comma is missing between two entries     | Put a comma between them.
          {"a" 1}                 | 1 | 6  | a colon is missing after a name            | Write "name": value.
          {a: 1}                  | 1 | 2  | a name without quotation marks             | Write " around it.
          {'a': 1}                | 1 | 2  | there is a single quotation mark           | Write " around names and texts.
          {"a": 'b'}              | 1 | 7  | there is a single quotation mark           | Write " around names and texts.
          {"a": yes}              | 1 | 7  | a text without quotation marks             | Write " around texts and quantities; true and false go without.
          {"a": "b~"}             | 1 | 9  | a text goes on over the end of its line, or has another control character in it | Close it with " on the same line; a new line within it is written \\n.
          {"a": "b\\q"}           | 1 | 10 | a backslash has no meaning here            | Write \\\\ for a backslash; between folders write /.
          {"a": 007}              | 1 | 8  | a number is not written as JSON wants it   | Write it without leading zeros, with a digit on both sides of the point, such as 0.5.
          {"a": .5}               | 1 | 7  | a number is not written as JSON wants it   | Write it without leading zeros, with a digit on both sides of the point, such as 0.5.
          {"a": 5.}               | 1 | 8  | a number is not written as JSON wants it   | Write it without leading zeros, with a digit on both sides of the point, such as 0.5.
          {"a": +5}               | 1 | 8  | a number is not written as JSON wants it   | Write it without leading zeros, with a digit on both sides of the point, such as 0.5.
          {"a": {"b": 1           | 1 | 14 | the file ends before everything is closed  | Close what is open with ", ] or }.
          {"a": "b                | 1 | 9  | the file ends before everything is closed  | Close what is open with ", ] or }.
          {"a": 1}}               | 1 | 9  | this character does not belong here        | Check the quotation marks, commas and brackets around it.
          {"a": 1} {"b": 2}       | 1 | 10 | the file goes on after its last }          | Remove what follows, or the } before it.
          {"a": 12 V}             | 1 | 10 | a comma is missing between two entries     | Put a comma between them.
          <survey/>               | 1 | 1  | this character does not belong here        | Check the quotation marks, commas and brackets around it.
          """)
  void what_is_no_json_is_told_in_plain_words(
      String text, int line, int column, String fault, String remedy) {
    var problem = refused(text.replace('~', '\n').getBytes(StandardCharsets.UTF_8));
    assertThat(problem.fault())
        .isEqualTo("This is not JSON: " + fault + " (column " + column + ").");
    assertThat(problem.remedy()).isEqualTo(remedy);
    assertThat(problem.place()).hasToString("survey.json, line " + line);
  }

  @Test
  void an_empty_file_is_refused() {
    assertThat(refused(new byte[0]).fault()).isEqualTo("The file is empty.");
    assertThat(refused(" \n\n".getBytes(StandardCharsets.UTF_8)).fault())
        .isEqualTo("The file is empty.");
  }

  @Test
  void a_byte_order_mark_is_refused() {
    var problem = refused("\uFEFF{}".getBytes(StandardCharsets.UTF_8));
    assertThat(problem.fault()).isEqualTo("The file begins with a byte order mark.");
    assertThat(problem.remedy()).isEqualTo("Save it as UTF-8 without a byte order mark.");
  }

  @ParameterizedTest
  @CsvSource({"UTF-16", "UTF-16LE", "UTF-16BE", "UTF-32BE"})
  void other_encodings_are_refused(String charset) {
    assertThat(refused("{\"a\": 1}".getBytes(Charset.forName(charset))).fault())
        .isEqualTo("The file is written in UTF-16 or UTF-32.");
  }

  @Test
  void bytes_that_are_no_utf_8_are_refused_with_their_line() {
    var problem = refused("{\n\"a\": \"°\"}".getBytes(StandardCharsets.ISO_8859_1));
    assertThat(problem.place()).hasToString("survey.json, line 2");
    assertThat(problem.fault()).isEqualTo("The file has bytes that are not UTF-8.");
    assertThat(refused(new byte[] {'{', (byte) 0xC3}).fault())
        .isEqualTo("The file has bytes that are not UTF-8.");
  }

  @Test
  void brackets_without_end_are_refused() {
    assertThat(refused("[".repeat(100_000).getBytes(StandardCharsets.UTF_8)).fault())
        .contains("the brackets are nested too deeply");
  }

  @Test
  void a_number_without_end_is_refused() {
    assertThat(refused("9".repeat(100_000).getBytes(StandardCharsets.UTF_8)).fault())
        .contains("a number or name is too long");
  }

  @Test
  void a_file_that_is_no_object_is_refused() {
    assertThat(Surveys.faults("[1]"))
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.fault())
                  .isEqualTo("Here stands a list where an object in { } is wanted.");
              assertThat(p.place()).hasToString("survey.json, line 1");
            });
  }

  @Test
  void every_field_knows_its_line() {
    var document = DocumentParser.parse("f", "{\n\"a\": {\n \"b c\":\n[1,\n2]}}");
    assertThat(document.line("a")).hasValue(2);
    assertThat(document.line("a[\"b c\"]")).hasValue(3);
    assertThat(document.line("a[\"b c\"][1]")).hasValue(5);
    assertThat(document.line("a.missing")).hasValue(2);
    assertThat(document.line("missing")).hasValue(1);
  }

  private static Problem refused(byte[] bytes) {
    var refused =
        catchThrowableOfType(Refused.class, () -> DocumentParser.parse("survey.json", bytes));
    assertThat(refused.problems()).hasSize(1);
    return refused.problems().get(0);
  }
}
