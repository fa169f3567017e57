package org.seafettle.pdf;

import com.openhtmltopdf.extend.FSStream;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceType;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;

/** The pictures of one document, and the only thing from outside that it may ask for. */
final class Pictures {

  private static final String SCHEME = "photo";

  /** No dot: the library would leave out a name that ends like a PDF file, without a word. */
  private static final Pattern ADDRESS = Pattern.compile(SCHEME + ":([A-Za-z0-9_-]+)");

  private final Map<String, byte[]> pictures;

  Pictures(Map<String, byte[]> pictures) {
    this.pictures = pictures;
  }

  void use(PdfRendererBuilder builder) {
    for (var moment : ExternalResourceControlPriority.values()) {
      builder.useExternalResourceAccessControl(this::admits, moment);
    }
    // a resolver that refuses is only noted, access control is an error: so refuse nothing here
    builder.useUriResolver((base, address) -> address);
    builder.useProtocolsStreamImplementation(this::open, SCHEME);
  }

  private boolean admits(String address, ExternalResourceType type) {
    var name = ADDRESS.matcher(address);
    return type == ExternalResourceType.IMAGE_RASTER
        && name.matches()
        && pictures.containsKey(name.group(1));
  }

  private FSStream open(String address) {
    var name = address.substring(SCHEME.length() + 1);
    return new Picture(Objects.requireNonNull(pictures.get(name), address));
  }

  private record Picture(byte[] content) implements FSStream {

    @Override
    public InputStream getStream() {
      return new ByteArrayInputStream(content);
    }

    @Override
    public Reader getReader() {
      return new InputStreamReader(getStream(), StandardCharsets.UTF_8);
    }
  }
}
