package org.hosewright.ledger.drill;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import org.hosewright.evidence.calibration.Belief;
import org.hosewright.evidence.calibration.Calibration;
import org.hosewright.evidence.calibration.Course;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.equipment.Tip;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Force;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.line.KitLines;
import org.hosewright.ledger.line.NightEngines;

/** What each length flown needs, and what the rule and the book would have delivered there, level. */
final class Deliveries {
    private static final Length LEVEL = new Length(0);

    private final Kit kit;
    private final NightEngines engines;
    private final Calibration night;
    private final List<String> assumed = new ArrayList<>();

    Deliveries(Kit kit, NightEngines engines, Calibration night) {
        this.engines = engines;
        this.kit = kit;
        this.night = night;
    }

    List<NeededRow> needed(List<TestedLine> lines) {
        List<NeededRow> rows = new ArrayList<>();
        for (TestedLine line : lines) {
            for (List<Stretch> chain : line.chains()) {
                needed(night.belief(), line, chain)
                        .ifPresent(pump ->
                                rows.add(new NeededRow(line, TestedLines.length(chain), pump, ifUsed(line, chain))));
            }
        }
        return rows;
    }

    /** What the lines need by another belief than the night's. */
    List<NeededRow> needed(Belief belief, List<TestedLine> lines) {
        List<NeededRow> rows = new ArrayList<>();
        for (TestedLine line : lines) {
            for (List<Stretch> chain : line.chains()) {
                needed(belief, line, chain)
                        .ifPresent(pump -> rows.add(new NeededRow(line, TestedLines.length(chain), pump, Map.of())));
            }
        }
        return rows;
    }

    List<RuleRow> rule(List<TestedLine> lines) {
        return kit.rule()
                .map(rule -> rows(lines, (line, chain) -> rule.pumpFor(TestedLines.length(chain))))
                .orElse(List.of());
    }

    List<RuleRow> book(List<TestedLine> lines) {
        return rows(lines, this::bookPump);
    }

    List<String> assumed() {
        return assumed;
    }

    /** The tip pressure that a line is meant for. */
    private Pressure wanted(TestedLine line) {
        return KitLines.nozzle(kit, line.nozzle(), line.setting())
                .rated(line.setting())
                .at();
    }

    private Optional<Known<Pressure>> needed(Belief belief, TestedLine line, List<Stretch> chain) {
        return belief.neededPump(course(line, chain), wanted(line));
    }

    private Map<String, Known<Pressure>> ifUsed(TestedLine line, List<Stretch> chain) {
        Map<String, Known<Pressure>> byReading = new LinkedHashMap<>();
        night.ifUsed()
                .forEach((reading, belief) ->
                        needed(belief, line, chain).ifPresent(pump -> byReading.put(reading, pump)));
        return byReading;
    }

    private List<RuleRow> rows(List<TestedLine> lines, BiFunction<TestedLine, List<Stretch>, Pressure> rule) {
        List<RuleRow> rows = new ArrayList<>();
        for (TestedLine line : lines) {
            for (List<Stretch> chain : line.chains()) {
                row(line, chain, rule.apply(line, chain)).ifPresent(rows::add);
            }
        }
        return rows;
    }

    private Optional<RuleRow> row(TestedLine line, List<Stretch> chain, Pressure pump) {
        Course course = course(line, chain);
        Optional<Known<Flow>> flow = night.belief().delivered(course, pump);
        Optional<Known<Pressure>> tip = night.belief().tip(course, pump);
        Optional<Known<Force>> reaction = night.belief().reaction(course, pump);
        Optional<Known<Pressure>> needed = needed(night.belief(), line, chain);
        if (flow.isEmpty() || tip.isEmpty() || reaction.isEmpty() || needed.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new RuleRow(
                line,
                TestedLines.length(chain),
                pump,
                flow.get(),
                tip.get().value(),
                reaction.get().value(),
                needed.get()));
    }

    /** What the kit's own numbers would have pumped: tip, hose and, where known, piping. */
    private Pressure bookPump(TestedLine line, List<Stretch> chain) {
        Tip tip = KitLines.nozzle(kit, line.nozzle(), line.setting()).tip(line.setting());
        Flow flow = tip.flowAt();
        double pump_Pa = tip.at().pascals() + pipingLoss(line, flow);
        for (Stretch part : chain) {
            pump_Pa += KitLines.hose(kit, part.hose())
                    .loss()
                    .value()
                    .over(part.length(), flow)
                    .pascals();
        }
        return new Pressure(pump_Pa);
    }

    private double pipingLoss(TestedLine line, Flow flow) {
        return engines.find(kit, line.discharge())
                .map(record -> record.engine().getDischarge(line.discharge()))
                .map(discharge -> discharge.lossOrNone().at(flow).pascals())
                .orElse(0.0);
    }

    private static Course course(TestedLine line, List<Stretch> chain) {
        return new Course(chain, line.discharge(), LEVEL, line.nozzle(), line.setting());
    }
}
