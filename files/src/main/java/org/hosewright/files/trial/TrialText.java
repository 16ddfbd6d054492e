package org.hosewright.files.trial;

import java.util.LinkedHashMap;
import java.util.Map;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Quantity;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.canonical.CanonicalJson;
import org.hosewright.ledger.trial.KeptTrial;
import org.hosewright.ledger.trial.Opened;
import org.hosewright.ledger.trial.Taken;
import org.hosewright.ledger.trial.TrialPlan;
import org.hosewright.ledger.trial.TrialReading;
import org.hosewright.ledger.trial.TrialTask;

/** A blind trial as text: canonical JSON (RFC 8785), each quantity with its unit. The key is not in it until it is opened. */
public final class TrialText {
    static final int FORMAT = 1;

    private final UnitSystem units;

    private TrialText(UnitSystem units) {
        this.units = units;
    }

    /** The text of a trial.
     *
     * @param units that its quantities are written in
     */
    public static String write(KeptTrial trial, UnitSystem units) {
        return CanonicalJson.text(new TrialText(units).tree(trial));
    }

    /** The trial that a text holds.
     *
     * @throws org.hosewright.hydraulics.error.InvalidInput it is not a trial of this edition, and where it is not
     */
    public static KeptTrial read(String text) {
        return TrialReader.of(text);
    }

    private Map<String, Object> tree(KeptTrial trial) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("format", FORMAT);
        plan(tree, trial.plan());
        tree.put(
                "stages",
                trial.stages().stream().map(order -> Map.of("order", order)).toList());
        tree.put("readings", trial.readings().stream().map(this::reading).toList());
        tree.put(
                "shown",
                trial.shown().stream()
                        .map(shown ->
                                Map.of("who", shown.who(), "at", shown.at().toString()))
                        .toList());
        trial.opened().ifPresent(open -> tree.put("opened", opened(open)));
        return tree;
    }

    private void plan(Map<String, Object> tree, TrialPlan plan) {
        TrialTask task = plan.task();
        tree.put("name", plan.name());
        tree.put("kinds", plan.kinds());
        tree.put("holders", plan.holders());
        tree.put("measure", task.measure().word());
        tree.put("held", exact(task.held()));
        tree.put("over", exact(task.over()));
        tree.put("longest", exact(task.longest()));
        tree.put("matters", exact(task.matters()));
        tree.put("scatter", exact(task.scatter()));
        tree.put("step", exact(task.step()));
        tree.put("relays", plan.relays());
    }

    private Map<String, Object> reading(TrialReading reading) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("lay", reading.lay());
        if (reading.taken() instanceof Taken.Drop drop) {
            tree.put("pump", exact(drop.pump()));
            tree.put("tip", exact(drop.tip()));
        } else if (reading.taken() instanceof Taken.Through through) {
            tree.put("flow", exact(through.flow()));
        }
        tree.put("who", reading.who());
        tree.put("at", reading.at().toString());
        if (reading.late()) {
            tree.put("late", true);
        }
        reading.aside().ifPresent(aside -> tree.put("aside", Map.of("who", aside.who(), "why", aside.why())));
        return tree;
    }

    private static Map<String, Object> opened(Opened open) {
        return Map.of(
                "who",
                open.who(),
                "at",
                open.at().toString(),
                "why",
                open.why(),
                "key",
                TrialKeyText.tree(open.kinds()));
    }

    private String exact(Quantity quantity) {
        QuantityShown shown = QuantityShown.of(units);
        if (quantity instanceof Length length) {
            return shown.file(length, units.length());
        }
        return shown.file(quantity, quantity instanceof Flow ? units.flow() : units.pressure());
    }
}
