package org.hosewright.files.trial;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.Function;
import org.hosewright.evidence.trial.Measure;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Quantity;
import org.hosewright.hydraulics.quantity.QuantityText;
import org.hosewright.ledger.trial.Taken;
import org.hosewright.ledger.trial.TrialTask;

/** Parts of a trial as people write them, each quantity with its unit. */
public final class TrialTexts {
    private TrialTexts() {}

    /** The measure of a word: "loss" or "flow". */
    public static Measure measure(String word, String where) {
        return Arrays.stream(Measure.values())
                .filter(one -> one.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new InvalidInput("measure", word, "loss or flow", where));
    }

    /** What is measured.
     *
     * @param texts by key: held, over, longest, matters, scatter, step
     */
    public static TrialTask task(Measure measure, Function<String, String> texts) {
        boolean loss = measure == Measure.LOSS;
        Function<String, Quantity> pressure = key -> at(key, texts.apply(key), QuantityText::pressure);
        Function<String, Quantity> flow = key -> at(key, texts.apply(key), QuantityText::flow);
        Function<String, Quantity> measured = loss ? pressure : flow;
        return new TrialTask(
                measure,
                (loss ? flow : pressure).apply("held"),
                at("over", texts.apply("over"), QuantityText::length),
                at("longest", texts.apply("longest"), QuantityText::length),
                measured.apply("matters"),
                measured.apply("scatter"),
                measured.apply("step"));
    }

    /** What the needles showed.
     *
     * @param texts by key: pump and tip, or flow
     */
    public static Taken taken(Function<String, Optional<String>> texts) {
        Optional<String> flow = texts.apply("flow");
        if (flow.isPresent()) {
            if (texts.apply("pump").isPresent() || texts.apply("tip").isPresent()) {
                throw new InvalidInput("reading", "flow beside pressures", "pump and tip, or flow alone", "");
            }
            return new Taken.Through(at("flow", flow.get(), QuantityText::flow));
        }
        return new Taken.Drop(
                at("pump", texts.apply("pump").orElse(""), QuantityText::pressure),
                at("tip", texts.apply("tip").orElse(""), QuantityText::pressure));
    }

    private static <Q> Q at(String key, String text, Function<String, Q> reader) {
        try {
            return reader.apply(text);
        } catch (InvalidInput refused) {
            throw refused.at(key);
        }
    }
}
