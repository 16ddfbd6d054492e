package org.hosewright.files.lay;

import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.supply.HydrantCurve;
import org.hosewright.ledger.lay.LaidSupply;

/** What feeds an engine, made from what the file says. */
final class Supplies {
    private static final String SOLVED = "one hydrant, with the hose from it";

    private Supplies() {}

    /** The supply; empty where only its hose is stated. */
    static Optional<LaidSupply> of(LaidSource source) {
        if (!source.lines().isEmpty()) {
            throw notSolved("a second supply line", "lines", source);
        }
        if (!source.relay().isEmpty()) {
            throw notSolved("a relay", source.relay().get(0).engine(), source);
        }
        return source.from().map(from -> {
            if (from instanceof LaidSource.Hydrant test) {
                return new LaidSupply(
                        new HydrantCurve(test.still(), test.residual(), test.at()),
                        test.tested(),
                        source.hose(),
                        source.rise(),
                        source.keep());
            }
            throw notSolved("a source", from.word(), source);
        });
    }

    /** What is said of the supply and cannot be reckoned with, as sentences. */
    static List<String> leftOut(Optional<LaidSource> source) {
        return source.isPresent() && source.get().from().isEmpty()
                ? List.of("No hydrant test is stated: nothing here says whether the supply gives this flow.")
                : List.of();
    }

    private static InvalidInput notSolved(String what, String word, LaidSource source) {
        return new InvalidInput(what + " in the lay, which is not solved here,", word, SOLVED, source.where());
    }
}
