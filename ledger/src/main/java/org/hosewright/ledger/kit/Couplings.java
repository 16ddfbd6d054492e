package org.hosewright.ledger.kit;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The couplings of what stands between hose and nozzle in a company's gear; what the kit does not say is not judged.
 *
 * @param discharges by engine and discharge, as {@link #discharge} writes it
 * @param appliances by appliance
 * @param adapters what goes between couplings that do not mate, by its name
 */
public record Couplings(
        Map<String, Coupling> discharges, Map<String, Through> appliances, Map<String, Through> adapters) {
    public static final Couplings NONE = new Couplings(Map.of(), Map.of(), Map.of());

    public Couplings {
        discharges = Collections.unmodifiableMap(new LinkedHashMap<>(discharges));
        appliances = Collections.unmodifiableMap(new LinkedHashMap<>(appliances));
        adapters = Collections.unmodifiableMap(new LinkedHashMap<>(adapters));
    }

    /** The two sides of a piece, the one that the water comes in by first. */
    public record Through(Optional<Coupling> in, Optional<Coupling> out) {
        public static final Through UNSAID = new Through(Optional.empty(), Optional.empty());

        boolean leads(Coupling from, Coupling to) {
            return in.filter(from::fits).isPresent() && out.filter(to::fits).isPresent();
        }
    }

    /** The name of a discharge among all engines'. */
    public static String discharge(String engine, String discharge) {
        return engine + "/" + discharge;
    }

    /** The adapter that leads from one coupling to another, where the company has one. */
    public Optional<String> findAdapter(Coupling from, Coupling to) {
        return adapters.entrySet().stream()
                .filter(entry -> entry.getValue().leads(from, to))
                .map(Map.Entry::getKey)
                .findFirst();
    }
}
