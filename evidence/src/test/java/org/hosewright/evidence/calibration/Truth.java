package org.hosewright.evidence.calibration;

import static org.hosewright.evidence.calibration.NightWriter.row;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.hosewright.evidence.calibration.NightWriter.Row;
import org.hosewright.evidence.instrument.Tap;
import org.hosewright.evidence.joint.Priors;
import org.hosewright.evidence.night.Night;
import org.hosewright.hydraulics.equipment.Fog;
import org.hosewright.hydraulics.equipment.SmoothBore;
import org.hosewright.hydraulics.equipment.Tip;
import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;

/** A night whose truth is known: drawn from the stated priors, then read with the stated errors (psi, gpm, feet). */
final class Truth {
    static final double BOOK_C = 15.5;
    private static final double BORE = 7.0 / 8;
    private static final double MOST_PUMP = 300;

    final Random random;
    final double c;
    final double k;
    final double factor;
    final double meter;
    final double pumpOffset;
    final double tipOffset;
    final double pumpScatter;
    final double tipScatter;
    final double meterScatter;
    final boolean fog;
    final boolean metered;
    final boolean gauged;
    final double tapShare;
    final List<Double> lengths = new ArrayList<>();
    final List<Row> rows = new ArrayList<>();

    private final boolean fine;

    Truth(long seed) {
        this(seed, false);
    }

    /** A night with a calibrated meter, a test gauge at the tip, and three static readings: it tells instruments and tip too. */
    static Truth wellEquipped(long seed) {
        return new Truth(seed, true);
    }

    private Truth(long seed, boolean fine) {
        this.fine = fine;
        random = new Random(mixed(seed));
        c = BOOK_C * Math.exp(Priors.BOOK_HOSE * random.nextGaussian());
        k = Math.abs(random.nextGaussian()) * Priors.PIPING / Constants.US_POINT_LOSS;
        fog = random.nextInt(4) == 0;
        gauged = !fog && random.nextBoolean();
        metered = random.nextInt(4) > 0 || fine;
        double spread = fog ? Priors.FOG : gauged ? Priors.GAUGED_BORE : Priors.UNGAUGED_BORE;
        factor = (fog ? Priors.FOG_CENTRE : 1) * Math.exp(spread * random.nextGaussian());
        meter = Math.exp(meterShare() * random.nextGaussian());
        pumpOffset = 2 * random.nextGaussian();
        tipOffset = 200 * tipShare() * random.nextGaussian();
        pumpScatter = multiple() * (0.25 * 2 + 0.5);
        tipScatter = multiple() * (0.25 * 200 * tipShare() + 0.25);
        meterScatter = multiple() * 0.25 * meterShare();
        tapShare = !fog && random.nextInt(4) == 0 ? 1 - Math.pow(BORE / 1.5, 4) : 1;
        fly();
    }

    private double meterShare() {
        return fine ? 0.01 : 0.05;
    }

    private double tipShare() {
        return fine ? 0.0025 : 0.005;
    }

    /** Seeds that follow each other would give draws that resemble each other. @source S. Vigna, splitmix64, 2015 */
    private static long mixed(long seed) {
        long z = (seed + 1) * 0x9E3779B97F4A7C15L;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }

    /** The root of a scaled inverse chi-square draw. */
    private double multiple() {
        double sum = 0;
        for (int i = 0; i < (int) Priors.SCATTER_WORTH; i++) {
            double z = random.nextGaussian();
            sum += z * z;
        }
        return Math.sqrt(Priors.SCATTER_WORTH / sum);
    }

    private void fly() {
        double aim = aim();
        double longest = Math.floor((MOST_PUMP - aim * 1.2) / (c * flow(aim * 1.2) * flow(aim * 1.2) / 1e4) * 2) * 50;
        double[] shares = {0.25, 0.5, 0.75, 1};
        for (double share : shares) {
            double length = Math.max(100, Math.floor(share * Math.min(800, longest) / 50) * 50);
            if (!lengths.contains(length)) {
                lengths.add(length);
            }
        }
        int id = 0;
        for (double length : lengths) {
            double rise = random.nextInt(3) == 0 ? random.nextInt(20) - 5 : 0;
            for (double share : new double[] {0.8, 1, 1.2}) {
                if (random.nextInt(5) > 0) {
                    rows.add(
                            read(String.valueOf(++id), length, rise, aim * share * (1 + 0.03 * random.nextGaussian())));
                }
            }
        }
        int statics = fine ? 3 : random.nextInt(3) == 0 ? 1 : 0;
        for (int i = 0; i < statics; i++) {
            double pressure = 120 + 30 * i;
            rows.add(row(
                            String.valueOf(++id),
                            "attack-175",
                            lengths.get(0),
                            0,
                            "tip",
                            needle(pressure, pumpOffset, pumpScatter),
                            needle(pressure, tipOffset, tipScatter),
                            -1)
                    .closed());
        }
    }

    /** The pressure that the tip is meant for [psi]. */
    double aim() {
        return fog ? 75 : 50;
    }

    /** The pressure at the tip that a pump pressure leaves on a level line [psi]. */
    double tipAt(double length, double pump) {
        double unit = flow(1) / 100;
        return pump / (1 + (c * length / 100 + k) * unit * unit);
    }

    /** Reaction [lbf]: of a smooth bore with its flow, of a fog tip by the trade's formula. */
    double reaction(double tip) {
        return fog ? 0.0505 * flow(tip) * Math.sqrt(tip) : factor * 1.57 * BORE * BORE * tip;
    }

    double flow(double tip) {
        return factor * (fog ? 150 * Math.sqrt(tip / 75) : 29.7 * BORE * BORE * Math.sqrt(tip));
    }

    double pump(double length, double rise, double tip) {
        double hundred = flow(tip) / 100;
        return tip + (c * length / 100 + k) * hundred * hundred + 0.434 * rise;
    }

    Row read(String id, double length, double rise, double tip) {
        double read = flow(tip) * meter * Math.exp(meterScatter * random.nextGaussian());
        return row(
                id,
                "attack-175",
                length,
                rise,
                "tip",
                needle(pump(length, rise, tip), pumpOffset, pumpScatter),
                needle(tip * tapShare, tipOffset, tipScatter),
                metered ? read : -1);
    }

    private double needle(double pressure, double offset, double scatter) {
        return pressure + offset + scatter * random.nextGaussian();
    }

    NightWriter gear() {
        Tip tip = fog
                ? new Fog(Flow.ofGpm(150), Pressure.ofPsi(75))
                : new SmoothBore(Length.ofInches(BORE), Pressure.ofPsi(50));
        Tap tap = tapShare < 1 ? new Tap.Side(Optional.of(Length.ofInches(1.5))) : new Tap.Pitot();
        return new NightWriter()
                .hose("attack-175", BOOK_C)
                .discharge("crosslay-1")
                .nozzle("tip", tip, gauged)
                .gauge("gauge-a", 400, 0.005, new Tap.BeforePiping())
                .gauge("gauge-b", 200, tipShare(), tap)
                .meter("meter-1", meterShare());
    }

    Night night() {
        return gear().rows(rows.toArray(new Row[0])).night();
    }
}
