package org.seafettle.pdf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.format.DateTimeFormatter;
import java.util.GregorianCalendar;
import java.util.Locale;
import java.util.stream.Collectors;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;

/**
 * Writes what a document says about itself, once as the information dictionary and once as an XMP
 * packet that says the same, as PDF/A asks. Replaces what the library wrote, which carries the time
 * of day.
 */
final class Identity {

  private static final String PRODUCER = "Seafettle";

  private static final DateTimeFormatter XMP_DATE =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ssxxx", Locale.ROOT);

  private Identity() {}

  static void write(PDDocument document, Metadata metadata) throws IOException {
    document.setDocumentInformation(information(metadata));
    var packet = packet(metadata).getBytes(StandardCharsets.UTF_8);
    document
        .getDocumentCatalog()
        .setMetadata(new PDMetadata(document, new ByteArrayInputStream(packet)));
  }

  static GregorianCalendar calendar(Metadata metadata) {
    return GregorianCalendar.from(metadata.date().toZonedDateTime());
  }

  private static PDDocumentInformation information(Metadata metadata) {
    var information = new PDDocumentInformation();
    information.setTitle(metadata.title());
    information.setAuthor(metadata.author());
    information.setSubject(metadata.subject());
    if (!metadata.keywords().isEmpty()) {
      information.setKeywords(keywords(metadata));
    }
    information.setCreator(PRODUCER);
    information.setProducer(PRODUCER);
    information.setCreationDate(calendar(metadata));
    information.setModificationDate(calendar(metadata));
    return information;
  }

  private static String keywords(Metadata metadata) {
    return String.join(", ", metadata.keywords());
  }

  private static String packet(Metadata metadata) {
    var date = XMP_DATE.format(metadata.date());
    return """
        <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
        <x:xmpmeta xmlns:x="adobe:ns:meta/">
        <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
        <rdf:Description rdf:about=""
         xmlns:dc="http://purl.org/dc/elements/1.1/"
         xmlns:pdf="http://ns.adobe.com/pdf/1.3/"
         xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/"
         xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/"
         xmlns:xmp="http://ns.adobe.com/xap/1.0/">
        <pdfaid:part>3</pdfaid:part>
        <pdfaid:conformance>A</pdfaid:conformance>
        <pdfuaid:part>1</pdfuaid:part>
        """
        + "<dc:format>application/pdf</dc:format>\n"
        + property("dc:title", alternative(metadata.title()))
        + property("dc:creator", list("Seq", item(metadata.author())))
        + property("dc:description", alternative(metadata.subject()))
        + property("dc:language", list("Bag", item(metadata.language().toLanguageTag())))
        + subjects(metadata)
        + property("pdf:Producer", PRODUCER)
        + property("xmp:CreatorTool", PRODUCER)
        + property("xmp:CreateDate", date)
        + property("xmp:ModifyDate", date)
        + property("xmp:MetadataDate", date)
        + "</rdf:Description>\n"
        + ACCESSIBILITY_SCHEMA
        + "</rdf:RDF>\n</x:xmpmeta>\n<?xpacket end=\"r\"?>";
  }

  private static String subjects(Metadata metadata) {
    if (metadata.keywords().isEmpty()) {
      return "";
    }
    var items = metadata.keywords().stream().map(Identity::item).collect(Collectors.joining());
    return property("dc:subject", list("Bag", items))
        + property("pdf:Keywords", escaped(keywords(metadata)));
  }

  private static String property(String name, String content) {
    return "<" + name + ">" + content + "</" + name + ">\n";
  }

  private static String alternative(String text) {
    return "<rdf:Alt><rdf:li xml:lang=\"x-default\">" + escaped(text) + "</rdf:li></rdf:Alt>";
  }

  private static String list(String kind, String items) {
    return "<rdf:" + kind + ">" + items + "</rdf:" + kind + ">";
  }

  private static String item(String text) {
    return "<rdf:li>" + escaped(text) + "</rdf:li>";
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }

  /**
   * PDF/A knows every schema used above but that of PDF/UA, which therefore has to be described.
   */
  private static final String ACCESSIBILITY_SCHEMA =
      """
      <rdf:Description rdf:about=""
       xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/"
       xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#"
       xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
      <pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
      <pdfaSchema:schema>PDF/UA identification</pdfaSchema:schema>
      <pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
      <pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
      <pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
      <pdfaProperty:name>part</pdfaProperty:name>
      <pdfaProperty:valueType>Integer</pdfaProperty:valueType>
      <pdfaProperty:category>internal</pdfaProperty:category>
      <pdfaProperty:description>part of ISO 14289 that the file conforms to</pdfaProperty:description>
      </rdf:li></rdf:Seq></pdfaSchema:property>
      </rdf:li></rdf:Bag></pdfaExtension:schemas>
      </rdf:Description>
      """;
}
