package org.hosewright.evidence.fault;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.hosewright.evidence.fit.Minimum;
import org.hosewright.evidence.fit.Point;
import org.hosewright.evidence.joint.Channel;
import org.hosewright.evidence.joint.Fault;
import org.hosewright.evidence.joint.Fit;
import org.hosewright.evidence.joint.Joint;
import org.hosewright.evidence.joint.Line;
import org.hosewright.evidence.joint.Unknown;

/** The question whether some readings agree with the others, and which cause would make them agree.
 *
 * <p>The others alone say how much readings scatter, so that a bad reading cannot hide in the noise that it makes.
 */
public final class Inquiry {
    private final List<Line> group;
    private final Joint joint;
    private final Fit others;
    private final double excess;
    private final int spare;
    private final Map<Channel, Foretold> foretold = new EnumMap<>(Channel.class);

    /** Asks.
     *
     * @param all the readings, the group's among them
     * @param active places of the readings that count
     * @param group places of the readings asked about
     * @param near a fit to begin from
     */
    public Inquiry(Joint all, List<Integer> active, List<Integer> group, Fit near) {
        List<Integer> rest = new ArrayList<>(active);
        rest.removeAll(group);
        Joint without = all.only(rest).with(near.joint().scatter());
        this.others = Fit.of(without, without.start(near.minimum().point().unknowns()));
        this.group = group.stream().map(all.lines()::get).toList();
        List<Line> lines = new ArrayList<>(this.group);
        lines.addAll(others.joint().lines());
        this.joint = others.joint().with(lines);
        this.excess = cost(joint) - others.minimum().cost();
        this.spare = this.group.stream().mapToInt(Line::spare).sum();
    }

    /** The fit of the other readings alone. */
    public Fit others() {
        return others;
    }

    /** The other readings with the group's put first, at the scatter that the others show. */
    public Joint joint() {
        return joint;
    }

    /** Log-likelihood of the group being right, beside 0 for a perfect match. */
    public double innocent() {
        return logLikelihood(excess);
    }

    /** Log-likelihoods of the causes that are possible for the group. */
    public Map<Cause, Double> guilty(Possible possible) {
        Map<Cause, Double> found = new EnumMap<>(Cause.class);
        for (Cause cause : possible.causes()) {
            double left = cause == Cause.LENGTH ? sections(possible) : faulty(cause);
            found.put(cause, logLikelihood(Math.max(0, left)));
        }
        return found;
    }

    private double faulty(Cause cause) {
        Fault fault = cause.fault().orElseThrow();
        double left = excessWith(fault);
        return fault.isOneSided() ? Math.min(left, excess) : left;
    }

    private double excessWith(Fault fault) {
        Line first = group.get(0);
        double[] u = others.minimum().point().unknowns();
        double[] latents =
                first.start().stream().mapToDouble(Double::doubleValue).toArray();
        Unknown unknown = fault.unknown(Math.max(1e-12, first.flowSquared(joint.unknowns(), u, latents)));
        int place = joint.unknowns().size();
        List<Line> lines = new ArrayList<>(joint.lines());
        for (int i = 0; i < group.size(); i++) {
            lines.set(i, fault.in(lines.get(i), place));
        }
        Joint more = new Joint(joint.unknowns().with(unknown), lines, joint.scatter(), joint.lineTrust());
        double[] start = new double[place + 1];
        System.arraycopy(u, 0, start, 0, place);
        Minimum minimum = Fit.minimise(more, more.start(start));
        boolean wrongWay = fault.isOneSided() && minimum.point().unknown(place) < 0;
        return wrongWay ? excess : minimum.cost() - others.minimum().cost();
    }

    /** The least excess with whole sections more or fewer; each way only as far as every section more explains more. */
    private double sections(Possible possible) {
        double least = excess;
        for (List<Possible.Sections> way : possible.sections()) {
            double before = excess;
            for (Possible.Sections sections : way) {
                double left = excessWith(sections);
                least = Math.min(least, left);
                if (left >= before) {
                    break;
                }
                before = left;
            }
        }
        return least;
    }

    private double excessWith(Possible.Sections sections) {
        List<Line> lines = new ArrayList<>(joint.lines());
        for (int i = 0; i < group.size(); i++) {
            lines.set(i, lines.get(i).longer(sections.hose(), sections.more_m()));
        }
        return cost(joint.with(lines)) - others.minimum().cost();
    }

    private double cost(Joint other) {
        Point start = other.start(others.minimum().point().unknowns());
        return Fit.minimise(other, start).cost();
    }

    private double logLikelihood(double left) {
        double freedom = others.freedom().pump();
        return -(freedom + spare) / 2 * Math.log(1 + Math.max(0, left) / freedom);
    }

    /** What a needle of the group's only reading should have shown, by the others and its own other needles. */
    public Foretold foretell(Channel channel) {
        return foretold.computeIfAbsent(channel, this::reckon);
    }

    private Foretold reckon(Channel channel) {
        Line line = group.get(0);
        List<Line> lines = new ArrayList<>(joint.lines());
        lines.set(0, line.without(channel));
        Joint blind = joint.with(lines);
        Minimum minimum =
                Fit.minimise(blind, blind.start(others.minimum().point().unknowns()));
        double[] form = new double[line.start().size() + joint.unknowns().size()];
        Point point = minimum.point();
        double value = line.shows(channel, joint.unknowns(), point.unknowns(), point.latents(1), form);
        double fitted = minimum.variance(1, form, minimum.information().covariance());
        double own = line.deviation(channel) * joint.scatter().of(channel);
        return new Foretold(value, Math.sqrt(fitted + own * own));
    }

    /** What a needle should have shown.
     *
     * @param value [Pa], or the logarithm of the flow [m3/s]
     * @param deviation its standard error, the needle's own scatter included
     */
    public record Foretold(double value, double deviation) {}
}
