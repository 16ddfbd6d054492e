package org.hosewright.ledger.lay;

import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.ledger.kit.HosePackage;

/** One line without branches as it is laid, and what is asked of it.
 *
 * @param laid the line by the company's names; its id is its tip's
 * @param rise tip above the pump, negative downhill; absent where nobody wrote it down
 * @param supply the hydrant that feeds it, where its test is stated
 * @param ask what is asked
 * @param leftOut what was said of the lay and is not reckoned with, as sentences
 */
public record SingleLay(
        HosePackage laid, Optional<Length> rise, Optional<LaidSupply> supply, Ask ask, List<String> leftOut)
        implements Laid {
    public SingleLay {
        leftOut = List.copyOf(leftOut);
    }
}
