package org.hosewright.evidence.night;

/** What a person ruled about a reading, with the reason; it outweighs what the analysis would do.
 *
 * @param use true: use it although it looks wrong; false: set it aside
 * @param reason why, in the person's words; not empty
 */
public record Ruling(boolean use, String reason) {}
