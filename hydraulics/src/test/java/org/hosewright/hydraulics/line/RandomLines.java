package org.hosewright.hydraulics.line;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.hosewright.hydraulics.equipment.Appliance;
import org.hosewright.hydraulics.equipment.ApplianceLoss;
import org.hosewright.hydraulics.equipment.Automatic;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.equipment.Fog;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.equipment.Nozzle;
import org.hosewright.hydraulics.equipment.SmoothBore;
import org.hosewright.hydraulics.equipment.Tip;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.Ratio;

/** Seeded random lines: one to four hoses, rise anywhere, every kind of tip and appliance, errors and correlations. */
public final class RandomLines {
    private final Random random;

    public RandomLines(long seed) {
        this.random = new Random(seed);
    }

    public double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    public double gaussian() {
        return random.nextGaussian();
    }

    public boolean chance(double share) {
        return random.nextDouble() < share;
    }

    /** Any line. */
    public Line any() {
        return line(tip());
    }

    /** A line whose tip is no automatic one and whose appliances have no flat allowance. */
    public Line quadratic() {
        Line line = line(chance(0.5) ? smoothBore() : fog());
        List<Run> runs = line.runs().stream()
                .map(run ->
                        new Run(run.hose(), run.length(), run.rise(), run.end().map(end -> quadratic(end.id()))))
                .toList();
        return new Line(line.discharge(), runs, line.nozzle(), "");
    }

    /** Correlations between every two losses of a line, small enough to hold together. */
    public LossErrors errors(Line line) {
        Map<String, Double> correlations = new LinkedHashMap<>();
        List<String> ids =
                new ArrayList<>(LossTerm.listOf(line).stream().map(LossTerm::id).toList());
        ids.add(line.nozzle().id());
        for (int i = 0; i < ids.size(); i++) {
            for (int j = 0; j < i; j++) {
                correlations.put(ids.get(j) + "/" + ids.get(i), between(-0.9, 0.9) / ids.size());
            }
        }
        return new LossErrors(correlations);
    }

    private Line line(Tip tip) {
        List<Run> runs = new ArrayList<>();
        int count = 1 + random.nextInt(4);
        for (int i = 0; i < count; i++) {
            double c = Math.exp(between(Math.log(0.08), Math.log(24)));
            Hose hose = new Hose(
                    "hose-" + i,
                    Length.ofInches(2),
                    Length.ofFeet(50),
                    Known.of(HoseLoss.ofUs(c), HoseLoss.ofUs(c * between(0.005, 0.1))),
                    Optional.of(Pressure.ofPsi(between(200, 400))));
            Optional<Appliance> end = chance(0.3) ? Optional.of(appliance("appliance-" + i)) : Optional.empty();
            runs.add(new Run(hose, Length.ofFeet(between(10, 600)), Length.ofFeet(between(-60, 60)), end));
        }
        double k = between(0, 5);
        Discharge discharge = new Discharge(
                "out",
                Optional.empty(),
                chance(0.1)
                        ? Optional.empty()
                        : Optional.of(Known.of(PointLoss.ofUs(k), PointLoss.ofUs(between(0.05, 1)))));
        Optional<Known<Ratio>> flow =
                chance(0.5) ? Optional.of(Known.of(new Ratio(between(0.9, 1.1)), new Ratio(0.01))) : Optional.empty();
        return new Line(discharge, runs, new Nozzle("tip", Map.of("", tip), Optional.empty(), flow), "");
    }

    private Tip tip() {
        double which = random.nextDouble();
        return which < 0.35 ? smoothBore() : which < 0.6 ? fog() : automatic();
    }

    private Tip smoothBore() {
        return new SmoothBore(Length.ofInches(between(0.5, 1.5)), Pressure.ofPsi(between(40, 80)));
    }

    private Tip fog() {
        return new Fog(Flow.ofGpm(between(60, 350)), Pressure.ofPsi(between(50, 100)));
    }

    private Tip automatic() {
        double from = between(40, 150);
        return new Automatic(Pressure.ofPsi(between(70, 110)), Flow.ofGpm(from), Flow.ofGpm(from * between(1.3, 4)));
    }

    private Appliance appliance(String id) {
        if (chance(0.5)) {
            return quadratic(id);
        }
        ApplianceLoss rule =
                new ApplianceLoss.Rule(Pressure.ofPsi(between(5, 25)), Flow.ofGpm(chance(0.1) ? 0 : between(50, 400)));
        return new Appliance(id, rule, Appliance.Per.TOTAL, Optional.empty());
    }

    private Appliance quadratic(String id) {
        PointLoss loss = PointLoss.ofUs(between(0, 2));
        Known<PointLoss> known = chance(0.5) ? Known.of(loss) : Known.of(loss, PointLoss.ofUs(between(0.01, 0.3)));
        return new Appliance(id, new ApplianceLoss.Quadratic(known), Appliance.Per.LEG, Optional.empty());
    }
}
