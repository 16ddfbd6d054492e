package org.hosewright.hydraulics.limit;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Engine;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Pressure;

/** What the company has set for a line, apart from what its equipment says itself.
 *
 * @param ceiling highest pump pressure
 * @param rated rated capacity of the pump
 * @param crew people at the nozzle and their reaction figure; without it reaction is no limit
 * @param target flow wanted
 * @param least flow below which the line is not good enough
 * @param tipLeast lowest tip pressure that is good enough
 * @param tipMost highest tip pressure that is still workable
 * @param supply most flow that the water supply gives
 * @param hoseTests age of each hose's service test; a hose that is not named has none known
 */
public record Bounds(
        Optional<Pressure> ceiling,
        Optional<Flow> rated,
        Optional<Crew> crew,
        Optional<Flow> target,
        Optional<Flow> least,
        Optional<Pressure> tipLeast,
        Optional<Pressure> tipMost,
        Optional<Flow> supply,
        Map<String, TestAge> hoseTests) {
    /** Nothing set. */
    public static final Bounds NONE = new Bounds(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Map.of());

    public Bounds {
        hoseTests = Collections.unmodifiableMap(new LinkedHashMap<>(hoseTests));
    }

    /** What an engine sets: the ceiling and the rated capacity. */
    public static Bounds of(Engine engine) {
        return NONE.withPump(engine.ceiling(), engine.rated());
    }

    public Bounds withPump(Optional<Pressure> ceiling, Optional<Flow> rated) {
        return new Bounds(ceiling, rated, crew, target, least, tipLeast, tipMost, supply, hoseTests);
    }

    public Bounds withCeiling(Pressure ceiling) {
        return withPump(Optional.of(ceiling), rated);
    }

    public Bounds withCrew(Optional<Crew> crew) {
        return new Bounds(ceiling, rated, crew, target, least, tipLeast, tipMost, supply, hoseTests);
    }

    public Bounds withFlows(Optional<Flow> target, Optional<Flow> least) {
        return new Bounds(ceiling, rated, crew, target, least, tipLeast, tipMost, supply, hoseTests);
    }

    public Bounds withTip(Optional<Pressure> tipLeast, Optional<Pressure> tipMost) {
        return new Bounds(ceiling, rated, crew, target, least, tipLeast, tipMost, supply, hoseTests);
    }

    public Bounds withSupply(Optional<Flow> supply) {
        return new Bounds(ceiling, rated, crew, target, least, tipLeast, tipMost, supply, hoseTests);
    }

    public Bounds withHoseTests(Map<String, TestAge> hoseTests) {
        return new Bounds(ceiling, rated, crew, target, least, tipLeast, tipMost, supply, hoseTests);
    }

    /** The age of a hose's service test. */
    public TestAge testAge(String hose) {
        return hoseTests.getOrDefault(hose, TestAge.UNDATED);
    }
}
