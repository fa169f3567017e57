package org.seafettle.cli;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;

/** Something that is made on another thread while this one goes on. */
final class Ahead<T> {

  private final CompletableFuture<T> future;

  private Ahead(CompletableFuture<T> future) {
    this.future = future;
  }

  static <T> Ahead<T> make(Supplier<T> work) {
    return new Ahead<>(CompletableFuture.supplyAsync(work));
  }

  /** What was made, or the fault that it ended with. */
  T get() {
    try {
      return future.join();
    } catch (CompletionException e) {
      if (e.getCause() instanceof RuntimeException fault) {
        throw fault;
      }
      throw e;
    }
  }
}
