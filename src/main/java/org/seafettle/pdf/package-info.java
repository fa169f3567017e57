/**
 * XHTML, pictures and attachments in; an archival and accessible PDF out, always the same bytes.
 */
@NullMarked
package org.seafettle.pdf;

import org.jspecify.annotations.NullMarked;
