package org.hosewright.ledger.lay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hosewright.hydraulics.equipment.Automatic;
import org.hosewright.hydraulics.lay.LayState;
import org.hosewright.hydraulics.lay.LayState.AtTip;
import org.hosewright.hydraulics.lay.Piece;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.kit.Basis;
import org.hosewright.ledger.kit.EngineRecord;
import org.hosewright.ledger.kit.HoseRecord;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.kit.NightRecord;
import org.hosewright.ledger.line.KitLines;

/** Where a lay leaves the range that its numbers were flown or rated in; it is said before the number. */
final class OutsideRange {
    /** Lengths are told apart down to this share [1]. */
    private static final double SAME = 1e-6;

    private final Kit kit;
    private final QuantityShown shown;

    OutsideRange(Kit kit) {
        this.kit = kit;
        this.shown = QuantityShown.of(kit.units());
    }

    /** One sentence for each hose, each piping and each tip outside its range. */
    List<String> list(LayState state, String engine) {
        Set<String> says = new LinkedHashSet<>();
        for (AtTip tip : state.open()) {
            says.addAll(hose(tip));
            findBand(tip).ifPresent(says::add);
        }
        List<Piece> pieces = new ArrayList<>(state.parts().pieces());
        state.intake().ifPresent(intake -> pieces.addAll(intake.hoses()));
        for (Piece piece : pieces) {
            piece.run()
                    .map(run -> run.hose().id())
                    .flatMap(hose -> findFlow(hose, findHose(hose), piece.flow(), " to " + piece.place()))
                    .ifPresent(says::add);
        }
        EngineRecord record = KitLines.get(kit.engines(), engine, "engine of the lay");
        state.parts()
                .flows()
                .forEach((discharge, flow) -> findFlow(
                                discharge,
                                Optional.ofNullable(record.pipingBasis().get(discharge)),
                                flow,
                                "")
                        .ifPresent(says::add));
        return new ArrayList<>(says);
    }

    private List<String> hose(AtTip tip) {
        Map<String, Double> laid_m = new LinkedHashMap<>();
        for (Run run : tip.path().runs()) {
            laid_m.merge(run.hose().id(), run.length().metres(), Double::sum);
        }
        List<String> says = new ArrayList<>();
        laid_m.forEach((id, length_m) -> findHose(id)
                .flatMap(this::findNight)
                .flatMap(NightRecord::tested)
                .filter(tested -> length_m > tested.metres() * (1 + SAME))
                .ifPresent(tested -> says.add("Outside what was flown: " + id + " was tested to "
                        + shown.text(tested) + ", here are " + shown.text(new Length(length_m)) + " of it to "
                        + tip.outlet().id() + ".")));
        return says;
    }

    /** What is to be said where a loss is used at a flow that it was not flown at. */
    private Optional<String> findFlow(String id, Optional<Basis> basis, Flow flow, String where) {
        return basis.flatMap(this::findNight)
                .flatMap(night -> Optional.ofNullable(night.flown().get(id)))
                .filter(range -> flow.cubicMetresPerSecond() > 0 && range.leaves(flow))
                .map(range -> "Outside what was flown: " + id + " was tested from " + shown.text(range.least()) + " to "
                        + shown.text(range.most()) + ", here " + shown.text(flow) + " run through it"
                        + where + ".");
    }

    private Optional<Basis> findHose(String id) {
        return Optional.ofNullable(kit.hoses().get(id)).map(HoseRecord::basis);
    }

    /** The night that a loss comes from. */
    private Optional<NightRecord> findNight(Basis basis) {
        return basis.kind() == Basis.Kind.TEST
                ? Optional.ofNullable(kit.evidence().get(basis.night()))
                : Optional.empty();
    }

    private Optional<String> findBand(AtTip tip) {
        if (!(tip.outlet().tip() instanceof Automatic automatic)) {
            return Optional.empty();
        }
        double flow = tip.state().flow().cubicMetresPerSecond();
        boolean within = flow >= automatic.from().cubicMetresPerSecond() * (1 - SAME)
                && flow <= automatic.to().cubicMetresPerSecond() * (1 + SAME);
        return within
                ? Optional.empty()
                : Optional.of("Outside its rated band: " + tip.outlet().nozzle().id() + " at "
                        + tip.outlet().id() + " holds from " + shown.text(automatic.from()) + " to "
                        + shown.text(automatic.to()) + "; here it flows "
                        + shown.text(tip.state().flow()) + " as a fixed opening.");
    }
}
