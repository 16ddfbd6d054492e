package org.hosewright.evidence.joint;

import org.hosewright.hydraulics.quantity.Constants;

/** A fault put into a reading, so that it can be weighed against the others: one more unknown, and where it acts.
 *
 * <p>Sizes beforehand are so wide, and for all that act on the pump pressure so alike, that they favour none.
 */
public enum Fault {
    /** A kink, a part-shut gate: the line loses more. */
    EXTRA_LOSS(100 * Constants.PSI_PA) {
        @Override
        public Line in(Line line, int unknown) {
            return line.with(Channel.PUMP, gauge -> gauge.withLoss(new Term(unknown, 1)));
        }
    },
    /** The pump gauge misread. */
    PUMP_GAUGE(100 * Constants.PSI_PA) {
        @Override
        public Line in(Line line, int unknown) {
            return line.misreading(Channel.PUMP, new Term(unknown, 1));
        }
    },
    /** The tip gauge misread, or read elsewhere. */
    TIP_GAUGE(50 * Constants.PSI_PA) {
        @Override
        public Line in(Line line, int unknown) {
            return line.misreading(Channel.TIP, new Term(unknown, 1));
        }
    },
    /** The meter misread: a share of the flow. */
    FLOW_METER(0.7) {
        @Override
        public Line in(Line line, int unknown) {
            return line.misreading(Channel.FLOW, new Term(unknown, 1));
        }
    },
    /** The tip plugged, or another than written: a share of the flow. */
    NOZZLE(0.7) {
        @Override
        public Line in(Line line, int unknown) {
            return new Line(line.water().withFactor(unknown), line.gauges(), line.meter(), line.start());
        }
    },
    /** The tip higher or lower than written. */
    RISE(100 * Constants.PSI_PA) {
        @Override
        public Line in(Line line, int unknown) {
            return line.misreading(Channel.PUMP, new Term(unknown, 1));
        }
    };

    private final double deviation;

    Fault(double deviation) {
        this.deviation = deviation;
    }

    /** The reading with the fault in it; the unknown's place is given. */
    public abstract Line in(Line line, int unknown);

    /** The reading with a share of the fault in it: of a misread needle, as it grows through a night. */
    public static Line share(Line line, Channel channel, int unknown, double share) {
        return line.misreading(channel, new Term(unknown, share));
    }

    /** Its unknown.
     *
     * @param flowSquared of the reading [m6/s2], above 0 for {@link #EXTRA_LOSS}
     */
    public Unknown unknown(double flowSquared) {
        double size = this == EXTRA_LOSS ? deviation / flowSquared : deviation;
        return new Unknown(Role.FAULT, name(), 0, size);
    }

    /** True where the fault can only be positive. */
    public boolean isOneSided() {
        return this == EXTRA_LOSS;
    }
}
