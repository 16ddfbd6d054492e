package org.hosewright.ledger.kit;

import java.time.Period;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Appliance;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Force;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.UnitSystem;

/** All that the company has, by id and in its own order.
 *
 * @param company name
 * @param zone IANA time zone
 * @param units how results are shown
 * @param crewReaction the company's own reaction figures, by people at the nozzle; empty where it has none
 * @param hoses hoses
 * @param nozzles nozzles
 * @param appliances wyes and the like
 * @param engines engines
 * @param instruments gauges and meters
 * @param packages hose-and-nozzle packages
 * @param rule the present rule of thumb, where there is one
 * @param reserve hose that the company keeps back from the longest safe stretch, where it has said so
 * @param evidence test nights whose numbers were taken over
 * @param couplings of discharges, appliances and adapters, as far as the kit says them
 * @param hydrantTest how long a hydrant's flow test is relied on, where the company has said so
 */
public record Kit(
        String company,
        String zone,
        UnitSystem units,
        Map<Integer, Force> crewReaction,
        Map<String, HoseRecord> hoses,
        Map<String, NozzleRecord> nozzles,
        Map<String, Appliance> appliances,
        Map<String, EngineRecord> engines,
        Map<String, InstrumentRecord> instruments,
        Map<String, HosePackage> packages,
        Optional<RuleOfThumb> rule,
        Optional<Length> reserve,
        Map<String, NightRecord> evidence,
        Couplings couplings,
        Optional<Period> hydrantTest) {
    public Kit {
        crewReaction = kept(crewReaction);
        hoses = kept(hoses);
        nozzles = kept(nozzles);
        appliances = kept(appliances);
        engines = kept(engines);
        instruments = kept(instruments);
        packages = kept(packages);
        evidence = kept(evidence);
    }

    /** A kit that says nothing of the couplings of discharges and appliances. */
    public Kit(
            String company,
            String zone,
            UnitSystem units,
            Map<Integer, Force> crewReaction,
            Map<String, HoseRecord> hoses,
            Map<String, NozzleRecord> nozzles,
            Map<String, Appliance> appliances,
            Map<String, EngineRecord> engines,
            Map<String, InstrumentRecord> instruments,
            Map<String, HosePackage> packages,
            Optional<RuleOfThumb> rule,
            Optional<Length> reserve,
            Map<String, NightRecord> evidence) {
        this(
                company,
                zone,
                units,
                crewReaction,
                hoses,
                nozzles,
                appliances,
                engines,
                instruments,
                packages,
                rule,
                reserve,
                evidence,
                Couplings.NONE,
                Optional.empty());
    }

    /** A safe stretch less the company's reserve, in whole sections; never below 0. */
    public Length lessReserve(Length safe, Length section) {
        double kept_m = reserve.map(Length::metres).orElse(0.0);
        double sections = Math.ceil(kept_m / section.metres() - 1e-9);
        return new Length(Math.max(0, safe.metres() - sections * section.metres()));
    }

    /** The same kit with these packages in place of its own. */
    public Kit withPackages(Map<String, HosePackage> others) {
        return new Kit(
                company,
                zone,
                units,
                crewReaction,
                hoses,
                nozzles,
                appliances,
                engines,
                instruments,
                others,
                rule,
                reserve,
                evidence,
                couplings,
                hydrantTest);
    }

    /** The same kit with the packages of one engine only.
     *
     * @throws InvalidInput the kit has no such engine
     */
    public Kit ofEngine(String engine) {
        if (!engines.containsKey(engine)) {
            throw new InvalidInput("engine", engine, String.join(", ", engines.keySet()), "");
        }
        Map<String, HosePackage> its = new LinkedHashMap<>(packages);
        its.values().removeIf(named -> !named.engine().equals(engine));
        return withPackages(its);
    }

    private static <K, V> Map<K, V> kept(Map<K, V> map) {
        return Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }
}
