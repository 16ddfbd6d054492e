package org.hosewright.evidence.fault;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hosewright.evidence.joint.Channel;
import org.hosewright.evidence.joint.Fault;
import org.hosewright.evidence.joint.Fit;
import org.hosewright.evidence.joint.Joint;
import org.hosewright.evidence.joint.Line;
import org.hosewright.evidence.joint.Role;
import org.hosewright.evidence.joint.Unknown;
import org.hosewright.hydraulics.quantity.Constants;

/** An instrument that went off steadily from the first reading of a night to the last.
 *
 * @param channel which needle
 * @param instrument its id
 * @param change how much more it read at the end than at the beginning: [Pa], or of the logarithm of the flow
 * @param last place of the last reading taken with it
 * @param favour logarithm of the odds of it against no fault at all
 * @param also needles whose drift explains the readings nearly as well
 */
public record Drift(Channel channel, String instrument, double change, int last, double favour, List<Channel> also) {
    /** What the likelihood does not exclude. */
    private static final double NEAR = 2;

    /** From so many readings on a drift can be told from scatter. */
    private static final int ENOUGH = 6;

    /** How often an instrument drifts through a night; judgement. */
    private static final double ODDS = 0.02;

    /** How much gauges at the pump and at the tip [Pa], and a meter, may change through a night: one standard deviation. */
    private static final double PUMP_PA = 15 * Constants.PSI_PA;

    private static final double TIP_PA = 8 * Constants.PSI_PA;
    private static final double FLOW = 0.15;

    public Drift {
        also = List.copyOf(also);
    }

    /** The likeliest drift among readings; empty where none is likelier than none by enough. */
    static Optional<Drift> find(Standing standing) {
        List<Drift> drifts = new ArrayList<>();
        for (Channel channel : List.of(Channel.PUMP, Channel.TIP, Channel.FLOW)) {
            List<Integer> read = new ArrayList<>(standing.active());
            read.removeIf(place -> !standing.survey().joint().lines().get(place).has(channel)
                    || !sameInstrument(standing, place, channel));
            if (read.size() >= ENOUGH) {
                drifts.add(of(standing, drifting(standing, read, channel), read, channel));
            }
        }
        return drifts.stream()
                .max(Comparator.comparingDouble(Drift::favour))
                .filter(best -> best.favour > Suspicion.FAVOUR)
                .map(best -> best.beside(drifts));
    }

    private Drift beside(List<Drift> all) {
        List<Channel> near = all.stream()
                .filter(other -> other.channel != channel && other.favour > favour - NEAR)
                .map(Drift::channel)
                .toList();
        return new Drift(channel, instrument, change, last, favour, near);
    }

    private static Drift of(Standing standing, Fit drifting, List<Integer> read, Channel channel) {
        int place = standing.fit().joint().unknowns().size();
        Unknown drift = drifting.joint().unknowns().get(place);
        double change = drift.value(drifting.minimum().point().unknown(place));
        double favour = Math.log(ODDS) + drifting.evidence() - standing.fit().evidence();
        int last = read.get(read.size() - 1);
        return new Drift(channel, instrument(standing, last, channel), change, last, favour, List.of());
    }

    private static Fit drifting(Standing standing, List<Integer> read, Channel channel) {
        Joint joint = standing.fit().joint();
        int unknown = joint.unknowns().size();
        List<Line> lines = new ArrayList<>(joint.lines());
        for (int i = 0; i < read.size(); i++) {
            int at = standing.active().indexOf(read.get(i));
            double share = (double) i / (read.size() - 1) - 0.5;
            lines.set(at, Fault.share(lines.get(at), channel, unknown, share));
        }
        double deviation = channel == Channel.PUMP ? PUMP_PA : channel == Channel.TIP ? TIP_PA : FLOW;
        Joint more = new Joint(
                joint.unknowns().with(new Unknown(Role.FAULT, "drift", 0, deviation)),
                lines,
                joint.scatter(),
                joint.lineTrust());
        double[] start = new double[unknown + 1];
        System.arraycopy(standing.fit().minimum().point().unknowns(), 0, start, 0, unknown);
        return Fit.of(more, more.start(start));
    }

    /** True where a reading was taken with the instrument that the last one was taken with. */
    private static boolean sameInstrument(Standing standing, int place, Channel channel) {
        List<Integer> active = standing.active();
        return instrument(standing, place, channel)
                .equals(instrument(standing, active.get(active.size() - 1), channel));
    }

    private static String instrument(Standing standing, int place, Channel channel) {
        var with = standing.survey().night().readings().get(place).with();
        return switch (channel) {
            case PUMP, MID -> with.pumpGauge().orElse("the pump gauge");
            case TIP -> with.tipGauge().orElse("the tip gauge");
            case FLOW -> with.meter().orElse("the flow meter");
        };
    }
}
