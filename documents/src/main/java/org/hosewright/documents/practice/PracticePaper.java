package org.hosewright.documents.practice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.hosewright.documents.part.Figures;
import org.hosewright.documents.part.Parts;
import org.hosewright.documents.part.Table;
import org.hosewright.documents.press.Html;
import org.hosewright.documents.press.Sheet;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.line.InWords;
import org.hosewright.ledger.order.OrderInFull;
import org.hosewright.ledger.practice.Answer;
import org.hosewright.ledger.practice.KeptPractice;
import org.hosewright.ledger.practice.Problem;

/** A sheet of questions for a driver, and behind it the sheet of answers for who asks. */
public final class PracticePaper {
    private static final String BLANK = "\u00a0";

    private final KeptPractice practice;
    private final OrderInFull order;
    private final Map<Integer, List<String>> stale;
    private final Figures figures;

    private PracticePaper(KeptPractice practice, OrderInFull order, Map<Integer, List<String>> stale) {
        this.practice = practice;
        this.order = order;
        this.stale = Map.copyOf(stale);
        this.figures = new Figures(order.set().units());
    }

    /** Questions and answers as one sheet.
     *
     * @param order that the practice was made from
     * @param stale why answers no longer hold, by place from 0
     */
    public static Sheet sheet(KeptPractice practice, OrderInFull order, Map<Integer, List<String>> stale, Stamp stamp) {
        return new PracticePaper(practice, order, stale).sheet(stamp);
    }

    private Sheet sheet(Stamp stamp) {
        String engine = Figures.sentence(Figures.name(practice.engine()));
        String title = "Practice at the pump, " + engine;
        List<Html> body = new ArrayList<>();
        body.add(Parts.runningHead(stamp, order.kit().company(), order.name()));
        body.add(Parts.stamp(stamp));
        body.add(Html.tag("h1", engine + ": what must the gauge show?"));
        body.add(Html.tag(
                        "p",
                        order.kit().company() + ", " + order.name()
                                + ". Write the figure for each line; whoever asks has the answers.")
                .in("subject"));
        body.add(questions());
        body.add(Html.tag("h1", "Answers, for who asks").in("answers"));
        body.add(answers());
        body.add(Html.tag("p", Parts.OVERRULED));
        return Sheet.report(title + ", " + order.kit().company(), figures.paper(), stamp, body);
    }

    private Html questions() {
        Table table = new Table()
                .figures("no.")
                .words("line")
                .figures("length")
                .words("nozzle is")
                .words("gauge, " + figures.units().pressure().symbol());
        for (int place = 0; place < practice.problems().size(); place++) {
            Problem problem = practice.problems().get(place);
            table.row(
                    Integer.toString(place + 1),
                    line(problem),
                    figures.text(problem.length()),
                    where(problem.floors()),
                    BLANK);
        }
        return table.html();
    }

    private String line(Problem problem) {
        HosePackage named = order.kit().packages().get(problem.hosePackage());
        return named == null
                ? problem.hosePackage()
                : Figures.sentence(Figures.name(named.discharge())) + ": " + InWords.hose(order.kit(), named.hose())
                        + ", " + InWords.nozzle(order.kit(), named.nozzle(), named.setting());
    }

    private static String where(int floors) {
        return switch (floors) {
            case 0 -> "level with the pump";
            case 1 -> "1 floor up";
            default -> floors + " floors up";
        };
    }

    private Html answers() {
        Table table = new Table()
                .figures("no.")
                .figures("gauge")
                .words("how")
                .words("read on")
                .words("gives on level ground");
        for (int place = 0; place < practice.problems().size(); place++) {
            answer(table, place);
        }
        return Html.all(List.of(table.html(), Parts.list(reasons())));
    }

    private void answer(Table table, int place) {
        String number = Integer.toString(place + 1);
        if (stale.containsKey(place)) {
            table.row(number, "stale", "", "", "");
            return;
        }
        Problem problem = practice.problems().get(place);
        Answer.find(order.set(), problem)
                .ifPresent(answer -> table.row(
                        number,
                        figures.text(answer.figure()),
                        how(problem, answer),
                        answer.line().gauge(),
                        gives(answer)));
    }

    /** Why problems are stale, each reason once with the numbers that it is for. */
    private List<String> reasons() {
        Map<String, List<String>> reasons = new LinkedHashMap<>();
        new TreeMap<>(stale)
                .forEach((place, why) -> reasons.computeIfAbsent(String.join(" ", why), same -> new ArrayList<>())
                        .add(Integer.toString(place + 1)));
        return reasons.entrySet().stream()
                .map(entry -> stale(entry.getValue()) + " " + entry.getKey())
                .toList();
    }

    private static String stale(List<String> numbers) {
        return numbers.size() == 1
                ? "Problem " + numbers.get(0) + " is stale."
                : "Problems " + String.join(", ", numbers) + " are stale.";
    }

    private String how(Problem problem, Answer answer) {
        String level = "ordered " + figures.text(answer.level().figure());
        return problem.floors() == 0
                ? level
                : level + " and " + problem.floors() + " \u00d7 "
                        + figures.text(answer.line().floorAdder());
    }

    private String gives(Answer answer) {
        return figures.text(answer.level().flow()) + ", tip "
                + figures.text(answer.level().tip());
    }
}
