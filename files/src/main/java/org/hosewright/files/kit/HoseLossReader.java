package org.hosewright.files.kit;

import java.util.Optional;
import org.hosewright.files.term.Quantities;
import org.hosewright.files.yaml.YamlMap;
import org.hosewright.files.yaml.YamlValue;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.equipment.HoseLaw;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;

/** The reader of how a hose loses: by a coefficient, by Hazen-Williams, or by the roughness of its lining. */
final class HoseLossReader {
    private static final String LOSS = "a loss such as '9.19 psi / 100 ft @ 100 gpm'";
    private static final String ONE = "one of loss, hazen-williams and roughness";
    private static final String SMOOTH = "a Hazen-Williams coefficient from 40 to 200, as in 140";
    private static final String ROUGH = "the height of its lining's roughness, 0 to 1 mm";
    private static final Length ROUGHEST = new Length(1e-3);

    private HoseLossReader() {}

    static Hose hose(String id, YamlMap map, Length diameter, Length section) {
        Optional<Pressure> test = map.find("service-test").map(Quantities::pressure);
        Optional<HoseLaw> law = law(map);
        return law.isPresent()
                ? Hose.by(law.get(), id, diameter, section, test)
                : new Hose(id, diameter, section, Quantities.hoseLoss(map.get("loss", LOSS)), test);
    }

    private static Optional<HoseLaw> law(YamlMap map) {
        Optional<YamlValue> smooth = map.find("hazen-williams");
        Optional<YamlValue> rough = map.find("roughness");
        Optional<YamlValue> given = smooth.or(() -> rough);
        if (given.isPresent() && (map.find("loss").isPresent() || (smooth.isPresent() && rough.isPresent()))) {
            throw given.get().refused("two ways in which the hose loses", ONE);
        }
        return smooth.<HoseLaw>map(HoseLossReader::hazenWilliams)
                .or(() -> rough.map(
                        value -> new HoseLaw.Roughness(Quantities.length(value, new Length(0), ROUGHEST, ROUGH))));
    }

    private static HoseLaw.HazenWilliams hazenWilliams(YamlValue value) {
        String text = value.text(SMOOTH);
        if (!text.matches("[0-9]{1,3}(\\.[0-9]{1,4})?")) {
            throw value.refused("hazen-williams", SMOOTH);
        }
        try {
            return new HoseLaw.HazenWilliams(Double.parseDouble(text));
        } catch (InvalidInput e) {
            throw value.refused("hazen-williams", SMOOTH);
        }
    }
}
