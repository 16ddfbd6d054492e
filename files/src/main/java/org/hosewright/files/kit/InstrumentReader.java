package org.hosewright.files.kit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.evidence.instrument.Accuracy;
import org.hosewright.evidence.instrument.Instrument;
import org.hosewright.evidence.instrument.Tap;
import org.hosewright.files.term.Quantities;
import org.hosewright.files.yaml.YamlMap;
import org.hosewright.files.yaml.YamlValue;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Kind;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityText;
import org.hosewright.ledger.kit.InstrumentRecord;
import org.hosewright.ledger.kit.Kit;

/** The reader of the instruments of a kit file. */
final class InstrumentReader {
    static final String TAPS = "pitot, 'side' with the inside diameter there (side 1.5 in), discharge or before piping";
    private static final String KINDS = "pressure-gauge or flow-meter";
    private static final String ACCURACY = "one standard deviation, as in '0.5 % of range' or '5 % of reading'";
    private static final String OF_RANGE = " of range";
    private static final String OF_READING = " of reading";
    private static final double MOST_SHARE = 0.5;

    private InstrumentReader() {}

    static InstrumentRecord instrument(String id, YamlValue value) {
        YamlMap map = value.map();
        YamlValue kind = map.get("kind", KINDS);
        return switch (kind.text(KINDS)) {
            case "pressure-gauge" -> gauge(id, map);
            case "flow-meter" -> meter(id, map);
            default -> throw kind.refused("kind of instrument", KINDS);
        };
    }

    /** The names of the kit's pressure gauges. */
    static List<String> gauges(Kit kit) {
        return named(kit, Instrument.PressureGauge.class);
    }

    private static List<String> named(Kit kit, Class<? extends Instrument> kind) {
        return kit.instruments().entrySet().stream()
                .filter(entry -> kind.isInstance(entry.getValue().instrument()))
                .map(Map.Entry::getKey)
                .toList();
    }

    private static InstrumentRecord gauge(String id, YamlMap map) {
        map.only("kind", "range", "accuracy", "tap", "least-count", "offset", "calibrated");
        YamlValue stated = map.get("accuracy", ACCURACY);
        Accuracy accuracy = accuracy(stated);
        Optional<Pressure> range = map.find("range").map(Quantities::pressure);
        if (accuracy.of() == Accuracy.Of.RANGE && range.isEmpty()) {
            throw stated.refused("accuracy of a gauge without range", "a range beside it, as in 'range: 400 psi'");
        }
        var gauge = new Instrument.PressureGauge(
                id,
                range,
                accuracy,
                map.find("tap").map(InstrumentReader::tap),
                map.find("least-count").map(Quantities::pressure));
        return new InstrumentRecord(
                gauge,
                map.find("offset").map(InstrumentReader::offset),
                map.find("calibrated").map(Quantities::day));
    }

    private static InstrumentRecord meter(String id, YamlMap map) {
        map.only("kind", "accuracy", "calibrated");
        YamlValue stated = map.get("accuracy", ACCURACY);
        Accuracy accuracy = accuracy(stated);
        if (accuracy.of() == Accuracy.Of.RANGE) {
            throw stated.refused("accuracy of a flow meter", "a share of the reading, as in '5 % of reading'");
        }
        return new InstrumentRecord(
                new Instrument.FlowMeter(id, accuracy),
                Optional.empty(),
                map.find("calibrated").map(Quantities::day));
    }

    private static Accuracy accuracy(YamlValue value) {
        return value.read(ACCURACY, text -> {
            boolean range = text.endsWith(OF_RANGE);
            if (!range && !text.endsWith(OF_READING)) {
                throw new InvalidInput("accuracy", text, ACCURACY, "");
            }
            String share = text.substring(0, text.length() - (range ? OF_RANGE : OF_READING).length());
            double part = QuantityText.ratio(share).value();
            if (!(part > 0) || part > MOST_SHARE) {
                throw new InvalidInput("accuracy", text, ACCURACY + ", above 0 and at most 50 %", "");
            }
            return new Accuracy(part, range ? Accuracy.Of.RANGE : Accuracy.Of.READING);
        });
    }

    private static Tap tap(YamlValue value) {
        String text = value.text(TAPS);
        return switch (text) {
            case "pitot" -> new Tap.Pitot();
            case "side" -> new Tap.Side(Optional.empty());
            case "discharge" -> new Tap.AtDischarge();
            case "before piping" -> new Tap.BeforePiping();
            default -> {
                if (!text.startsWith("side ")) {
                    throw value.refused("tap", TAPS);
                }
                Length inside = value.placed(() -> QuantityText.length(text.substring("side ".length())));
                if (inside.metres() < Length.ofInches(0.25).metres()
                        || inside.metres() > Length.ofInches(12).metres()) {
                    throw value.refused("inside diameter at the tap", "a diameter from 1/4 in to 12 in");
                }
                yield new Tap.Side(Optional.of(inside));
            }
        };
    }

    private static Known<Pressure> offset(YamlValue value) {
        String allowed = "what it reads less what is true, as in '-1.2 ± 0.8 psi'";
        var read = value.read(allowed, text -> QuantityText.known(Kind.PRESSURE, text));
        return new Known<>((Pressure) read.value(), read.standardError().map(e -> (Pressure) e));
    }
}
