package org.hosewright.ledger.line;

import java.util.LinkedHashMap;
import java.util.Map;
import org.hosewright.hydraulics.line.LossErrors;
import org.hosewright.ledger.kit.Kit;

/** How the errors of a kit's losses hang together, from the nights that it took over. */
public final class KitErrors {
    private KitErrors() {}

    /** The correlations that the kit's nights left; a later night's outweighs an earlier one's. */
    public static LossErrors of(Kit kit) {
        Map<String, Double> correlations = new LinkedHashMap<>();
        kit.evidence().values().forEach(night -> correlations.putAll(night.correlation()));
        return new LossErrors(correlations);
    }
}
