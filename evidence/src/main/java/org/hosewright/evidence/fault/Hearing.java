package org.hosewright.evidence.fault;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.evidence.joint.Fit;
import org.hosewright.evidence.joint.Joint;
import org.hosewright.evidence.joint.Survey;
import org.hosewright.evidence.night.Reading;
import org.hosewright.evidence.night.Ruling;

/** Finds the readings that do not go with the others, the worst first, until the rest agree.
 *
 * <p>What a person ruled stands: a reading ruled in is never set aside, one ruled out never counts.
 */
public final class Hearing {
    /** A linearised misfit below this is not worth a closer look. */
    private static final double CLOSER_LOOK = 5;

    /** A share of the night beyond which setting aside is no answer any more. */
    private static final double MOST_ASIDE = 1.0 / 3;

    private final Survey survey;
    private final List<Integer> active = new ArrayList<>();
    private final Map<Integer, Suspicion> suspicions = new LinkedHashMap<>();
    private Fit fit;

    private Hearing(Survey survey) {
        this.survey = survey;
        for (int i = 0; i < survey.night().readings().size(); i++) {
            if (ruling(i).map(Ruling::use).orElse(true)) {
                active.add(i);
            }
        }
        this.fit = fitActive(new double[survey.joint().unknowns().size()]);
    }

    /** Hears a night. */
    public static Hearing of(Survey survey) {
        Hearing hearing = new Hearing(survey);
        Optional<Suspicion> worst = hearing.findWorst();
        while (worst.isPresent()) {
            hearing.setAside(worst.get());
            worst = hearing.findWorst();
        }
        hearing.admitAgain();
        return hearing;
    }

    /** Places of the readings that count. */
    public List<Integer> active() {
        return List.copyOf(active);
    }

    /** The fit of the readings that count. */
    public Fit fit() {
        return fit;
    }

    /** True where so many readings would have to go that the night contradicts itself. */
    public boolean isHopeless() {
        int open = survey.night().readings().size();
        return suspicions.size() > 1 && suspicions.size() > MOST_ASIDE * open;
    }

    /** What speaks against a reading beside those that count; empty where nothing does. */
    public Optional<Suspicion> findSuspicion(int place) {
        if (suspicions.containsKey(place)) {
            return Optional.of(suspicions.get(place));
        }
        boolean ruled = ruling(place).isPresent();
        return ruled ? Optional.of(ask(List.of(place))).filter(this::isFounded) : Optional.empty();
    }

    /** The question about one reading, beside those that count. */
    public Inquiry inquire(int place) {
        return new Inquiry(survey.joint(), active, List.of(place), fit);
    }

    private double[] near() {
        return fit.minimum().point().unknowns();
    }

    private Optional<Ruling> ruling(int place) {
        return Optional.ofNullable(survey.night()
                .rulings()
                .get(survey.night().readings().get(place).id()));
    }

    private Fit fitActive(double[] near) {
        Joint joint = survey.joint().only(active);
        return Fit.of(joint, joint.start(near));
    }

    private Optional<Suspicion> findWorst() {
        Optional<Suspicion> worst = Optional.empty();
        for (List<Integer> group : candidates()) {
            if (!deservesLook(group)) {
                continue;
            }
            Suspicion found = ask(group);
            if (isFounded(found)
                    && worst.map(w -> w.against() < found.against()).orElse(true)) {
                worst = Optional.of(found);
            }
        }
        return worst;
    }

    private List<List<Integer>> candidates() {
        List<List<Integer>> groups = new ArrayList<>();
        for (int place : active) {
            if (ruling(place).isEmpty() && active.size() > 2) {
                groups.add(List.of(place));
            }
        }
        for (List<Integer> lay : survey.listLays()) {
            List<Integer> open = new ArrayList<>(lay);
            open.removeIf(place -> !active.contains(place) || ruling(place).isPresent() || isShut(place));
            if (open.size() > 1 && open.size() < active.size() - 1) {
                groups.add(open);
            }
        }
        return groups;
    }

    private boolean isShut(int place) {
        return survey.night().readings().get(place).laid().shut();
    }

    /** A quick look by the slopes, with the scatter that would be left. */
    private boolean deservesLook(List<Integer> group) {
        List<Integer> blocks =
                group.stream().map(place -> active.indexOf(place) + 1).toList();
        double excess = fit.minimum().excess(blocks);
        double left = Math.max(0.1, 1 - excess / fit.freedom().pump());
        return excess / left > CLOSER_LOOK;
    }

    private Suspicion ask(List<Integer> group) {
        Inquiry inquiry = new Inquiry(survey.joint(), active, group, fit);
        Possible possible =
                group.size() > 1 ? Possible.together(survey, group.get(0)) : Possible.alone(survey, group.get(0));
        return new Suspicion(group, inquiry.innocent(), inquiry.guilty(possible));
    }

    private boolean isFounded(Suspicion suspicion) {
        return suspicion.isFounded(
                suspicion.group().stream().map(survey.night().readings()::get).anyMatch(Reading::doubt));
    }

    private void setAside(Suspicion suspicion) {
        active.removeAll(suspicion.group());
        suspicion.group().forEach(place -> suspicions.put(place, suspicion));
        fit = fitActive(near());
    }

    /** Asks again about each reading set aside, beside those that are left; one that agrees with them counts again. */
    private void admitAgain() {
        Collection<Suspicion> earlier = new ArrayList<>(new java.util.LinkedHashSet<>(suspicions.values()));
        for (Suspicion suspicion : earlier) {
            Suspicion again = ask(suspicion.group());
            if (isFounded(again)) {
                suspicion.group().forEach(place -> suspicions.put(place, again));
            } else {
                suspicion.group().forEach(suspicions::remove);
                active.addAll(suspicion.group());
                active.sort(null);
                fit = fitActive(near());
            }
        }
    }
}
