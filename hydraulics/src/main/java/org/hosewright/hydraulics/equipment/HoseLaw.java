package org.hosewright.hydraulics.equipment;

import org.hosewright.hydraulics.network.law.DarcyWeisbach;
import org.hosewright.hydraulics.network.law.Law;
import org.hosewright.hydraulics.network.law.Power;
import org.hosewright.hydraulics.network.law.Water;
import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;

/** How a hose's loss follows from its bore, where it is not stated by a coefficient. */
public sealed interface HoseLaw {
    /** The velocity at which a hose by such a law is given a coefficient of the same loss [m/s]: 10 ft/s, attack flows. */
    double LIKE_MS = 10 * Constants.FOOT_M;

    /** The law of a length of it. */
    Law over(Length bore, Length length);

    /** What the trade calls the law, with its number. */
    String says();

    /** The coefficient that loses the same at {@link #LIKE_MS}. */
    default HoseLoss like(Length bore) {
        Length metre = new Length(1);
        double flow_m3s = Math.PI / 4 * bore.metres() * bore.metres() * LIKE_MS;
        return new HoseLoss(over(bore, metre).loss_Pa(flow_m3s) / (flow_m3s * flow_m3s));
    }

    /** Loss by the Hazen-Williams form.
     *
     * @param c its roughness coefficient, 140 for smooth linings [1]
     * @source L. Rossman et al., EPANET 2.2 User Manual, EPA, 2020, table 3.1: 4.727 C^-1.852 d^-4.871 L q^1.852 in ft,
     *     cubic feet a second
     * @validFor water near 15 °C in turbulent flow
     */
    record HazenWilliams(double c) implements HoseLaw {
        private static final double FACTOR = 4.727;
        private static final double OF_BORE = 4.871;
        private static final double LEAST = 40;
        private static final double MOST = 200;

        public HazenWilliams {
            Numbers.requireWithin("Hazen-Williams coefficient of a hose", c, LEAST, MOST, "");
        }

        @Override
        public Law over(Length bore, Length length) {
            double n = Power.HAZEN_WILLIAMS;
            double perFoot = FACTOR / Math.pow(c, n) / Math.pow(bore.metres() / Constants.FOOT_M, OF_BORE);
            double head_ft = perFoot * length.metres() / Constants.FOOT_M;
            double cubicFoot_m3 = Constants.FOOT_M * Constants.FOOT_M * Constants.FOOT_M;
            double head_Pa = head_ft * Constants.FOOT_M * Constants.WATER_PA_PER_M;
            return new Power(head_Pa / Math.pow(cubicFoot_m3, n), n);
        }

        @Override
        public String says() {
            return "Hazen-Williams, C " + Numbers.plain(c);
        }
    }

    /** Loss by the Darcy-Weisbach form, laminar flow and the change to it included.
     *
     * @param roughness height of the lining's roughness
     * @source L. Rossman et al., EPANET 2.2 User Manual, EPA, 2020, table 3.1 and appendix D.1
     * @validFor full hose, water at 20 °C
     */
    record Roughness(Length roughness) implements HoseLaw {
        public Roughness {
            Numbers.requireNotNegative("roughness of a hose", roughness.metres());
        }

        @Override
        public Law over(Length bore, Length length) {
            return new DarcyWeisbach(length.metres(), bore.metres(), roughness.metres(), 0, Water.AT_20_C);
        }

        @Override
        public String says() {
            return "Darcy-Weisbach, roughness " + Numbers.plain(Numbers.toNearest(1000 * roughness.metres(), 1e-4))
                    + " mm";
        }
    }
}
