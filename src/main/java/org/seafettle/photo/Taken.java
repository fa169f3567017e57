package org.seafettle.photo;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Optional;

/**
 * When a picture was taken, by the camera's own clock.
 *
 * @param clock what the clock showed
 * @param zone the clock's distance from UTC, empty where the camera did not write it down
 */
public record Taken(LocalDateTime clock, Optional<ZoneOffset> zone) {}
