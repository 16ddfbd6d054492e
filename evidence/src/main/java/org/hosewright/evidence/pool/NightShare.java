package org.hosewright.evidence.pool;

/** What a night is worth to a number: the share of what is known of it that came from this night.
 *
 * @param night its name
 * @param share from 0 to 1
 */
public record NightShare(String night, double share) {}
