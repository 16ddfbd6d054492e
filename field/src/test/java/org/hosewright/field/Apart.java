package org.hosewright.field;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.hosewright.field.json.JsonReader;

/** How far two answers lie apart, each number against the largest of its unit in the answer. */
final class Apart {
    private final Map<String, Double> largest = new TreeMap<>();
    private final Map<String, Double> off = new TreeMap<>();

    private Apart() {}

    /** The largest share that two numbers differ by; all else must be equal. */
    static double share(String ours, String theirs) {
        Apart apart = new Apart();
        apart.compare("", JsonReader.read(ours), JsonReader.read(theirs), ours);
        double share = 0;
        for (Map.Entry<String, Double> unit : apart.off.entrySet()) {
            share = Math.max(share, unit.getValue() / Math.max(apart.largest.get(unit.getKey()), Double.MIN_NORMAL));
        }
        return share;
    }

    private void compare(String unit, Object ours, Object theirs, String where) {
        if (ours instanceof Map<?, ?> members) {
            Map<?, ?> others = (Map<?, ?>) theirs;
            assertThat(members.keySet()).as(where).isEqualTo(others.keySet());
            members.forEach((key, value) -> compare(unitOf(String.valueOf(key)), value, others.get(key), where));
        } else if (ours instanceof List<?> items) {
            List<?> others = (List<?>) theirs;
            assertThat(items).as(where).hasSameSizeAs(others);
            for (int i = 0; i < items.size(); i++) {
                compare(unit, items.get(i), others.get(i), where);
            }
        } else if (ours instanceof Double number) {
            largest.merge(unit, Math.abs(number), Math::max);
            off.merge(unit, Math.abs(number - (Double) theirs), Math::max);
        } else {
            assertThat(theirs).as(where).isEqualTo(ours);
        }
    }

    private static String unitOf(String key) {
        return key.substring(key.indexOf('_') + 1);
    }
}
