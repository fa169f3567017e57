package org.seafettle.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.seafettle.problem.Problem;

/** Each kind of fault, with its place, what is wrong and what to do: survey-faults.yaml. */
class SurveyFaultsTest {

  @TestFactory
  Stream<DynamicTest> each_fault_is_told_with_its_place_and_a_remedy() throws IOException {
    var cases = new ObjectMapper(new YAMLFactory()).readTree(Surveys.text("survey-faults.yaml"));
    assertThat(cases).hasSizeGreaterThan(90);
    return StreamSupport.stream(cases.spliterator(), false)
        .map(c -> DynamicTest.dynamicTest(c.get("says").asText(), () -> hold(c)));
  }

  private static void hold(JsonNode c) {
    var json = Surveys.with(c.get("replace").asText(), c.get("by").asText());
    var expected = new ArrayList<String>();
    c.get("faults")
        .forEach(
            f ->
                expected.add(
                    told(
                        "survey.json: " + f.get("at").asText(),
                        f.get("fault").asText(),
                        f.get("remedy").asText())));
    assertThat(Surveys.faults(json, SurveyFaultsTest::inSmallTypeface))
        .extracting(SurveyFaultsTest::told)
        .containsExactlyElementsOf(expected);
  }

  /** A typeface without the pictures that begin at U+2600. */
  private static boolean inSmallTypeface(int codePoint) {
    return codePoint < 0x2600;
  }

  private static String told(Problem problem) {
    return told(problem.place().toString(), problem.fault(), problem.remedy());
  }

  private static String told(String at, String fault, String remedy) {
    return at + "\n" + fault + "\n" + remedy;
  }

  @Test
  void the_good_survey_has_no_fault() {
    assertThat(Surveys.faults(Surveys.GOOD, SurveyFaultsTest::inSmallTypeface)).isEmpty();
  }

  @Test
  void all_faults_are_told_at_once_and_none_twice() {
    var broken = Surveys.faults(Surveys.text("broken-survey.json"));
    var text = String.join("\n", broken.stream().map(Problem::toString).toList()) + "\n";
    Golden.hold("broken-survey.txt", text);
    assertThat(broken).extracting(p -> p.place().field()).doesNotHaveDuplicates();
    assertThat(lines(broken)).isSorted();
  }

  private static List<Integer> lines(List<Problem> problems) {
    return problems.stream().map(p -> p.place().line().orElseThrow()).toList();
  }
}
