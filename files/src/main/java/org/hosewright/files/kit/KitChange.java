package org.hosewright.files.kit;

import java.util.List;

/** One change to the text of a kit file. */
public sealed interface KitChange {
    /** Keys from the top ("hoses", "attack-175", "loss"); not empty. */
    List<String> path();

    /** A value put under a path.
     *
     * @param yamlValue the value as YAML
     */
    record Set(List<String> path, String yamlValue) implements KitChange {
        public Set {
            path = List.copyOf(path);
        }
    }

    /** An entry taken out. */
    record Remove(List<String> path) implements KitChange {
        public Remove {
            path = List.copyOf(path);
        }
    }
}
