package org.hosewright.evidence.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.hosewright.evidence.calibration.Foresight;
import org.hosewright.evidence.night.Night;
import org.hosewright.evidence.night.Reading;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Seconds;
import org.hosewright.hydraulics.quantity.Volume;

/** From what a night is flown for and with to the readings to take. */
public final class Planning {
    /** Pressures at the tip are planned in whole steps; so near counts as the one it is meant for. */
    private static final double NEARLY = 0.05;

    private final Means means;
    private final Budget budget;
    private final Set<Question> questions;
    private final Points points;
    private final Seeking seeking;

    private Planning(Means means, Budget budget, Set<Question> questions) {
        this.means = means.withPiping();
        this.budget = budget;
        this.questions = new TreeSet<>(questions);
        check();
        this.points = Points.of(this.means);
        this.seeking = new Seeking(this.means, longest());
    }

    /** The plan of a night.
     *
     * @param questions what it is flown for; not empty
     * @throws InvalidInput hose that must not be flown, no reading within every limit, or instruments that cannot tell the flow
     */
    public static Plan of(Means means, Budget budget, Set<Question> questions, Optimality optimality) {
        return new Planning(means, budget, questions).plan(optimality);
    }

    private void check() {
        if (questions.isEmpty()) {
            throw new InvalidInput(
                    "questions of the night", "", "one or more of hose, piping, nozzle, meter, gauges", "");
        }
        if (means.pumpGauges().isEmpty()) {
            throw new InvalidInput("gauge at the pump", "", "the gauge that pump pressure is read on", "");
        }
        if (means.tipGauge().isEmpty() && means.meter().isEmpty()) {
            throw new InvalidInput(
                    "instruments of the night", "only a pump gauge", "a tip gauge, a flow meter, or both", "");
        }
    }

    /** The longest lay that can be flown at the pressure that the tip is meant for, or at all where none can. */
    private TestPoint longest() {
        double wanted_Pa =
                means.line().nozzle().rated(means.line().setting()).at().pascals();
        Comparator<TestPoint> byWorking = Comparator.comparing(
                point -> Numbers.isAtLeast(point.state().tip().pascals() * (1 + NEARLY), wanted_Pa));
        return points.all().stream()
                .filter(point -> !point.shut())
                .max(byWorking.thenComparingInt(TestPoint::lay))
                .orElseThrow(() -> new InvalidInput(
                        "test night",
                        "no reading within every limit",
                        "a shorter lay, a smaller tip, or other limits. " + String.join(" ", points.listStopped()),
                        ""));
    }

    private Plan plan(Optimality optimality) {
        List<TestPoint> all = points.all();
        Foresight foresight = foresight(all);
        List<Sought> sought = new ArrayList<>(seeking.decided(foresight));
        questions.forEach(question -> sought.addAll(seeking.asked(question, foresight)));
        Criterion criterion = optimality == Optimality.D
                ? Criterion.ofDeterminant()
                : Criterion.ofVariances(sought.stream().map(Sought::form).toList());
        Enough enough = new Enough(sought);
        Selection found = new Search(criterion, budget::allows, enough::test).found(offers(all, foresight));
        if (found.size() == 0) {
            throw new InvalidInput(
                    "time or water for the night", "less than one reading takes", "more of it, or shorter times", "");
        }
        return said(found.picks().stream().map(all::get).toList(), enough.test(found));
    }

    private Offers offers(List<TestPoint> all, Foresight foresight) {
        Costs costs = new Costs(budget.pace());
        List<Offer> offers = new ArrayList<>();
        for (int place = 0; place < all.size(); place++) {
            TestPoint point = all.get(place);
            double[][] rows = foresight.told(place);
            offers.add(new Offer(rows, point.lay(), point.shut(), costs.seconds(point), costs.water_m3(point)));
        }
        List<Double> fillings_m3 = points.lays().stream()
                .map(lay -> Costs.filling_m3(lay.get(0).line()))
                .toList();
        List<Double> layings_s =
                Collections.nCopies(fillings_m3.size(), budget.pace().relay().seconds());
        return new Offers(foresight.unknowns(), foresight.beforehand(), offers, layings_s, fillings_m3);
    }

    private Plan said(List<TestPoint> found, boolean enough) {
        Ordered ordered = Ordered.of(found, budget);
        Foresight after = foresight(ordered.points());
        Expected expected = new Expected(seeking, questions, after);
        Warnings warnings = new Warnings(means, ordered, enough);
        Costs costs = new Costs(budget.pace());
        return new Plan(
                means,
                budget,
                questions,
                ordered.points(),
                expected.list(),
                expected.listWithheld(),
                warnings.list(),
                points.listStopped(),
                warnings.listAssumed(after, budget),
                new Seconds(costs.seconds(ordered.points())),
                new Volume(costs.water_m3(ordered.points())));
    }

    private Foresight foresight(List<TestPoint> flown) {
        List<Reading> readings = new ArrayList<>();
        for (TestPoint point : flown) {
            readings.add(point.foretold(String.valueOf(readings.size() + 1), means));
        }
        return Foresight.of(new Night(readings, means.gear(), Map.of(), means.units()));
    }
}
