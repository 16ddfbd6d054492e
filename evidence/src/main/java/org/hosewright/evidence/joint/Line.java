package org.hosewright.evidence.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.hosewright.evidence.fit.Rows;

/** One reading made ready for the fit: its water, and its needles.
 *
 * @param water how its flow follows
 * @param gauges its pressure gauges
 * @param meter its flow meter, where read
 * @param start logarithm of the pressure at the tip [Pa], and of the flow [m3/s], to begin from
 */
public record Line(Water water, List<PressureNeedle> gauges, Optional<FlowNeedle> meter, List<Double> start) {
    public Line {
        gauges = List.copyOf(gauges);
        start = List.copyOf(start);
    }

    int latents() {
        return water.latents();
    }

    int rows() {
        return gauges.size() + (meter.isPresent() ? 1 : 0);
    }

    /** How many of the readings can disagree. */
    public int spare() {
        return rows() - latents();
    }

    /** Which needles were read, in the order of the rows. */
    public List<Channel> channels() {
        List<Channel> channels = new ArrayList<>();
        gauges.forEach(gauge -> channels.add(gauge.channel()));
        meter.ifPresent(found -> channels.add(Channel.FLOW));
        return channels;
    }

    /** The same with one needle covered. */
    public Line without(Channel covered) {
        List<PressureNeedle> left = new ArrayList<>(gauges);
        left.removeIf(gauge -> gauge.channel() == covered);
        return new Line(water, left, covered == Channel.FLOW ? Optional.empty() : meter, start);
    }

    public boolean has(Channel channel) {
        return channels().contains(channel);
    }

    /** The same with one gauge seen otherwise. */
    Line with(Channel channel, UnaryOperator<PressureNeedle> otherwise) {
        List<PressureNeedle> seen = new ArrayList<>();
        for (PressureNeedle gauge : gauges) {
            seen.add(gauge.channel() == channel ? otherwise.apply(gauge) : gauge);
        }
        return new Line(water, seen, meter, start);
    }

    /** The same with one needle off by a weighted unknown: [Pa], or of the logarithm of the flow. */
    Line misreading(Channel channel, Term off) {
        return channel == Channel.FLOW
                ? new Line(water, gauges, meter.map(needle -> needle.withFactor(off)), start)
                : with(channel, gauge -> gauge.withOffset(off));
    }

    /** The same begun from another logarithm of the pressure at the tip. */
    public Line from(double logTip) {
        List<Double> begun = new ArrayList<>(start);
        begun.set(0, logTip);
        return new Line(water, gauges, meter, begun);
    }

    /** The same with more of a hose between pump and tip than written. */
    public Line longer(int hose, double more_m) {
        return with(Channel.PUMP, gauge -> gauge.withMore(hose, more_m));
    }

    /** What a needle should show at a point: [Pa], or the logarithm of the flow [m3/s].
     *
     * @param form takes the derivatives by latent value, then by unknown; all zero beforehand
     */
    public double shows(Channel channel, Unknowns all, double[] u, double[] latents, double[] form) {
        Slopes slopes = new FormSlopes(form, latents());
        if (channel == Channel.FLOW) {
            return meter.orElseThrow().shows(water, all, u, latents, slopes);
        }
        return gauge(channel).shows(water, all, u, latents, slopes);
    }

    /** Expected scatter of a needle: [Pa], or of the logarithm of the flow. */
    public double deviation(Channel channel) {
        return channel == Channel.FLOW
                ? meter.orElseThrow().deviation()
                : gauge(channel).deviation();
    }

    /** What a needle showed: [Pa], or the logarithm of the flow [m3/s]. */
    public double read(Channel channel) {
        return channel == Channel.FLOW
                ? meter.orElseThrow().read()
                : gauge(channel).read();
    }

    private PressureNeedle gauge(Channel channel) {
        for (PressureNeedle gauge : gauges) {
            if (gauge.channel() == channel) {
                return gauge;
            }
        }
        throw new IllegalArgumentException("needle not read: " + channel);
    }

    /** Square of the flow at a point [m6/s2]. */
    public double flowSquared(Unknowns all, double[] u, double[] latents) {
        return water.flowSquared(all, u, latents);
    }

    void evaluate(Unknowns all, double[] u, double[] latents, Scatter scatter, Rows into) {
        int row = 0;
        for (PressureNeedle gauge : gauges) {
            double deviation = gauge.deviation() * scatter.of(gauge.channel());
            double shown = gauge.shows(water, all, u, latents, new RowSlopes(into, row, 1 / deviation));
            into.residual(row, (shown - gauge.read()) / deviation);
            row++;
        }
        if (meter.isPresent()) {
            double deviation = meter.get().deviation() * scatter.of(Channel.FLOW);
            double shown = meter.get().shows(water, all, u, latents, new RowSlopes(into, row, 1 / deviation));
            into.residual(row, (shown - meter.get().read()) / deviation);
        }
    }

    /** Sum of the logarithms of the expected scatter of its needles. */
    double logDeviations(Scatter scatter) {
        double sum = 0;
        for (PressureNeedle gauge : gauges) {
            sum += Math.log(gauge.deviation() * scatter.of(gauge.channel()));
        }
        return meter.isPresent() ? sum + Math.log(meter.get().deviation() * scatter.of(Channel.FLOW)) : sum;
    }

    private static final class FormSlopes implements Slopes {
        private final double[] form;
        private final int latents;

        FormSlopes(double[] form, int latents) {
            this.form = form;
            this.latents = latents;
        }

        @Override
        public void byLatent(int latent, double slope) {
            form[latent] += slope;
        }

        @Override
        public void byUnknown(int unknown, double slope) {
            form[latents + unknown] += slope;
        }
    }

    private record RowSlopes(Rows rows, int row, double scale) implements Slopes {
        @Override
        public void byLatent(int latent, double slope) {
            rows.byLatent(row, latent, scale * slope);
        }

        @Override
        public void byUnknown(int unknown, double slope) {
            rows.byUnknown(row, unknown, scale * slope);
        }
    }
}
