package org.hosewright.hydraulics.equipment;

import java.util.Optional;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;

/** A kind or batch of hose that the company owns.
 *
 * @param id the company's name for it
 * @param diameter nominal inside diameter
 * @param section length from coupling to coupling
 * @param loss friction loss and how well it is known
 * @param serviceTest pressure of its last service test, where known
 */
public record Hose(String id, Length diameter, Length section, Known<HoseLoss> loss, Optional<Pressure> serviceTest) {
    /** The share of the service test that a line may see. @source NFPA 1962, 2013/2018: relief at most 90 % */
    public static final double USABLE_SHARE = 0.9;

    public Hose {
        Numbers.requirePositive("diameter of hose " + id, diameter.metres());
        Numbers.requirePositive("section of hose " + id, section.metres());
        Numbers.requirePositive("loss of hose " + id, loss.value().r());
        serviceTest.ifPresent(p -> Numbers.requirePositive("service test of hose " + id, p.pascals()));
    }

    /** The highest pressure the hose may see, shut-off included; absent where no service test is known. */
    public Optional<Pressure> limit() {
        return serviceTest.map(p -> new Pressure(USABLE_SHARE * p.pascals()));
    }
}
