package org.hosewright.evidence.calibration;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.hipparchus.special.Erf;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.Quantity;
import org.hosewright.hydraulics.quantity.QuantityShown;

/** How often stated intervals hold the truth, by reported quantity, over nights whose truth was drawn from the priors. */
final class Coverage {
    /** Classes of a rank histogram. */
    static final int RANKS = 10;

    /** Of two normal numbers together, 95 % lie within this squared distance. @source chi-square of 2 degrees of freedom */
    private static final double JOINTLY = 5.991;

    private static final double ORDERED_psi = 200;
    private static final double SHORT_ft = 200;

    /** One quantity's count. */
    static final class Count {
        int stated;
        int held;
        int below;
        double squares;
        final int[] ranks = new int[RANKS];

        /** Chi-square of the ranks against all being alike. */
        double roughness() {
            double alike = (double) stated / RANKS;
            double sum = 0;
            for (int rank : ranks) {
                sum += (rank - alike) * (rank - alike) / alike;
            }
            return sum;
        }

        double share() {
            return (double) held / stated;
        }

        @Override
        public String toString() {
            double rms = Math.sqrt(squares / stated);
            return Math.round(1000 * share()) / 10.0 + " % of " + stated + " (truth below " + below + ", above "
                    + (stated - held - below) + ", rms " + Math.round(100 * rms) / 100.0 + ", ranks "
                    + Arrays.toString(ranks) + " chi-square " + Math.round(10 * roughness()) / 10.0 + ")";
        }
    }

    final Map<String, Count> counts = new TreeMap<>();
    int nights;
    int refused;
    int senseless;
    int readings;
    int accused;
    int together;
    int within;

    /** Adds a night. */
    void add(Truth truth) {
        Calibration night;
        try {
            night = Calibration.of(truth.night());
        } catch (InvalidInput impossible) {
            count(null, truth);
            return;
        }
        count(night, truth);
    }

    private synchronized void count(@org.jspecify.annotations.Nullable Calibration night, Truth truth) {
        nights++;
        if (night == null) {
            refused++;
            return;
        }
        readings += night.readings().size();
        accused += (int) night.readings().stream()
                .filter(judged -> judged.finding().kind() != FindingKind.NONE)
                .count();
        senseless += night.withheld().stream().anyMatch(w -> w.what().startsWith("every")) ? 1 : 0;
        losses(night, truth);
        jointly(night, truth);
        pressures(night.belief(), truth);
    }

    private void losses(Calibration night, Truth truth) {
        Terms terms = night.terms();
        state(
                "hose loss",
                terms.hoses().get("attack-175"),
                HoseLoss.ofUs(truth.c).r());
        state(
                "piping loss",
                terms.discharges().get("crosslay-1"),
                PointLoss.ofUs(truth.k).k());
        state("meter factor", terms.meters().get("meter-1"), truth.meter);
        state("nozzle factor", terms.nozzles().get("tip"), truth.factor);
        state("pump gauge offset", terms.gauges().get("gauge-a"), truth.pumpOffset * Constants.PSI_PA);
        state("tip gauge offset", terms.gauges().get("gauge-b"), truth.tipOffset * Constants.PSI_PA);
    }

    /** Hose and piping together, by the squared distance of the truth from both. */
    private void jointly(Calibration night, Truth truth) {
        Known<HoseLoss> hose = night.terms().hoses().get("attack-175");
        Known<PointLoss> piping = night.terms().discharges().get("crosslay-1");
        if (hose == null || piping == null) {
            return;
        }
        double a = (HoseLoss.ofUs(truth.c).r() - hose.value().si()) / hose.standardErrorSi();
        double b = (PointLoss.ofUs(truth.k).k() - piping.value().si()) / piping.standardErrorSi();
        double rho = night.belief().correlation("attack-175", "crosslay-1");
        together++;
        within += (a * a - 2 * rho * a * b + b * b) / (1 - rho * rho) <= JOINTLY ? 1 : 0;
    }

    private void pressures(Belief belief, Truth truth) {
        double longest = truth.lengths.get(truth.lengths.size() - 1);
        double aim = truth.aim();
        Pressure tip = Pressure.ofPsi(aim);
        Pressure ordered = Pressure.ofPsi(ORDERED_psi);
        Course far = course(longest);
        Course near = course(SHORT_ft);
        state("needed at the longest", belief.neededPump(far, tip), truth.pump(longest, 0, aim) * Constants.PSI_PA);
        state("needed at 200 ft", belief.neededPump(near, tip), truth.pump(SHORT_ft, 0, aim) * Constants.PSI_PA);
        double left = truth.tipAt(longest, ORDERED_psi);
        state("flow delivered", belief.delivered(far, ordered), truth.flow(left) * Constants.GPM_M3S);
        state("tip delivered", belief.tip(far, ordered), left * Constants.PSI_PA);
        state("reaction", belief.reaction(far, ordered), truth.reaction(left) * Constants.LBF_N);
    }

    private static Course course(double length_ft) {
        return new Course(
                List.of(new Stretch("attack-175", Length.ofFeet(length_ft))), "crosslay-1", new Length(0), "tip", "");
    }

    private <Q extends Quantity> void state(String what, Optional<Known<Q>> known, double truth) {
        state(what, known.orElse(null), truth);
    }

    private <Q extends Quantity> void state(
            String what, @org.jspecify.annotations.Nullable Known<Q> known, double truth) {
        Count count = counts.computeIfAbsent(what, any -> new Count());
        if (known == null) {
            return;
        }
        double off = (truth - known.value().si()) / known.standardErrorSi();
        count.stated++;
        count.ranks[(int) Math.min(RANKS - 1, Math.floor(RANKS * (1 + Erf.erf(off / Math.sqrt(2))) / 2))]++;
        count.squares += off * off;
        if (Math.abs(off) <= QuantityShown.HALF_WIDTH) {
            count.held++;
        } else if (off < 0) {
            count.below++;
        }
    }
}
