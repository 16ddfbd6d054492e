package org.hosewright.ledger.card;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hosewright.hydraulics.limit.Bounds;
import org.hosewright.hydraulics.limit.LineLimits;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.line.LossErrors;
import org.hosewright.hydraulics.order.OrderedCheck;
import org.hosewright.hydraulics.order.Ordering;
import org.hosewright.hydraulics.order.Rounding;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.reach.Reach;
import org.hosewright.hydraulics.reach.ReachResult;
import org.hosewright.ledger.kit.EngineRecord;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.kit.HoseRecord;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.kit.NightRecord;
import org.hosewright.ledger.line.InWords;
import org.hosewright.ledger.line.KitBounds;
import org.hosewright.ledger.line.KitErrors;
import org.hosewright.ledger.line.KitLines;

/** One package on its way to a card. */
final class CardMaking {
    /** More lengths than this do not fit a panel card; then only every second or third is shown. */
    private static final int MOST_LENGTHS = 12;

    private static final Length LEVEL = new Length(0);

    private final Kit kit;
    private final HosePackage named;
    private final Line line;
    private final PanelGauge gauge;
    private final Ordering ordering;
    private final ReachResult reach;
    private final Length longest;

    private CardMaking(Kit kit, EngineRecord engine, HosePackage named, Bounds bounds, Rounding rounding) {
        this.kit = kit;
        this.named = named;
        this.line = KitLines.of(kit, named, LEVEL);
        this.gauge = PanelGauge.of(kit, engine);
        LossErrors errors = KitErrors.of(kit);
        this.ordering = new Ordering(errors, bounds, rounding, gauge.sight());
        this.reach = Reach.longest(line, errors, bounds);
        this.longest = kit.lessReserve(reach.longestSafe(), line.last().hose().section());
    }

    static CardMaking of(Kit kit, EngineRecord engine, HosePackage named, LocalDate today, Rounding rounding) {
        return new CardMaking(kit, engine, named, KitBounds.of(kit, named, Optional.of(today)), rounding);
    }

    CardLine line() {
        QuantityShown shown = QuantityShown.of(kit.units());
        List<CardEntry> entries = entries();
        return new CardLine(
                named,
                InWords.hose(kit, named.hose()),
                InWords.nozzle(kit, named.nozzle(), named.setting()),
                gauge.says(shown),
                InWords.evidence(kit, named),
                entries,
                CardAnalysis.floorAdder(kit.units()),
                mostGauge(entries.get(entries.size() - 1)),
                CardAnalysis.floor(kit.units()),
                longest,
                reach.stoppedBy(),
                cautions(entries));
    }

    List<String> assumed() {
        List<String> assumed = new ArrayList<>(reach.assumed());
        if (kit.reserve().isEmpty()) {
            assumed.add("No reserve of hose is set: cards go to the whole of the longest safe stretch.");
        }
        if (gauge.name().isEmpty()) {
            assumed.add("No panel gauge is named for " + named.engine()
                    + ": pressures are for a gauge before the discharge piping that reads true.");
        }
        return assumed;
    }

    private List<CardEntry> entries() {
        List<CardEntry> entries = new ArrayList<>();
        double section_m = line.last().hose().section().metres();
        double own_m = line.last().length().metres();
        int more = (int) Math.floor((longest.metres() - line.length().metres()) / section_m + 1e-9);
        int step = Math.max(1, (int) Math.ceil((more + 1) / (double) MOST_LENGTHS));
        for (int sections = 0; sections <= Math.max(0, more); sections += step) {
            entries.add(entry(line.withLastLength(new Length(own_m + sections * section_m))));
        }
        return entries;
    }

    private CardEntry entry(Line longer) {
        OrderedCheck check = ordering.forDuty(longer);
        return new CardEntry(
                longer.length(),
                longer.sections(),
                check.figure(),
                tested(longer, check.state().flow()),
                check,
                check.passed() ? Optional.of(check.figure()) : check.wouldDo(),
                check.refusal());
    }

    /** True where every hose of the line was flown on a night at least as long as the whole line, and at its flow. */
    private boolean tested(Line longer, Flow flow) {
        return named.hose().stream().allMatch(part -> {
            HoseRecord hose = KitLines.get(kit.hoses(), part.hose(), "hose");
            NightRecord night = kit.evidence().get(hose.basis().night());
            return night != null
                    && night.tested().isPresent()
                    && night.tested().get().metres() >= longer.length().metres() * (1 - 1e-9)
                    && Optional.ofNullable(night.flown().get(part.hose()))
                            .filter(range -> range.leaves(flow))
                            .isEmpty();
        });
    }

    /** The figure at which the first limit of pressure would be met, floors or not, rounded down to a step. */
    private Optional<Pressure> mostGauge(CardEntry last) {
        LineState state = last.check().state();
        Line longer = line.withLastLength(new Length(last.length().metres()
                - line.length().metres()
                + line.last().length().metres()));
        double step_Pa = ordering.rounding().step().pascals();
        return LineLimits.of(longer, state, ordering.bounds()).stream()
                .filter(limit -> limit.at() instanceof Pressure)
                .map(limit -> LineLimits.findMostPump(limit, state, ordering.bounds()))
                .flatMap(Optional::stream)
                .min(Comparator.comparingDouble(Pressure::pascals))
                .map(pump -> gauge.sight().reads(state.withPump(pump)).pascals())
                .map(shown_Pa -> new Pressure(Math.floor(shown_Pa / step_Pa + 1e-9) * step_Pa));
    }

    private List<String> cautions(List<CardEntry> entries) {
        Set<String> cautions = new LinkedHashSet<>();
        InWords.unknownPiping(line.discharge()).ifPresent(cautions::add);
        if (longest.metres() < line.length().metres() * (1 - 1e-9)) {
            cautions.add("The package as it lies on the rig is longer than what is safe, less the reserve: stopped by "
                    + reach.stoppedBy() + ".");
        }
        // The longest line is pumped highest: what is to be kept in mind there covers the shorter ones.
        cautions.addAll(entries.get(entries.size() - 1).check().cautions());
        if (entries.stream().anyMatch(entry -> !entry.tested())) {
            cautions.add("Lengths marked untested lie beyond what a test night flew, in length or in flow.");
        }
        cautions.add("As laid at the test: straight, no kinks. A kink or a part-shut gate takes more.");
        return List.copyOf(cautions);
    }
}
