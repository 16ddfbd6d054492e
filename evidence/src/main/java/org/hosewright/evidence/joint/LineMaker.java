package org.hosewright.evidence.joint;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.evidence.instrument.Tap;
import org.hosewright.evidence.night.Laid;
import org.hosewright.evidence.night.Reading;
import org.hosewright.evidence.night.Shown;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.equipment.Tip;
import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.Length;

/** Makes readings ready for the fit, collecting the unknowns that they touch. */
final class LineMaker {
    private static final double GRAVITY = 9.80665;

    private final Rack rack;
    private final Collected collected;

    LineMaker(Rack rack, Collected collected) {
        this.rack = rack;
        this.collected = collected;
    }

    Line line(Reading reading) {
        Water water = water(reading);
        List<PressureNeedle> gauges = new ArrayList<>();
        gauges.add(pump(reading));
        reading.shown().tip().ifPresent(read -> gauges.add(tip(reading, read.pascals())));
        if (!reading.laid().shut()) {
            reading.shown().mid().ifPresent(mid -> gauges.add(mid(reading, mid)));
        }
        Optional<FlowNeedle> meter =
                reading.shown().flow().filter(any -> !reading.laid().shut()).map(flow -> meter(reading));
        return new Line(water, gauges, meter, new Beginning(rack, reading).latents(water));
    }

    private Water water(Reading reading) {
        Laid laid = reading.laid();
        if (laid.shut()) {
            return new Water(Water.Kind.NONE, 1, List.of());
        }
        Tip tip = rack.tip(reading);
        if (TipPrior.isBlind(tip)) {
            return new Water(Water.Kind.FREE, 1, List.of());
        }
        TipPrior prior = TipPrior.of(tip, rack.gear().gauged().contains(laid.nozzle()));
        String id = rack.nozzle(laid.nozzle()).tipName(laid.setting());
        int factor = collected.place(new Unknown(Role.NOZZLE, id, prior.centre(), prior.deviation()));
        return new Water(Water.Kind.ORIFICE, prior.rate(), List.of(factor));
    }

    private PressureNeedle pump(Reading reading) {
        GaugeUse gauge = rack.pumpGauge(reading);
        boolean seesPiping =
                gauge.tap().filter(Tap.AtDischarge.class::isInstance).isEmpty();
        List<Term> losses = new ArrayList<>();
        if (!reading.laid().shut()) {
            losses.addAll(hoses(reading.laid().hose()));
            if (seesPiping) {
                String id = rack.discharge(reading.laid().discharge()).id();
                losses.add(new Term(collected.place(new Unknown(Role.PIPING, id, 0, Priors.PIPING)), 1));
            }
        }
        Beyond beyond = new Beyond(losses, 0, head_Pa(reading));
        return needle(Channel.PUMP, gauge, 1, beyond, reading.shown().pump().pascals());
    }

    private PressureNeedle tip(Reading reading, double read_Pa) {
        GaugeUse gauge = rack.tipGauge(reading);
        TapView view = TapView.of(reading, gauge, rack.tip(reading));
        PressureNeedle needle = needle(Channel.TIP, gauge, view.share(), Beyond.NOTHING, read_Pa);
        if (view.known()) {
            return needle;
        }
        String id = gauge.id() + " behind " + reading.laid().nozzle();
        int tap = collected.place(new Unknown(Role.TAP, id, Priors.TAP_CENTRE, Priors.TAP));
        return needle.withSpan(new Term(tap, -1));
    }

    private PressureNeedle mid(Reading reading, Shown.Mid mid) {
        double left_m = reading.laid().length().metres() - mid.fromPump().metres();
        List<Stretch> beyond = beyond(reading.laid().hose(), mid.fromPump().metres());
        Hose around = rack.hose(beyond.get(0).hose());
        double area_m2 =
                Math.PI / 4 * around.diameter().metres() * around.diameter().metres();
        double velocity = Constants.WATER_PA_PER_M / (2 * GRAVITY * area_m2 * area_m2);
        double head_Pa = head_Pa(reading) * left_m / reading.laid().length().metres();
        return needle(
                Channel.MID,
                rack.midGauge(),
                1,
                new Beyond(hoses(beyond), velocity, head_Pa),
                mid.pressure().pascals());
    }

    /** What lies between a tap and the tip, as {@link PressureNeedle} has it. */
    private record Beyond(List<Term> losses, double velocity, double head) {
        static final Beyond NOTHING = new Beyond(List.of(), 0, 0);
    }

    private PressureNeedle needle(Channel channel, GaugeUse gauge, double share, Beyond beyond, double read) {
        Term error = new Term(collected.place(gauge.unknown()), 1);
        boolean spans = gauge.proportional();
        return new PressureNeedle(
                channel,
                share,
                beyond.losses(),
                beyond.velocity(),
                beyond.head(),
                spans ? List.of() : List.of(error),
                spans ? List.of(error) : List.of(),
                read,
                gauge.scatter_Pa(read));
    }

    private List<Term> hoses(List<Stretch> chain) {
        Map<String, Double> lengths_m = new LinkedHashMap<>();
        chain.forEach(part -> lengths_m.merge(part.hose(), part.length().metres(), Double::sum));
        List<Term> terms = new ArrayList<>();
        lengths_m.forEach((id, length_m) -> terms.add(new Term(place(rack.hose(id)), length_m)));
        return terms;
    }

    private int place(Hose hose) {
        boolean book = rack.gear().bookHoses().contains(hose.id());
        double deviation = book ? Priors.BOOK_HOSE : Priors.MEASURED_HOSE;
        return collected.place(
                new Unknown(Role.HOSE, hose.id(), hose.loss().value().r(), deviation));
    }

    private static List<Stretch> beyond(List<Stretch> chain, double from_m) {
        List<Stretch> beyond = new ArrayList<>();
        double at_m = 0;
        for (Stretch part : chain) {
            double left_m = at_m + part.length().metres() - Math.max(at_m, from_m);
            if (left_m > 0) {
                beyond.add(new Stretch(part.hose(), new Length(left_m)));
            }
            at_m += part.length().metres();
        }
        return beyond;
    }

    private FlowNeedle meter(Reading reading) {
        double share = rack.meterShare(reading);
        String id = reading.with().meter().orElse(Rack.METER);
        int factor = collected.place(new Unknown(Role.METER, id, 1, share));
        double read = Math.log(reading.shown().flow().get().cubicMetresPerSecond());
        return new FlowNeedle(List.of(new Term(factor, 1)), read, Priors.SCATTER_SHARE * share);
    }

    private static double head_Pa(Reading reading) {
        return Constants.WATER_PA_PER_M
                * reading.laid().rise().map(Length::metres).orElse(0.0);
    }
}
