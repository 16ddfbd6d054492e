package org.hosewright.ledger.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.hydraulics.lay.LayState.AtTip;
import org.hosewright.hydraulics.lay.PumpMode;
import org.hosewright.hydraulics.lay.SecondLine;
import org.hosewright.hydraulics.limit.Bounds;
import org.hosewright.hydraulics.limit.Crew;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Force;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.kit.Kit;

/** What a line does to those that hang together with it when it opens or shuts, in sentences. */
final class SecondLineWords {
    private final Kit kit;
    private final Laid laid;
    private final Bounds bounds;
    private final QuantityShown shown;

    SecondLineWords(Kit kit, Laid laid, Bounds bounds) {
        this.kit = kit;
        this.laid = laid;
        this.bounds = bounds;
        this.shown = QuantityShown.of(kit.units());
    }

    /** One sentence for each nozzle that opens, or shuts and leaves another one open. */
    List<String> says(List<SecondLine> second) {
        return second.stream()
                .filter(one -> !one.tips().isEmpty())
                .map(this::says)
                .toList();
    }

    private String says(SecondLine one) {
        List<String> gets = new ArrayList<>();
        one.tips().forEach(tip -> gets.add(gets(tip)));
        return "If " + one.turned() + (one.opens() ? " opens" : " shuts") + " with the pump left at " + pump(one) + ": "
                + String.join("; ", gets) + supply(one) + ".";
    }

    private String pump(SecondLine one) {
        String pressure = shown.text(one.lay().pump());
        return laid.lay().pump() instanceof PumpMode.FixedSpeed ? "its speed, which gives " + pressure : pressure;
    }

    private String gets(AtTip tip) {
        Force reaction = tip.state().reaction();
        return tip.outlet().id() + " gets " + shown.text(tip.state().flow()) + " at "
                + shown.text(tip.state().tip()) + ", reaction " + shown.text(reaction)
                + findCrew(tip, reaction)
                        .map(crew -> ", above the company's figure for a crew of " + crew.people() + " ("
                                + shown.text(crew.figure()) + ")")
                        .orElse("");
    }

    /** The crew whose figure is exceeded: the one at the nozzle; where none is stated, the largest that is. */
    private Optional<Crew> findCrew(AtTip tip, Force reaction) {
        Optional<Crew> own = tip.outlet().crew();
        if (own.isPresent()) {
            return own.filter(crew -> crew.figure().newtons() < reaction.newtons());
        }
        Optional<Crew> most = Optional.empty();
        for (Map.Entry<Integer, Force> entry : kit.crewReaction().entrySet()) {
            Crew crew = new Crew(entry.getKey(), entry.getValue());
            boolean exceeded = crew.figure().newtons() < reaction.newtons();
            if (exceeded && (most.isEmpty() || most.get().people() < crew.people())) {
                most = Optional.of(crew);
            }
        }
        return most;
    }

    private String supply(SecondLine one) {
        Flow flow = one.lay().flow();
        return bounds.supply()
                .filter(most -> most.cubicMetresPerSecond() < flow.cubicMetresPerSecond())
                .map(most -> "; together " + shown.text(flow) + ", more than the " + shown.text(most)
                        + " that the supply gives")
                .orElse("");
    }
}
