package org.seafettle.cli;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import org.seafettle.json.SeasonRecords;
import org.seafettle.problem.Place;
import org.seafettle.problem.Problem;
import org.seafettle.problem.Refused;
import org.seafettle.yard.Kept;

/**
 * What a season remembers from run to run, in a folder beside the reports. Every file is written
 * elsewhere and moved into its place, after the report that it tells of: whenever the program is
 * cut off, what stands here is true.
 */
final class SeasonState {

  private static final String NAMES = "surveys.json";

  private final Path folder;
  private final Part part;
  private final Workbench workbench;

  SeasonState(Path out, Part part) {
    this.folder = out.resolve(".seafettle");
    this.part = part;
    this.workbench = new Workbench(folder.resolve("unfinished-" + part.name()));
  }

  /** Where files are written before they are moved; of this part alone. */
  Workbench workbench() {
    return workbench;
  }

  /** The photographs as they were prepared before. */
  Prints prints() {
    return new KeptPrints(folder.resolve("photographs"), workbench);
  }

  /**
   * Keeps other runs of the same part away until it is closed, and clears away what a run that was
   * cut off left unfinished.
   *
   * @throws Refused where another one is running
   */
  FileChannel begin() throws IOException {
    Files.createDirectories(folder.resolve("records"));
    var channel =
        FileChannel.open(
            folder.resolve("running-" + part.name()),
            StandardOpenOption.CREATE,
            StandardOpenOption.WRITE);
    if (!locked(channel)) {
      channel.close();
      throw new Refused(
          new Problem(
              Place.file(folder.toString()),
              "Another run is writing into this folder.",
              "Wait until it is done, or choose another folder with --out."));
    }
    workbench.clear();
    return channel;
  }

  private static boolean locked(FileChannel channel) throws IOException {
    try {
      return channel.tryLock() != null;
    } catch (OverlappingFileLockException inThisProcess) {
      return false;
    }
  }

  private Path record(String source) {
    return folder.resolve("records").resolve(Sha256.of(source).substring(0, 32) + ".json");
  }

  /** What is known of a survey; empty where nothing is, or where it cannot be read. */
  Optional<Kept> kept(String source) throws IOException {
    var file = record(source);
    return Files.exists(file)
        ? SeasonRecords.read(Files.readAllBytes(file))
            .filter(kept -> kept.entry().source().equals(source))
        : Optional.empty();
  }

  void keep(Kept kept) throws IOException {
    workbench.put(record(kept.entry().source()), SeasonRecords.write(kept));
  }

  /** The names of all surveys of the season, also of those in other parts. */
  void expect(List<String> sources) throws IOException {
    workbench.put(folder.resolve(NAMES), SeasonRecords.writeNames(sources));
  }

  /** Empty where no season was ever begun here. */
  Optional<List<String>> expected() throws IOException {
    var file = folder.resolve(NAMES);
    return Files.exists(file)
        ? SeasonRecords.readNames(Files.readAllBytes(file))
        : Optional.empty();
  }
}
