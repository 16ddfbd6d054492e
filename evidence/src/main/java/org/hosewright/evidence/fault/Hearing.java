package org.hosewright.evidence.fault;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.evidence.joint.Fit;
import org.hosewright.evidence.joint.Survey;
import org.hosewright.evidence.night.Ruling;

/** Finds the readings that do not go with the others, the worst first, until the rest agree.
 *
 * <p>What a person ruled stands: a reading ruled in is never set aside, one ruled out never counts.
 */
public final class Hearing {
    /** A share of the night beyond which setting aside is no answer any more. */
    private static final double MOST_ASIDE = 1.0 / 3;

    private final Survey survey;
    private final Map<Integer, Suspicion> suspicions = new LinkedHashMap<>();
    private final Standing whole;
    private Standing standing;
    private Optional<Drift> drift = Optional.empty();

    private final boolean inPairs;

    private Hearing(Survey survey, boolean inPairs) {
        this.survey = survey;
        this.inPairs = inPairs;
        List<Integer> active = new ArrayList<>();
        for (int i = 0; i < survey.night().readings().size(); i++) {
            if (ruling(i).map(Ruling::use).orElse(true)) {
                active.add(i);
            }
        }
        this.whole =
                Standing.of(survey, active, new double[survey.joint().unknowns().size()]);
        this.standing = whole;
    }

    /** Hears a night. Where looking for pairs that hide each other would leave too little of it, it is heard without. */
    public static Hearing of(Survey survey) {
        Hearing hearing = hear(new Hearing(survey, true));
        return hearing.isHopeless() ? hear(new Hearing(survey, false)) : hearing;
    }

    private static Hearing hear(Hearing hearing) {
        List<Suspicion> worst = hearing.listWorst();
        while (!worst.isEmpty()) {
            hearing.setAside(worst);
            worst = hearing.listWorst();
        }
        hearing.admitAgain();
        hearing.weighDrift();
        return hearing;
    }

    /** Places of the readings that count. */
    public List<Integer> active() {
        return standing.active();
    }

    /** The fit of the readings that count. */
    public Fit fit() {
        return standing.fit();
    }

    /** True where so many readings would have to go that the night contradicts itself. */
    public boolean isHopeless() {
        int open = survey.night().readings().size();
        return suspicions.size() > 1 && suspicions.size() > MOST_ASIDE * open;
    }

    /** What took readings out of the count, each group once; what a person ruled out is not among it. */
    public List<Suspicion> listSetAside() {
        return List.copyOf(new LinkedHashSet<>(suspicions.values()));
    }

    /** What speaks against a reading beside those that count; empty where nothing does. */
    public Optional<Suspicion> findSuspicion(int place) {
        if (suspicions.containsKey(place)) {
            return Optional.of(suspicions.get(place));
        }
        boolean ruled = ruling(place).isPresent();
        return ruled ? Optional.of(standing.ask(List.of(place))).filter(standing::isFounded) : Optional.empty();
    }

    /** The instrument that went off steadily through the readings that count; empty where none did. */
    public Optional<Drift> findDrift() {
        return drift;
    }

    /** The question about one reading, beside those that count. */
    public Inquiry inquire(int place) {
        return new Inquiry(survey.joint(), active(), List.of(place), fit());
    }

    private Optional<Ruling> ruling(int place) {
        return Optional.ofNullable(survey.night()
                .rulings()
                .get(survey.night().readings().get(place).id()));
    }

    /** One drift may explain what took several readings to be set aside; then they count again, and the drift is named. */
    private void weighDrift() {
        double asunder = new LinkedHashSet<>(suspicions.values())
                .stream().mapToDouble(Suspicion::against).sum();
        Optional<Drift> instead = suspicions.isEmpty() ? Optional.empty() : Drift.find(whole);
        if (instead.isPresent() && instead.get().favour() > asunder) {
            suspicions.clear();
            standing = whole;
            drift = instead;
        } else {
            drift = Drift.find(standing);
        }
    }

    /** The group that most speaks against; where none does by itself, two that hide each other. */
    private List<Suspicion> listWorst() {
        Optional<Suspicion> worst = Optional.empty();
        List<List<Integer>> candidates = candidates();
        for (List<Integer> group : candidates) {
            if (!standing.deservesLook(group)) {
                continue;
            }
            Suspicion found = standing.ask(group);
            if (standing.isFounded(found)
                    && worst.map(w -> w.against() < found.against()).orElse(true)) {
                worst = Optional.of(found);
            }
        }
        if (worst.isEmpty() && inPairs) {
            return new Masking(standing).find(candidates, 0);
        }
        return worst.map(this::parted).orElse(List.of());
    }

    /** A lay under suspicion may be sound but for two of its readings; the likelier story counts. */
    private List<Suspicion> parted(Suspicion worst) {
        if (worst.group().size() < 3 || !inPairs) {
            return List.of(worst);
        }
        List<List<Integer>> single = worst.group().stream().map(List::of).toList();
        List<Suspicion> two = new Masking(standing).find(single, worst.against());
        return two.isEmpty() ? List.of(worst) : two;
    }

    private List<List<Integer>> candidates() {
        List<List<Integer>> groups = new ArrayList<>();
        for (int place : active()) {
            if (ruling(place).isEmpty() && active().size() > 2) {
                groups.add(List.of(place));
            }
        }
        for (List<Integer> lay : survey.listLays()) {
            List<Integer> open = new ArrayList<>(lay);
            open.removeIf(place -> !active().contains(place) || ruling(place).isPresent() || isShut(place));
            if (open.size() > 1 && open.size() < active().size() - 1) {
                groups.add(open);
            }
        }
        return groups;
    }

    private boolean isShut(int place) {
        return survey.night().readings().get(place).laid().shut();
    }

    private void setAside(List<Suspicion> worst) {
        List<Integer> left = new ArrayList<>(active());
        for (Suspicion suspicion : worst) {
            left.removeAll(suspicion.group());
            suspicion.group().forEach(place -> suspicions.put(place, suspicion));
        }
        standing = standing.with(left);
    }

    /** Asks again about each reading set aside, beside those that are left; one that agrees with them counts again. */
    private void admitAgain() {
        for (Suspicion suspicion : new ArrayList<>(new LinkedHashSet<>(suspicions.values()))) {
            Suspicion again = standing.ask(suspicion.group());
            if (standing.isFounded(again)) {
                suspicion.group().forEach(place -> suspicions.put(place, again));
            } else {
                List<Integer> more = new ArrayList<>(active());
                more.addAll(suspicion.group());
                more.sort(null);
                suspicion.group().forEach(suspicions::remove);
                standing = standing.with(more);
            }
        }
    }
}
