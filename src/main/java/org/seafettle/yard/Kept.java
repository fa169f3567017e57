package org.seafettle.yard;

/**
 * What is kept of a survey between runs.
 *
 * @param inputs the fingerprint of all that its report was made from
 * @param report the SHA-256 of the report; empty where there is none
 * @param entry what it came to
 */
public record Kept(String inputs, String report, Entry entry) {}
