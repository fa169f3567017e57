package org.seafettle.cli;

import java.util.concurrent.Semaphore;
import java.util.function.Supplier;

/** Memory that several threads share: who needs more than is left waits until others are done. */
final class Allowance {

  private static final long MEGABYTE = 1 << 20;

  /** What the program itself and its typefaces hold, in megabytes. */
  private static final int HELD = 120;

  private final int all;
  private final Semaphore left;

  Allowance(long bytes) {
    this.all = (int) Math.max(1, bytes / MEGABYTE - HELD);
    this.left = new Semaphore(all, true);
  }

  /** Does some work that needs so many bytes; one that needs more than all waits for all. */
  <T> T within(long bytes, Supplier<T> work) {
    int share = (int) Math.min(all, bytes / MEGABYTE + 1);
    left.acquireUninterruptibly(share);
    try {
      return work.get();
    } finally {
      left.release(share);
    }
  }
}
