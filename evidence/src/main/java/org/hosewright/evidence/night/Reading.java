package org.hosewright.evidence.night;

/** One steady reading of a test night.
 *
 * @param id the recorder's name for it
 * @param laid the line it was taken on
 * @param shown what the needles showed
 * @param with the instruments
 * @param doubt true where the recorder marked it doubtful
 */
public record Reading(String id, Laid laid, Shown shown, ReadWith with, boolean doubt) {}
