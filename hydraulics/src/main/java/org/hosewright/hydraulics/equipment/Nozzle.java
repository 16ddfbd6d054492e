package org.hosewright.hydraulics.equipment;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.Ratio;

/** A nozzle: one tip, or several settings of which one is in use.
 *
 * @param id the company's name for it
 * @param settings tips by setting, in the company's order; a plain nozzle has one, under {@link #ONLY}
 * @param most the highest pressure its maker allows
 * @param flow true flow over rated, where a test night determined it; 1 is as rated
 */
public record Nozzle(String id, Map<String, Tip> settings, Optional<Pressure> most, Optional<Known<Ratio>> flow) {
    /** The setting of a nozzle that has no settings. */
    public static final String ONLY = "";

    public Nozzle {
        if (settings.isEmpty()) {
            throw new InvalidInput("settings of nozzle " + id, "none", "at least one tip", "");
        }
        settings = Collections.unmodifiableMap(new LinkedHashMap<>(settings));
    }

    public static Nozzle of(String id, Tip tip) {
        return new Nozzle(id, Map.of(ONLY, tip), Optional.empty(), Optional.empty());
    }

    /** True where a reading or a lay must say which setting was in use. */
    public boolean hasSettings() {
        return settings.size() > 1 || !settings.containsKey(ONLY);
    }

    /** The name of the tip in a setting: the nozzle's id, with the setting where there are several.
     *
     * @param setting empty for the first one listed
     */
    public String tipName(String setting) {
        if (!hasSettings()) {
            return id;
        }
        return id + " " + (setting.isEmpty() ? settings.keySet().iterator().next() : setting);
    }

    /** The tip in a setting as it really flows, measured factor included. */
    public Tip tip(String setting) {
        Tip rated = rated(setting);
        return flow.isPresent() ? rated.flowing(flow.get().value().value()) : rated;
    }

    /** The tip in a setting as its maker rates it; an empty setting means the first one listed. */
    public Tip rated(String setting) {
        Tip tip = setting.isEmpty() ? settings.values().iterator().next() : settings.get(setting);
        if (tip == null) {
            throw new InvalidInput("setting of nozzle " + id, setting, String.join(", ", settings.keySet()), "");
        }
        return tip;
    }
}
