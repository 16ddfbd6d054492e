package org.hosewright.ledger.exchange;

import java.util.Optional;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.ledger.kit.Coupling;

/** One hose of a package that is handed over.
 *
 * @param name what its owner calls it; the same name elsewhere is not the same hose
 * @param length how much of it lies in the package; above 0
 * @param diameter nominal inside diameter
 * @param section from coupling to coupling
 * @param coupling what it is coupled by, where its owner says so
 */
public record HandedHose(String name, Length length, Length diameter, Length section, Optional<Coupling> coupling) {
    public HandedHose {
        Numbers.requirePositive("length of " + name, length.metres());
        Numbers.requirePositive("diameter of " + name, diameter.metres());
        Numbers.requirePositive("section of " + name, section.metres());
    }
}
