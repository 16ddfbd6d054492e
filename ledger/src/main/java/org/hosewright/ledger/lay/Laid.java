package org.hosewright.ledger.lay;

import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.lay.Lay;
import org.hosewright.hydraulics.line.Ask;

/** What is laid from one engine, by the company's names, and what is asked of it.
 *
 * @param engine id of the engine
 * @param lay the lines
 * @param supply the hydrant that feeds them, where its test is stated
 * @param ask what is asked
 * @param leftOut what was said of the lay and is not reckoned with, as sentences
 * @param assumed what was not said and is taken for granted, as sentences
 */
public record Laid(
        String engine, Lay lay, Optional<LaidSupply> supply, Ask ask, List<String> leftOut, List<String> assumed) {
    public Laid {
        leftOut = List.copyOf(leftOut);
        assumed = List.copyOf(assumed);
    }
}
