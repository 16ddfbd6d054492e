package org.hosewright.hydraulics.line;

import org.hosewright.hydraulics.equipment.ApplianceLoss;

/** What a line loses at one cubic metre a second, tip, rise and flat allowances apart. */
final class Resistance {
    private Resistance() {}

    /** R = piping + sum of hose loss times length + appliances [Pa s2/m6]. */
    static double of(Line line) {
        return line.discharge().lossOrNone().k() + ofHose(line) + ofAppliances(line);
    }

    static double ofHose(Line line) {
        return line.runs().stream().mapToDouble(Run::resistance).sum();
    }

    private static double ofAppliances(Line line) {
        double sum = 0;
        for (Run run : line.runs()) {
            if (run.end().isPresent() && run.end().get().loss() instanceof ApplianceLoss.Quadratic quadratic) {
                sum += quadratic.loss().value().k();
            }
        }
        return sum;
    }
}
