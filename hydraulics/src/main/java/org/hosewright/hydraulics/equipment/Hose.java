package org.hosewright.hydraulics.equipment;

import java.util.Optional;
import org.hosewright.hydraulics.network.law.Law;
import org.hosewright.hydraulics.network.law.Square;
import org.hosewright.hydraulics.quantity.Flow;
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
 * @param law what its loss follows instead of the coefficient, where the company goes by one; {@code loss} is then the
 *     coefficient that loses the same at one velocity
 */
public record Hose(
        String id,
        Length diameter,
        Length section,
        Known<HoseLoss> loss,
        Optional<Pressure> serviceTest,
        Optional<HoseLaw> law) {
    /** The share of the service test that a line may see. @source NFPA 1962, 2013/2018: relief at most 90 % */
    public static final double USABLE_SHARE = 0.9;

    public Hose {
        Numbers.requirePositive("diameter of hose " + id, diameter.metres());
        Numbers.requirePositive("section of hose " + id, section.metres());
        Numbers.requirePositive("loss of hose " + id, loss.value().r());
        serviceTest.ifPresent(p -> Numbers.requirePositive("service test of hose " + id, p.pascals()));
    }

    /** A hose whose loss is stated by a coefficient. */
    public Hose(String id, Length diameter, Length section, Known<HoseLoss> loss, Optional<Pressure> serviceTest) {
        this(id, diameter, section, loss, serviceTest, Optional.empty());
    }

    /** A hose whose loss follows a law of its bore. */
    public static Hose by(HoseLaw law, String id, Length diameter, Length section, Optional<Pressure> serviceTest) {
        return new Hose(id, diameter, section, Known.of(law.like(diameter)), serviceTest, Optional.of(law));
    }

    /** The same hose with another coefficient, which it then goes by. */
    public Hose withLoss(Known<HoseLoss> other) {
        return new Hose(id, diameter, section, other, serviceTest);
    }

    /** The loss of a length of it. */
    public Law over(Length length) {
        return law.isPresent()
                ? law.get().over(diameter, length)
                : new Square(loss.value().r() * length.metres());
    }

    /** The loss of a length of it at a flow, with the sign of the flow; no flow loses exactly 0. */
    public Pressure loss(Length length, Flow at) {
        return law.isPresent()
                ? new Pressure(over(length).loss_Pa(at.cubicMetresPerSecond()))
                : loss.value().over(length, at);
    }

    /** The highest pressure the hose may see, shut-off included; absent where no service test is known. */
    public Optional<Pressure> limit() {
        return serviceTest.map(p -> new Pressure(USABLE_SHARE * p.pascals()));
    }
}
