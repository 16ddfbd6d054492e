package org.hosewright.ledger.practice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.order.OrderInFull;
import org.hosewright.ledger.order.OrderSet;
import org.hosewright.ledger.order.OrderedLine;
import org.hosewright.ledger.order.OrderedPressure;

/** A practice sheet that is kept: its questions; the answers stand in the order that it was made from.
 *
 * @param engine id of the engine
 * @param order number of the order
 * @param problems in the order they are asked
 */
public record KeptPractice(String engine, long order, List<Problem> problems) {
    /** A sheet of more questions is no practice at the rig. */
    private static final int MOST_PROBLEMS = 40;

    /** Floors asked for, one problem after the other; fewer where the line does not bear them. */
    private static final List<Integer> FLOORS = List.of(0, 2, 1, 0, 3);

    public KeptPractice {
        problems = List.copyOf(problems);
        if (problems.isEmpty() || problems.size() > MOST_PROBLEMS) {
            throw new InvalidInput(
                    "problems of a practice sheet", Integer.toString(problems.size()), "1 to " + MOST_PROBLEMS, "");
        }
    }

    /** A sheet of problems spread evenly over an engine's ordered pressures, its lines in turn.
     *
     * @param count how many; fewer where the order has fewer
     * @throws InvalidInput the order has no pressure for the engine that stands
     */
    public static KeptPractice of(OrderSet set, long order, String engine, int count) {
        List<Problem> all = level(set.linesOf(engine));
        int taken = Math.min(Math.max(count, 0), all.size());
        List<Problem> problems = new ArrayList<>();
        for (int i = 0; i < taken; i++) {
            Problem level = all.get((int) ((long) i * all.size() / taken));
            problems.add(raised(set, level, FLOORS.get(i % FLOORS.size())));
        }
        return new KeptPractice(engine, order, problems);
    }

    /** Each pressure that stands, the first length of every line before the second of any. */
    private static List<Problem> level(List<OrderedLine> lines) {
        int longest =
                lines.stream().mapToInt(line -> line.pressures().size()).max().orElse(0);
        List<Problem> all = new ArrayList<>();
        for (int place = 0; place < longest; place++) {
            for (OrderedLine line : lines) {
                if (place < line.pressures().size()
                        && line.pressures().get(place).stands()) {
                    all.add(new Problem(
                            line.hosePackage(), line.pressures().get(place).length(), 0));
                }
            }
        }
        return all;
    }

    private static Problem raised(OrderSet set, Problem level, int floors) {
        for (int up = floors; up > 0; up--) {
            var raised = new Problem(level.hosePackage(), level.length(), up);
            if (Answer.find(set, raised).isPresent()) {
                return raised;
            }
        }
        return level;
    }

    /** Why problems' answers no longer hold: by place from 0, each reason as a sentence; those that hold are not in it.
     *
     * @param then what it was made from
     * @param now what is in force, if anything
     */
    public Map<Integer, List<String>> stale(OrderSet then, Optional<OrderInFull> now) {
        Map<Integer, List<String>> stale = new LinkedHashMap<>();
        for (int place = 0; place < problems.size(); place++) {
            Problem problem = problems.get(place);
            List<String> why = now.map(inForce -> why(problem, then, inForce)).orElse(List.of("No order is in force."));
            if (!why.isEmpty()) {
                stale.put(place, why);
            }
        }
        return stale;
    }

    private List<String> why(Problem problem, OrderSet then, OrderInFull now) {
        Set<String> why = new LinkedHashSet<>(now.stale().why(problem.hosePackage()));
        long number = now.revision().number();
        if (number != order && !said(then, problem).equals(said(now.set(), problem))) {
            why.add("Order " + number + " answers otherwise than order " + order + " did.");
        }
        return List.copyOf(why);
    }

    /** All that the answer sheet says to a problem. */
    private static Optional<List<Object>> said(OrderSet set, Problem problem) {
        return Answer.find(set, problem).map(KeptPractice::said);
    }

    private static List<Object> said(Answer answer) {
        OrderedPressure level = answer.level();
        return List.of(
                answer.figure(),
                level.figure(),
                level.flow(),
                level.tip(),
                answer.line().gauge());
    }
}
