package org.hosewright.cli.text;

import java.util.List;
import java.util.OptionalDouble;
import org.hosewright.evidence.trial.Stake;
import org.hosewright.evidence.trial.Standing;
import org.hosewright.evidence.trial.TrialResult;
import org.hosewright.evidence.trial.TrialWords;
import org.hosewright.hydraulics.quantity.QuantityShown;

/** A blind trial's result as plain text. */
public final class TrialText {
    private TrialText() {}

    /** The verdict, each pair, and how each label came out. */
    public static List<String> of(TrialResult result, TrialWords words) {
        var report = new Report();
        report.title(words.verdict(result));
        report.list("Pair by pair", words.list(result));
        var table = new Columns("label", "re-lays", "mean", "between re-lays", "within one charge");
        for (Standing standing : result.standings()) {
            table.add(
                    standing.label(),
                    String.valueOf(standing.relays()),
                    text(result.stake(), words, standing.mean()),
                    spread(result.stake(), words, standing.scatter()),
                    spread(result.stake(), words, standing.within()));
        }
        report.table("As measured; the last two columns are standard deviations", table);
        report.list(
                "How it is judged",
                List.of(
                        "A re-lay is one observation; readings of one charge are averaged first.",
                        "Each interval holds the truth 95 times in 100 for all pairs together (Cochran's interval at Sidak's level); scatters are not taken to be alike."));
        return report.lines();
    }

    private static String spread(Stake stake, TrialWords words, OptionalDouble value) {
        return value.isEmpty() ? "-" : text(stake, words, value.getAsDouble());
    }

    private static String text(Stake stake, TrialWords words, double si) {
        return QuantityShown.of(words.units()).text(stake.measure().quantity(si));
    }
}
