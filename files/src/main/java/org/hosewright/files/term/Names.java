package org.hosewright.files.term;

import java.util.Collection;
import java.util.Map;
import org.hosewright.files.yaml.Nearest;
import org.hosewright.files.yaml.YamlMap;
import org.hosewright.files.yaml.YamlValue;
import org.hosewright.hydraulics.equipment.Nozzle;
import org.hosewright.hydraulics.error.InvalidInput;

/** The names by which one entry of a file speaks of another. */
public final class Names {
    private Names() {}

    /** The value of a key that names something known.
     *
     * @throws InvalidInput it names something else; the message lists what there is
     */
    public static String get(YamlMap map, String key, Collection<String> known) {
        YamlValue value = map.get(key, known("", known));
        String name = value.text(known("", known));
        if (!known.contains(name)) {
            throw value.refused(key, known(name, known));
        }
        return name;
    }

    /** The thing of a name that was checked before. */
    public static <T> T of(Map<String, T> things, String name) {
        T thing = things.get(name);
        if (thing == null) {
            throw new InvalidInput("name", name, known(name, things.keySet()), "");
        }
        return thing;
    }

    /** The setting of a nozzle beside its name; empty for a nozzle that has none. */
    public static String setting(YamlMap map, Nozzle nozzle) {
        if (nozzle.hasSettings()) {
            return get(map, "setting", nozzle.settings().keySet());
        }
        map.find("setting").ifPresent(value -> {
            throw value.refused("setting", "no setting: " + nozzle.id() + " has only one");
        });
        return Nozzle.ONLY;
    }

    /** What would do in place of an unknown name. */
    public static String known(String id, Collection<String> names) {
        if (names.isEmpty()) {
            return "a name that the kit lists; it lists none";
        }
        return Nearest.of(id, names).map(near -> "'" + near + "'; the kit has ").orElse("one that the kit has: ")
                + String.join(", ", names);
    }
}
