package org.hosewright.evidence.calibration;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import org.hosewright.evidence.fault.Hearing;
import org.hosewright.evidence.joint.Posterior;
import org.hosewright.evidence.joint.Survey;
import org.hosewright.hydraulics.error.InvalidInput;

/** A night with one reading fewer, or one more, than those that count: each time the readings are weighed anew. */
public final class LeavingOut {
    private final Survey survey;
    private final List<Integer> active;
    private final Optional<Weighing> weighing;

    private LeavingOut(Survey survey, List<Integer> active, Optional<Weighing> weighing) {
        this.survey = survey;
        this.active = active;
        this.weighing = weighing;
    }

    static LeavingOut of(Survey survey, Hearing hearing, Weighing weighing) {
        return new LeavingOut(survey, hearing.active(), Optional.of(weighing));
    }

    /** Of a night that gives no numbers. */
    static LeavingOut none(Survey survey) {
        return new LeavingOut(survey, List.of(), Optional.empty());
    }

    /** The ids of the readings that count. */
    public List<String> listUsed() {
        return active.stream().map(this::id).toList();
    }

    /** What is told without one of the readings that count: what a ruling that sets it aside would leave.
     *
     * @throws InvalidInput no reading that counts has that id
     */
    public Without without(String reading) {
        List<Integer> fewer = new ArrayList<>(active);
        if (!fewer.removeIf(place -> id(place).equals(reading))) {
            throw new InvalidInput("reading", reading, "one of " + String.join(", ", listUsed()), "");
        }
        Belief belief = belief(fewer, Weighing::of);
        return new Without(Terms.of(survey, belief), belief);
    }

    /** By id of each reading set aside: the belief had it been used as well. */
    Map<String, Belief> ifUsed() {
        Map<String, Belief> beliefs = new LinkedHashMap<>();
        for (int place = 0; place < survey.night().readings().size(); place++) {
            if (!active.contains(place)) {
                List<Integer> more = new ArrayList<>(active);
                more.add(place);
                more.sort(null);
                beliefs.put(id(place), belief(more, Weighing::only));
            }
        }
        return beliefs;
    }

    private String id(int place) {
        return survey.night().readings().get(place).id();
    }

    private Belief belief(List<Integer> places, BiFunction<Weighing, List<Integer>, Posterior> weigh) {
        boolean open = places.stream()
                .anyMatch(place -> !survey.night().readings().get(place).laid().shut());
        return weighing.filter(any -> open)
                .map(found -> Belief.of(survey, weigh.apply(found, places)))
                .orElseGet(() -> Belief.none(survey));
    }
}
