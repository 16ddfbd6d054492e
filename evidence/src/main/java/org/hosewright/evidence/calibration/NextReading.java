package org.hosewright.evidence.calibration;

import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;

/** The reading that would tell most.
 *
 * @param length hose length to lay
 * @param tip pressure to hold at the tip
 * @param says the advice as a sentence
 */
public record NextReading(Length length, Pressure tip, String says) {}
