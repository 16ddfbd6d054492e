package org.hosewright.evidence.calibration;

import java.util.List;

/** What the analysis thinks of a reading.
 *
 * @param kind the likeliest fault, or none
 * @param also other kinds that the data cannot exclude
 * @param says the finding as a sentence
 * @param check what to go and look at; empty where nothing is wrong
 */
public record Finding(FindingKind kind, List<FindingKind> also, String says, String check) {
    public Finding {
        also = List.copyOf(also);
    }
}
