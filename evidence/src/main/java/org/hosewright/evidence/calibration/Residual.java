package org.hosewright.evidence.calibration;

import java.util.List;
import java.util.Optional;
import org.hosewright.evidence.fit.Held;
import org.hosewright.evidence.joint.Channel;
import org.hosewright.evidence.joint.Fit;
import org.hosewright.evidence.joint.Joint;
import org.hosewright.evidence.joint.Line;
import org.hosewright.evidence.joint.Role;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Pressure;

/** The scatter of the pump pressures about a fit, each at the flow that the reading's other needles show. */
final class Residual {
    private static final double TOLERANCE = 1e-9;

    private Residual() {}

    /** The scatter; absent where no reading is to spare. */
    static Optional<Known<Pressure>> of(Fit fit) {
        double squares = 0;
        int count = 0;
        for (Line line : fit.joint().lines()) {
            if (line.spare() > 0) {
                double off_Pa = off_Pa(fit, line);
                squares += off_Pa * off_Pa;
                count++;
            }
        }
        int spare = count
                - fit.joint().unknowns().listOf(Role.HOSE).size()
                - fit.joint().unknowns().listOf(Role.PIPING).size();
        if (spare < 1) {
            return Optional.empty();
        }
        double scatter_Pa = Math.sqrt(squares / spare);
        return Optional.of(Known.of(new Pressure(scatter_Pa), new Pressure(scatter_Pa / Math.sqrt(2.0 * spare))));
    }

    private static double off_Pa(Fit fit, Line line) {
        Joint blind = fit.joint().with(List.of(line.without(Channel.PUMP)));
        double[] u = fit.minimum().point().unknowns();
        double[] start = line.start().stream().mapToDouble(Double::doubleValue).toArray();
        double[] latents = new Held(blind.blocks(), 1, u).settle(start, TOLERANCE);
        double[] form = new double[start.length + u.length];
        double shows_Pa = line.shows(Channel.PUMP, fit.joint().unknowns(), u, latents, form);
        return line.read(Channel.PUMP) - shows_Pa;
    }
}
