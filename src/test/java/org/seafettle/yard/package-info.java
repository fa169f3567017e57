/** Tests of what all boats together come to. */
package org.seafettle.yard;
