package org.hosewright.evidence.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hosewright.evidence.calibration.Belief;
import org.hosewright.evidence.calibration.Foresight;
import org.hosewright.evidence.calibration.Withheld;
import org.hosewright.evidence.joint.Says;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Quantity;
import org.hosewright.hydraulics.quantity.QuantityShown;

/** What a planned night should tell of each number that it is flown for.
 *
 * @param seeking the numbers
 * @param questions what the night is flown for
 * @param after the night foretold
 */
record Expected(Seeking seeking, Set<Question> questions, Foresight after) {
    /** What the night tells of, by the words that what cannot be told begins with. */
    private static final Map<String, Question> BY_WORDS = Map.of(
            "loss of", Question.HOSE,
            "piping loss of", Question.PIPING,
            "flow factor of", Question.NOZZLE,
            "factor of", Question.METER,
            "fixed error of", Question.GAUGES);

    List<Foreseen> list() {
        List<Foreseen> list = new ArrayList<>();
        Says says = new Says(seeking.means().units());
        Belief belief = after.belief();
        String where = says.text(seeking.length()) + " and " + says.text(seeking.tip()) + " at the tip";
        belief.neededPump(seeking.course(), seeking.tip()).ifPresent(needed -> {
            list.add(decided(
                    "pump pressure needed at " + where,
                    needed,
                    seeking.pumpStep().pascals()));
            belief.delivered(seeking.course(), needed.value())
                    .ifPresent(flow -> list.add(decided(
                            "flow that this pressure delivers",
                            flow,
                            seeking.flowStep().cubicMetresPerSecond())));
        });
        questions.forEach(question -> list.addAll(asked(question, belief)));
        return list;
    }

    private static Foreseen decided(String what, Known<? extends Quantity> known, double step) {
        boolean answered = QuantityShown.HALF_WIDTH * known.standardErrorSi() <= step;
        return new Foreseen(Optional.empty(), what, Optional.of(known), answered);
    }

    private List<Foreseen> asked(Question question, Belief belief) {
        List<Foreseen> list = new ArrayList<>();
        switch (question) {
            case HOSE -> {
                for (Run run : seeking.hoses()) {
                    String id = run.hose().id();
                    list.add(asked(question, "loss of " + id, belief.hose(id)));
                }
            }
            case PIPING -> {
                String id = seeking.longest().line().discharge().id();
                list.add(asked(question, "piping of " + id, belief.discharge(id)));
            }
            case NOZZLE -> {
                String tip = seeking.longest().line().tipName();
                list.add(asked(question, "flow factor of " + tip, belief.tipFactor(tip)));
            }
            case METER ->
                seeking.means()
                        .meter()
                        .ifPresent(id -> list.add(
                                asked(question, "reading of " + id + " over the true flow", belief.meter(id))));
            case GAUGES ->
                seeking.gauges().forEach(id -> list.add(asked(question, "fixed error of " + id, belief.gauge(id))));
        }
        return list;
    }

    private Foreseen asked(Question question, String what, Optional<? extends Known<? extends Quantity>> known) {
        double[][] covariance = after.covariance();
        List<Sought> sought = seeking.asked(question, after);
        boolean answered = known.isPresent() && sought.stream().allMatch(each -> each.isAnswered(covariance));
        return new Foreseen(Optional.of(question), what, known.map(found -> found), answered);
    }

    /** What the night could not tell of what it is asked. */
    List<Withheld> listWithheld() {
        return after.listWithheld().stream().filter(this::isAsked).toList();
    }

    private boolean isAsked(Withheld withheld) {
        return BY_WORDS.entrySet().stream()
                .filter(words -> withheld.what().startsWith(words.getKey()))
                .findFirst()
                .map(words -> questions.contains(words.getValue()))
                .orElse(true);
    }
}
