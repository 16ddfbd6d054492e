package org.hosewright.ledger.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hosewright.evidence.calibration.Course;
import org.hosewright.evidence.calibration.Judged;
import org.hosewright.evidence.instrument.Instrument;
import org.hosewright.evidence.instrument.Tap;
import org.hosewright.evidence.night.Reading;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.equipment.Tip;
import org.hosewright.hydraulics.profile.Pin;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.drill.DrillReport;

/** The readings that belong on a line's profile: the same line, at the length and about the tip pressure drawn. */
record NightPins(DrillReport report, Course course, Tip tip) {
    /** How far from the tip pressure drawn a reading may be and still lie on the same picture [1]. */
    private static final double NEAR = 0.06;

    List<Pin> list() {
        List<Pin> pins = new ArrayList<>();
        report.night().readings().stream().filter(this::belongs).forEach(reading -> {
            boolean aside = judged(reading).filter(judged -> !judged.used()).isPresent();
            pins.add(pin(
                    reading,
                    new Length(0),
                    reading.shown().pump(),
                    reading.with().pumpGauge(),
                    aside));
            reading.shown()
                    .mid()
                    .ifPresent(mid -> pins.add(pin(reading, mid.fromPump(), mid.pressure(), Optional.empty(), aside)));
            reading.shown()
                    .tip()
                    .ifPresent(read -> pins.add(nameless(
                            pin(reading, course.length(), read, reading.with().tipGauge(), aside))));
        });
        // Those in use lie on top where both stand at one place.
        pins.sort(Comparator.comparing(Pin::aside).reversed());
        return pins;
    }

    private boolean belongs(Reading reading) {
        boolean line = reading.laid().discharge().equals(course.discharge())
                && reading.laid().nozzle().equals(course.nozzle())
                && reading.laid().setting().equals(course.setting())
                && ids(reading.laid().hose()).equals(ids(course.hose()));
        boolean length =
                Math.abs(reading.laid().length().metres() - course.length().metres()) < 0.01;
        Length rise = reading.laid().rise().orElse(new Length(0));
        boolean level = Math.abs(rise.metres() - course.rise().metres()) < 0.01;
        return line && length && level && nearTip(reading);
    }

    /** True where the tip gauge faced the stream and showed about what is drawn. */
    private boolean nearTip(Reading reading) {
        boolean side = reading.with()
                .tipGauge()
                .map(id -> report.night().gear().instruments().get(id))
                .filter(one -> one instanceof Instrument.PressureGauge gauge
                        && gauge.tap().filter(tap -> tap instanceof Tap.Side).isPresent())
                .isPresent();
        return !side
                && reading.shown()
                        .tip()
                        .filter(read -> Math.abs(read.pascals() / tip.at().pascals() - 1) < NEAR)
                        .isPresent();
    }

    private Pin pin(Reading reading, Length at, Pressure read, Optional<String> gauge, boolean aside) {
        return new Pin(at, read, half(gauge, read), "reading " + reading.id() + off(reading, aside), aside);
    }

    private static Pin nameless(Pin pin) {
        return new Pin(pin.at(), pin.pressure(), pin.half(), "", pin.aside());
    }

    private String off(Reading reading, boolean aside) {
        return judged(reading)
                .filter(judged -> aside)
                .map(judged -> ", " + QuantityShown.of(report.kit().units()).text(abs(judged.excess()))
                        + (judged.excess().pascals() > 0 ? " too high" : " too low"))
                .orElse("");
    }

    private static Pressure abs(Pressure pressure) {
        return new Pressure(Math.abs(pressure.pascals()));
    }

    /** Half-width of the error bar: the gauge's own accuracy and the scatter of the night. */
    private Pressure half(Optional<String> gauge, Pressure read) {
        double scatter_Pa = report.calibration()
                .residual()
                .map(known -> known.value().pascals())
                .orElse(0.0);
        double accuracy_Pa = gauge.map(id -> report.night().gear().instruments().get(id))
                .map(one -> accuracy_Pa(one, read))
                .orElse(0.0);
        return new Pressure(QuantityShown.HALF_WIDTH * Math.sqrt(scatter_Pa * scatter_Pa + accuracy_Pa * accuracy_Pa));
    }

    private static double accuracy_Pa(Instrument one, Pressure read) {
        double base_Pa = read.pascals();
        if (one instanceof Instrument.PressureGauge gauge && gauge.range().isPresent()) {
            base_Pa = gauge.range().get().pascals();
        }
        return one.accuracy().share() * base_Pa;
    }

    private Optional<Judged> judged(Reading reading) {
        return report.calibration().readings().stream()
                .filter(judged -> judged.reading().equals(reading.id()))
                .findFirst();
    }

    private static List<String> ids(List<Stretch> chain) {
        return chain.stream().map(Stretch::hose).toList();
    }
}
