package org.hosewright.ledger.lay;

import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.lay.Lay;
import org.hosewright.hydraulics.line.Ask;

/** Lines from one engine, branched or beside each other, and what is asked at their tips.
 *
 * @param engine id of the engine
 * @param lay the lines
 * @param supply the hydrant that feeds them, where its test is stated
 * @param ask what is asked
 * @param leftOut what was said of the lay and is not reckoned with, as sentences
 * @param assumed what was not said and is taken for granted, as sentences
 */
public record BranchedLay(
        String engine, Lay lay, Optional<LaidSupply> supply, Ask ask, List<String> leftOut, List<String> assumed)
        implements Laid {
    public BranchedLay {
        leftOut = List.copyOf(leftOut);
        assumed = List.copyOf(assumed);
    }
}
