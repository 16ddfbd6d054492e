package org.hosewright.files.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.hosewright.files.yaml.YamlText;

/** The changes that make one tree of entries of another. */
final class Difference {
    private final List<KitChange> changes = new ArrayList<>();

    private Difference() {}

    /** The changes from one tree to the next.
     *
     * @param written the next tree as it shall be written where it differs; it has the same keys
     */
    static List<KitChange> between(Map<?, ?> was, Map<?, ?> now, Map<?, ?> written) {
        Difference difference = new Difference();
        difference.add(List.of(), was, now, written);
        return List.copyOf(difference.changes);
    }

    private void add(List<String> path, Map<?, ?> was, Map<?, ?> now, Map<?, ?> written) {
        now.forEach((key, value) -> {
            List<String> here = below(path, key);
            Object before = was.get(key);
            Object text = Objects.requireNonNull(written.get(key));
            if (before instanceof Map<?, ?> old && value instanceof Map<?, ?> next && text instanceof Map<?, ?> shown) {
                add(here, old, next, shown);
            } else if (!Objects.equals(before, value)) {
                changes.add(new KitChange.Set(here, YamlText.of(text)));
            }
        });
        for (Object key : was.keySet()) {
            if (!now.containsKey(key)) {
                changes.add(new KitChange.Remove(below(path, key)));
            }
        }
    }

    private static List<String> below(List<String> path, Object key) {
        List<String> longer = new ArrayList<>(path);
        longer.add(String.valueOf(key));
        return longer;
    }
}
