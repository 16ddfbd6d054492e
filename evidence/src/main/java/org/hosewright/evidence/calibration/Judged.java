package org.hosewright.evidence.calibration;

import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Pressure;

/** One reading as the fit sees it.
 *
 * @param reading its id
 * @param predictedPump pump pressure that the fit without it foretells, at its own flow, offsets included
 * @param excess read less predicted
 * @param used whether the reported numbers rest on it
 * @param finding what may be wrong with it
 */
public record Judged(String reading, Known<Pressure> predictedPump, Pressure excess, boolean used, Finding finding) {}
