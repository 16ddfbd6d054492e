package org.hosewright.evidence.joint;

import java.util.ArrayList;
import java.util.List;

/** A pressure gauge at one place of a line: what it should show, from the pressure at the tip backwards.
 *
 * @param channel which needle
 * @param share of the tip's total pressure that the tap sees; 1 except at a side tap
 * @param losses unknown losses between the tap and the tip, weighted by length where they are hose
 * @param velocity what the tap misses of the velocity head, times the square of the flow [Pa s2/m6]
 * @param head pressure of the height of the tip above the tap [Pa]
 * @param offsets unknown offsets of the gauge, and unknown heights
 * @param spans unknown span errors of the gauge, and unknown shares that a side tap misses
 * @param read what it showed [Pa]
 * @param deviation expected scatter [Pa]
 */
record PressureNeedle(
        Channel channel,
        double share,
        List<Term> losses,
        double velocity,
        double head,
        List<Term> offsets,
        List<Term> spans,
        double read,
        double deviation) {
    PressureNeedle {
        losses = List.copyOf(losses);
        offsets = List.copyOf(offsets);
        spans = List.copyOf(spans);
    }

    PressureNeedle withLoss(Term loss) {
        return new PressureNeedle(channel, share, and(losses, loss), velocity, head, offsets, spans, read, deviation);
    }

    PressureNeedle withOffset(Term offset) {
        return new PressureNeedle(channel, share, losses, velocity, head, and(offsets, offset), spans, read, deviation);
    }

    PressureNeedle withSpan(Term span) {
        return new PressureNeedle(channel, share, losses, velocity, head, offsets, and(spans, span), read, deviation);
    }

    PressureNeedle withHead(double other) {
        return new PressureNeedle(channel, share, losses, velocity, other, offsets, spans, read, deviation);
    }

    /** The same with more of one loss. */
    PressureNeedle withMore(int unknown, double weight) {
        List<Term> other = new ArrayList<>();
        losses.forEach(loss -> other.add(loss.unknown() == unknown ? new Term(unknown, loss.weight() + weight) : loss));
        return new PressureNeedle(channel, share, other, velocity, head, offsets, spans, read, deviation);
    }

    private static List<Term> and(List<Term> terms, Term more) {
        List<Term> all = new ArrayList<>(terms);
        all.add(more);
        return all;
    }

    /** What it should show [Pa]; the derivatives go along. */
    double shows(Water water, Unknowns all, double[] u, double[] latents, Slopes slopes) {
        double tip = water.pressure_Pa(latents);
        double square = water.flowSquared(all, u, latents);
        double spread = 1;
        for (Term span : spans) {
            spread += span.weight() * all.get(span.unknown()).value(u[span.unknown()]);
        }
        double resistance = -velocity;
        for (Term loss : losses) {
            resistance += loss.weight() * all.get(loss.unknown()).value(u[loss.unknown()]);
        }
        double pressure = share * tip + resistance * square + head;
        slopes.byLatent(0, spread * share * tip);
        water.pass(spread * 2 * resistance * square, all, slopes);
        pass(losses, spread * square, all, u, slopes);
        pass(spans, pressure, all, u, slopes);
        pass(offsets, 1, all, u, slopes);
        double shown = spread * pressure;
        for (Term offset : offsets) {
            shown += offset.weight() * all.get(offset.unknown()).value(u[offset.unknown()]);
        }
        return shown;
    }

    private static void pass(List<Term> terms, double factor, Unknowns all, double[] u, Slopes slopes) {
        for (Term term : terms) {
            int place = term.unknown();
            slopes.byUnknown(place, factor * term.weight() * all.get(place).slope(u[place]));
        }
    }
}
