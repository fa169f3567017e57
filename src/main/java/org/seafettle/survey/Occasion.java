package org.seafettle.survey;

import java.time.LocalDate;
import java.util.Optional;

/**
 * The occasion of a survey.
 *
 * @param id the report's number
 * @param purpose whom it is for
 * @param date the day
 * @param place where
 * @param conditions under which
 * @param season when the boat is used, where the survey says
 * @param by who surveyed
 * @param orderedBy for whom
 */
public record Occasion(
    String id,
    Purpose purpose,
    LocalDate date,
    String place,
    Conditions conditions,
    Optional<Season> season,
    Person by,
    Optional<Person> orderedBy) {}
