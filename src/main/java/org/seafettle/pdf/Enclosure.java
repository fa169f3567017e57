package org.seafettle.pdf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;

/** Puts the attachments into a document, as files associated with the whole of it. */
final class Enclosure {

  private static final COSName RELATIONSHIP = COSName.getPDFName("AFRelationship");
  private static final COSName ASSOCIATED_FILES = COSName.getPDFName("AF");

  private final PDDocument document;
  private final Metadata metadata;

  Enclosure(PDDocument document, Metadata metadata) {
    this.document = document;
    this.metadata = metadata;
  }

  void enclose(List<Attachment> attachments) throws IOException {
    if (attachments.isEmpty()) {
      return;
    }
    var named = new LinkedHashMap<String, PDComplexFileSpecification>();
    var associated = new COSArray();
    for (var attachment : attachments) {
      var file = specification(attachment);
      if (named.put(attachment.name(), file) != null) {
        throw new Misprint(List.of("two attachments are named " + attachment.name()));
      }
      associated.add(file);
    }
    var tree = new PDEmbeddedFilesNameTreeNode();
    tree.setNames(named);
    var catalog = document.getDocumentCatalog();
    var names = new PDDocumentNameDictionary(catalog);
    names.setEmbeddedFiles(tree);
    catalog.setNames(names);
    catalog.getCOSObject().setItem(ASSOCIATED_FILES, associated);
  }

  private PDComplexFileSpecification specification(Attachment attachment) throws IOException {
    var content = new ByteArrayInputStream(attachment.content());
    var file = new PDEmbeddedFile(document, content, COSName.FLATE_DECODE);
    file.setSubtype(attachment.mediaType());
    file.setSize(attachment.content().length);
    file.setCreationDate(Identity.calendar(metadata));
    file.setModDate(Identity.calendar(metadata));
    var specification = new PDComplexFileSpecification();
    specification.setFile(attachment.name());
    specification.setFileUnicode(attachment.name());
    specification.setFileDescription(attachment.description());
    specification.setEmbeddedFile(file);
    specification.setEmbeddedFileUnicode(file);
    var relationship = COSName.getPDFName(attachment.relationship().pdfName());
    specification.getCOSObject().setItem(RELATIONSHIP, relationship);
    return specification;
  }
}
