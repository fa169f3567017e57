package org.seafettle.photo;

import java.awt.color.ICC_Profile;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.zip.CRC32;
import java.util.zip.InflaterInputStream;

/**
 * A PNG file (W3C Portable Network Graphics, third edition) as a row of chunks.
 *
 * @param chunks all of them, the last being IEND
 */
record PngFile(List<Chunk> chunks) implements Container {

  /** Only these change what is seen; the others are never shown to the decoder. */
  private static final Set<String> NEEDED = Set.of("IHDR", "PLTE", "tRNS", "IDAT", "IEND");

  private static final int SIGNATURE = 8;
  private static final int AROUND = 12;
  private static final int LARGEST_PROFILE = 4 << 20;

  /**
   * One chunk.
   *
   * @param type four letters
   * @param data without length, type and check sum
   * @param sound whether the check sum is right
   */
  record Chunk(String type, byte[] data, boolean sound) {}

  static PngFile open(byte[] bytes) {
    var chunks = new ArrayList<Chunk>();
    var in = ByteBuffer.wrap(bytes).position(SIGNATURE);
    do {
      chunks.add(next(in));
    } while (!chunks.get(chunks.size() - 1).type.equals("IEND"));
    boolean damaged = chunks.stream().anyMatch(c -> NEEDED.contains(c.type) && !c.sound);
    if (damaged || !chunks.get(0).type.equals("IHDR")) {
      throw Container.damaged(Format.PNG);
    }
    return new PngFile(List.copyOf(chunks));
  }

  @Override
  public Format format() {
    return Format.PNG;
  }

  @Override
  public Optional<byte[]> exif() {
    return data("eXIf");
  }

  @Override
  public byte[] picture() {
    var out = new ByteArrayOutputStream();
    out.writeBytes("\u0089PNG\r\n\u001a\n".getBytes(StandardCharsets.ISO_8859_1));
    chunks.stream().filter(chunk -> NEEDED.contains(chunk.type)).forEach(c -> write(c, out));
    return out.toByteArray();
  }

  @Override
  public Optional<ICC_Profile> profile() {
    return data("iCCP").flatMap(data -> Profiles.unlikeSrgb(inflated(data), 3));
  }

  private Optional<byte[]> data(String type) {
    return chunks.stream().filter(c -> c.type.equals(type) && c.sound).map(Chunk::data).findFirst();
  }

  /** Name, a zero, the method, then the compressed profile. */
  private static byte[] inflated(byte[] iccp) {
    int name = 0;
    while (name < iccp.length && iccp[name] != 0) {
      name++;
    }
    int from = Math.min(name + 2, iccp.length);
    var packed = new ByteArrayInputStream(iccp, from, iccp.length - from);
    try (var in = new InflaterInputStream(packed)) {
      return in.readNBytes(LARGEST_PROFILE);
    } catch (IOException damaged) {
      return new byte[0];
    }
  }

  private static Chunk next(ByteBuffer in) {
    if (in.remaining() < AROUND) {
      throw Container.cutShort(Format.PNG);
    }
    int length = in.getInt();
    if (length < 0 || length > in.remaining() - 8) {
      throw Container.cutShort(Format.PNG);
    }
    var typed = new byte[4 + length];
    in.get(typed);
    var data = new byte[length];
    System.arraycopy(typed, 4, data, 0, length);
    var type = new String(typed, 0, 4, StandardCharsets.ISO_8859_1);
    return new Chunk(type, data, in.getInt() == checkSum(typed));
  }

  private static void write(Chunk chunk, ByteArrayOutputStream out) {
    var typed = new ByteArrayOutputStream();
    typed.writeBytes(chunk.type.getBytes(StandardCharsets.ISO_8859_1));
    typed.writeBytes(chunk.data);
    out.writeBytes(ByteBuffer.allocate(4).putInt(chunk.data.length).array());
    out.writeBytes(typed.toByteArray());
    out.writeBytes(ByteBuffer.allocate(4).putInt(checkSum(typed.toByteArray())).array());
  }

  private static int checkSum(byte[] typed) {
    var sum = new CRC32();
    sum.update(typed);
    return (int) sum.getValue();
  }
}
