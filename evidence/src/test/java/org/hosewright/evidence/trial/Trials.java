package org.hosewright.evidence.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.Length;

/** Trials drawn by lot, the truth known. */
final class Trials {
    static final double PSI = Constants.PSI_PA;

    private Trials() {}

    /** 300 ft of hose in the trial, 600 ft the longest stretch, 10 psi there matter. The gauges read in steps of so many psi. */
    static Stake stake(double step_psi) {
        return new Stake(Measure.LOSS, Length.ofFeet(300), Length.ofFeet(600), Stake.MATTERS_PSI * PSI, step_psi * PSI);
    }

    /** Labels A, B, C and so on. */
    static List<String> labels(int count) {
        return List.of("A", "B", "C", "D", "E").subList(0, count);
    }

    /** Re-lays of one kind with three readings in each charge.
     *
     * @param mean_psi true mean
     * @param scatter_psi deviation between re-lays
     */
    static List<Relay> relays(String label, int count, double mean_psi, double scatter_psi, Random random) {
        List<Relay> relays = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double lay = mean_psi + scatter_psi * random.nextGaussian();
            List<Double> values = new ArrayList<>();
            for (int j = 0; j < 3; j++) {
                values.add((lay + 0.8 * random.nextGaussian()) * PSI);
            }
            relays.add(new Relay(label, values));
        }
        return relays;
    }
}
