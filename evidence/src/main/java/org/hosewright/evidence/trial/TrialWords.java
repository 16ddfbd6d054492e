package org.hosewright.evidence.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.hosewright.evidence.trial.Comparison.Verdict;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.UnitSystem;

/** A trial's result as sentences that people say.
 *
 * @param units the company's units
 * @param names what each label is called: its kind once the labels are opened, the label itself until then
 */
public record TrialWords(UnitSystem units, Map<String, String> names) {
    private static final List<String> COUNTS = List.of(
            "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve");

    public TrialWords {
        names = Map.copyOf(names);
    }

    /** One sentence for each pair, then what is missing. */
    public List<String> list(TrialResult result) {
        List<String> sentences = new ArrayList<>();
        result.pairs().forEach(pair -> sentences.add(says(result.stake(), pair)));
        result.missing()
                .forEach(
                        label -> sentences.add(
                                "Of " + name(label)
                                        + " nothing can be said yet: it takes at least two re-lays of each to see how far re-lays differ."));
        return sentences;
    }

    /** What the trial as a whole says: the best, or that the data carry none. */
    public String verdict(TrialResult result) {
        if (result.pairs().isEmpty()) {
            return "No verdict yet: it takes at least two re-lays of each.";
        }
        String more = result.stake().measure() == Measure.LOSS
                ? " loses less than every other."
                : " flows more than every other.";
        return result.findBest()
                .map(label -> name(label) + more)
                .orElseGet(() -> allAlike(result)
                        ? "No winner: they do not differ by anything that matters."
                        : "No winner: the re-lays do not carry one.");
    }

    private static boolean allAlike(TrialResult result) {
        return result.missing().isEmpty() && result.pairs().stream().allMatch(pair -> pair.verdict() == Verdict.ALIKE);
    }

    /** What may be said of two kinds. */
    public String says(Stake stake, Comparison pair) {
        return switch (pair.verdict()) {
            case TOLD -> told(stake, pair);
            case ALIKE ->
                name(pair.first()) + " and " + name(pair.second()) + " differ by nothing that matters: by at most "
                        + text(stake, Math.max(-pair.low(), pair.high()), step(stake, pair)) + over(stake) + ".";
            case OPEN ->
                name(pair.first()) + " and " + name(pair.second()) + " cannot be told apart: " + open(stake, pair);
        };
    }

    private String told(Stake stake, Comparison pair) {
        double step = step(stake, pair);
        boolean loss = stake.measure() == Measure.LOSS;
        String better = name(loss ? pair.first() : pair.second());
        String worse = name(loss ? pair.second() : pair.first());
        return better + " " + stake.measure().does() + " " + text(stake, pair.difference(), step)
                + (loss ? " less" : " more")
                + " than " + worse + over(stake) + ", between " + number(stake, pair.low(), step) + " and "
                + number(stake, pair.high(), step) + "; " + matters(stake, pair);
    }

    private String matters(Stake stake, Comparison pair) {
        double percent = 100 * pair.matters();
        String likely =
                percent > 99 ? "more than 99 %" : percent < 1 ? "less than 1 %" : Numbers.fixed(percent, 0) + " %";
        String where = stake.measure() == Measure.LOSS
                ? " at " + QuantityShown.of(units).text(stake.longest())
                : "";
        return likely + " likely that it is "
                + QuantityShown.of(units).text(stake.measure().quantity(stake.matters())) + " or more" + where + ".";
    }

    private String open(Stake stake, Comparison pair) {
        String seen = "the difference lies between " + number(stake, pair.low(), step(stake, pair)) + " and "
                + text(stake, pair.high(), step(stake, pair)) + over(stake);
        return pair.more().isPresent()
                ? counted(pair.more().getAsInt()) + " of each would, if they go on as they have; " + seen + "."
                : "no number of re-lays that anybody would lay does it; " + seen + ".";
    }

    private static String counted(int more) {
        String count = more < COUNTS.size() ? COUNTS.get(more) : String.valueOf(more);
        return count + (more == 1 ? " more re-lay" : " more re-lays");
    }

    private String over(Stake stake) {
        return stake.measure() == Measure.LOSS
                ? " over " + QuantityShown.of(units).text(stake.over())
                : "";
    }

    private String name(String label) {
        return names.getOrDefault(label, label);
    }

    /** A tenth where the interval is narrow or its near end would round away, else whole units. */
    private double step(Stake stake, Comparison pair) {
        double width = shown(stake, pair.high()) - shown(stake, pair.low());
        return width < 6 || Math.abs(shown(stake, pair.low())) < 1 ? 0.1 : 1;
    }

    private double shown(Stake stake, double si) {
        return units.show(stake.measure().quantity(si));
    }

    private String text(Stake stake, double si, double step) {
        return number(stake, si, step) + " " + symbol(stake);
    }

    private String symbol(Stake stake) {
        return stake.measure() == Measure.LOSS
                ? units.pressure().symbol()
                : units.flow().symbol();
    }

    private String number(Stake stake, double si, double step) {
        String plain = Numbers.plain(Numbers.toNearest(shown(stake, si), step));
        return plain.startsWith("-") ? "\u2212" + plain.substring(1) : plain;
    }
}
