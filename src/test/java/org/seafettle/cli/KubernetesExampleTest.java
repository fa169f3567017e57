package org.seafettle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The example manifest, held against the fields of batch/v1 Job in the Kubernetes API. */
class KubernetesExampleTest {

  private List<JsonNode> jobs;

  @BeforeEach
  void read() throws IOException {
    jobs = new ArrayList<>();
    var file = Path.of("src/main/dist/kubernetes/season-job.yaml").toFile();
    try (var documents = new YAMLMapper().readerFor(JsonNode.class).<JsonNode>readValues(file)) {
      documents.forEachRemaining(jobs::add);
    }
  }

  private static JsonNode pod(JsonNode job) {
    return job.at("/spec/template/spec");
  }

  @Test
  void both_are_jobs_that_a_cluster_would_take() {
    assertThat(jobs).hasSize(2);
    for (var job : jobs) {
      assertThat(job.path("apiVersion").asText()).isEqualTo("batch/v1");
      assertThat(job.path("kind").asText()).isEqualTo("Job");
      assertThat(job.at("/metadata/name").asText()).matches("[a-z0-9]([-a-z0-9]{0,61}[a-z0-9])?");
      assertThat(pod(job).path("restartPolicy").asText()).isEqualTo("Never");
      assertThat(pod(job).path("containers")).isNotEmpty();
      for (var container : pod(job).path("containers")) {
        assertThat(container.path("name").asText()).isNotBlank();
        assertThat(container.path("image").asText()).isNotBlank();
        assertThat(container.path("command").isArray()).isTrue();
        assertThat(container.path("args").isArray()).isTrue();
      }
    }
  }

  @Test
  void no_field_is_misspelt() {
    var known =
        List.of(
            "backoffLimit",
            "backoffLimitPerIndex",
            "completionMode",
            "completions",
            "maxFailedIndexes",
            "parallelism",
            "podFailurePolicy",
            "template");
    for (var job : jobs) {
      assertThat(names(job)).containsExactlyInAnyOrder("apiVersion", "kind", "metadata", "spec");
      assertThat(names(job.path("spec"))).isSubsetOf(known);
      assertThat(names(pod(job))).isSubsetOf("restartPolicy", "containers", "volumes");
      assertThat(names(pod(job).path("containers").get(0)))
          .isSubsetOf("name", "image", "command", "args", "resources", "volumeMounts");
    }
  }

  private static TreeSet<String> names(JsonNode node) {
    var names = new TreeSet<String>();
    node.fieldNames().forEachRemaining(names::add);
    return names;
  }

  @Test
  void every_volume_that_is_mounted_is_there() {
    for (var job : jobs) {
      var volumes = pod(job).path("volumes").findValuesAsText("name");
      for (var mount : pod(job).path("containers").get(0).path("volumeMounts")) {
        assertThat(volumes).contains(mount.path("name").asText());
      }
    }
  }

  @Test
  void the_indexes_of_the_job_are_the_parts_of_the_season() {
    var spec = jobs.get(0).path("spec");
    assertThat(spec.path("completionMode").asText()).isEqualTo("Indexed");
    var command = pod(jobs.get(0)).at("/containers/0/args/0").asText();
    var part =
        Pattern.compile("--part \\$\\(\\(JOB_COMPLETION_INDEX \\+ 1\\)\\)/(\\d+)").matcher(command);
    assertThat(part.find()).isTrue();
    assertThat(Integer.parseInt(part.group(1))).isEqualTo(spec.path("completions").asInt());
    assertThat(spec.path("parallelism").asInt()).isBetween(1, spec.path("completions").asInt());
    assertThat(spec.at("/podFailurePolicy/rules/0/onExitCodes/containerName").asText())
        .isEqualTo(pod(jobs.get(0)).at("/containers/0/name").asText());
  }
}
