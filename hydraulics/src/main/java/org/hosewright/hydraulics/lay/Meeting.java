package org.hosewright.hydraulics.lay;

import java.util.LinkedHashMap;
import java.util.Map;
import org.hosewright.hydraulics.equipment.Appliance;
import org.hosewright.hydraulics.error.InvalidInput;

/** The joins of a lay with the pressure that stands in each while a solve tries it.
 *
 * @param joints what follows each join
 * @param pressures_Pa the pressure in each [Pa]
 */
record Meeting(Map<String, Joint> joints, Map<String, Double> pressures_Pa) {
    static final Meeting NONE = new Meeting(Map.of(), Map.of());

    /** The same joins with another pressure in one of them. */
    Meeting with(String join, double pressure_Pa) {
        Map<String, Double> changed = new LinkedHashMap<>(pressures_Pa);
        changed.put(join, pressure_Pa);
        return new Meeting(joints, changed);
    }

    Joint joint(String join) {
        Joint joint = joints.get(join);
        if (joint == null) {
            throw new InvalidInput("join", join, "a join that stands under joins", "");
        }
        return joint;
    }

    double pressure_Pa(String join) {
        return pressures_Pa.getOrDefault(join, 0.0);
    }

    /** What the siamese takes of one line's flow, where its loss is stated so [Pa]. */
    double perLine_Pa(String join, double flow_m3s) {
        return joint(join)
                .appliance()
                .filter(named -> named.per() == Appliance.Per.LEG)
                .map(named -> named.loss().loss_Pa(flow_m3s))
                .orElse(0.0);
    }
}
