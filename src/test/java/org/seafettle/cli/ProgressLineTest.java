package org.seafettle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class ProgressLineTest {

  private final AtomicLong clock = new AtomicLong();
  private final StringWriter err = new StringWriter();

  private ProgressLine of(int all, boolean terminal) {
    var console = new Console(new PrintWriter(new StringWriter()), new PrintWriter(err), terminal);
    return new ProgressLine(console, all, clock::get);
  }

  private String last() {
    var said = err.toString();
    return said.substring(said.lastIndexOf('\r') + 1).replace("\u001b[K", "");
  }

  @Test
  void the_time_left_follows_from_what_was_made_so_far() {
    var line = of(4, true);
    clock.set(10_000_000_000L);
    line.step(true);
    assertThat(last()).isEqualTo("#######----------------------- 1 of 4, about 30 s left");
    clock.set(400_000_000_000L);
    line.step(true);
    assertThat(last()).isEqualTo("###############--------------- 2 of 4, about 7 min left");
  }

  @Test
  void what_was_there_already_tells_nothing_of_the_time_left() {
    var line = of(3, true);
    clock.set(1_000_000L);
    line.step(false);
    assertThat(last()).endsWith(" 1 of 3");
    clock.set(20_000_000_000L);
    line.step(true);
    assertThat(last()).endsWith(" 2 of 3, about 20 s left");
    line.step(true);
    assertThat(last()).endsWith(" 3 of 3");
  }

  @Test
  void nothing_is_drawn_where_nobody_watches() {
    of(1, false).step(true);
    assertThat(err.toString()).isEmpty();
  }
}
