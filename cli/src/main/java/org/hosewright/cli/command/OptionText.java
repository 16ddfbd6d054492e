package org.hosewright.cli.command;

import java.util.Optional;
import java.util.function.Function;
import org.hosewright.hydraulics.error.InvalidInput;
import org.jspecify.annotations.Nullable;

/** Reads what was said for an option; a refusal names the option. */
final class OptionText {
    private OptionText() {}

    /** What an option says; empty where it was left out. */
    static <Q> Optional<Q> find(String option, @Nullable String text, Function<String, Q> read) {
        return text == null ? Optional.empty() : Optional.of(read(option, text, read));
    }

    /** What an option says that is there. */
    static <Q> Q read(String option, String text, Function<String, Q> read) {
        try {
            return read.apply(text);
        } catch (InvalidInput refused) {
            throw refused.at(option);
        }
    }
}
