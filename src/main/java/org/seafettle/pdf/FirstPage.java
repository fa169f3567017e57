package org.seafettle.pdf;

import java.time.OffsetDateTime;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A page with a little of everything that documents have, to wake a printer with. */
final class FirstPage {

  /** One grey point, as JPEG. */
  private static final byte[] POINT =
      HexFormat.of()
          .parseHex(
              "ffd8ffe000104a46494600010200000100010000ffdb004300080606070605080707070909080a0c"
                  + "140d0c0b0b0c1912130f141d1a1f1e1d1a1c1c20242e2720222c231c1c2837292c30313434341f27"
                  + "393d38323c2e333432ffc0000b080001000101011100ffc4001f0000010501010101010100000000"
                  + "000000000102030405060708090a0bffc400b5100002010303020403050504040000017d01020300"
                  + "041105122131410613516107227114328191a1082342b1c11552d1f02433627282090a161718191a"
                  + "25262728292a3435363738393a434445464748494a535455565758595a636465666768696a737475"
                  + "767778797a838485868788898a92939495969798999aa2a3a4a5a6a7a8a9aab2b3b4b5b6b7b8b9ba"
                  + "c2c3c4c5c6c7c8c9cad2d3d4d5d6d7d8d9dae1e2e3e4e5e6e7e8e9eaf1f2f3f4f5f6f7f8f9faffda"
                  + "0008010100003f00f36affd9");

  static final Map<String, byte[]> PICTURES = Map.of("point", POINT);

  static final Metadata METADATA =
      new Metadata(
          "First page",
          "nobody",
          "a page to wake the printer with",
          List.of("page"),
          Locale.ENGLISH,
          OffsetDateTime.parse("2026-01-01T12:00:00Z"));

  static final String XHTML =
      """
      <html xmlns="http://www.w3.org/1999/xhtml" lang="en"><head><title>First page</title>
      <style>* { font-family: Roboto } th { font-weight: 500 } h1 { font-weight: 300 }
      table { border-collapse: collapse; -fs-table-paginate: paginate }
      td { border-bottom: 0.4pt solid #C9D1D8; vertical-align: top }
      @page { @bottom-right { content: "page " counter(page) " of " counter(pages);
      font-family: Roboto } }</style>
      <bookmarks><bookmark name="First" href="#first"/></bookmarks></head>
      <body><h1 id="first">First</h1><p>A <b>page</b> <i>that</i> &#8594; nobody
      <a href="#first">sees</a></p>
      <table><thead><tr><th scope="col">A</th></tr></thead><tbody><tr><td>1</td></tr></tbody></table>
      <img src="photo:point" alt="a point" style="width: 10pt"/>
      <svg xmlns="http://www.w3.org/2000/svg" width="20" height="10" viewBox="0 0 20 10"
      alt="a line"><line x1="0" y1="5" x2="20" y2="5" stroke="#12202E"/>
      <text x="2" y="8" font-size="6">1</text></svg></body></html>
      """;

  private FirstPage() {}
}
