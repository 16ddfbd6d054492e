package org.hosewright.evidence.calibration;

import static org.hosewright.evidence.calibration.NightWriter.row;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import org.hosewright.evidence.calibration.NightWriter.Row;
import org.hosewright.evidence.instrument.Tap;
import org.hosewright.evidence.joint.Priors;
import org.hosewright.evidence.night.Night;
import org.hosewright.evidence.pool.Batch;
import org.hosewright.evidence.pool.HoseType;
import org.hosewright.evidence.pool.Pool;
import org.hosewright.evidence.pool.PoolNight;
import org.hosewright.evidence.pool.PoolPriors;
import org.hosewright.hydraulics.equipment.SmoothBore;
import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;

/** Nights over years on one rig with the same gauges and meter, the truth drawn from what is believed beforehand. */
final class RigYears {
    static final HoseType TYPE = new HoseType("attack-175", HoseLoss.ofUs(15.5), Priors.BOOK_HOSE);
    private static final double BORE = 0.875;
    private static final double LAST = 2026;

    /** Nobody pumps a line to where the needle may leave its dial [psi]. */
    private static final double MOST_PUMP = 380;

    private final String name;
    private final Random random;
    final double typeLog;
    final double[] batchLogs;
    final double meter;
    final double pumpOffset;
    private final double nightly;
    private final double drift;
    private final double k;
    private final double factor;
    private final double tipOffset;
    final List<PoolNight> nights = new ArrayList<>();

    RigYears(long seed, int batches, int count) {
        this("", seed, batches, count);
    }

    /** A rig among others.
     *
     * @param name what its hose, gauges, meter and discharge are told from those of others by
     */
    RigYears(String name, long seed, int batches, int count) {
        this.name = name;
        random = new Random(seed * 0x9E3779B97F4A7C15L);
        typeLog = Priors.BOOK_HOSE * random.nextGaussian();
        double apart = PoolPriors.BATCHES * Math.abs(random.nextGaussian());
        nightly = PoolPriors.NIGHTS * Math.abs(random.nextGaussian());
        drift = PoolPriors.DRIFT * random.nextGaussian();
        batchLogs = new double[batches];
        for (int i = 0; i < batches; i++) {
            batchLogs[i] = typeLog + apart * random.nextGaussian();
        }
        k = Math.abs(random.nextGaussian()) * Priors.PIPING / Constants.US_POINT_LOSS;
        factor = Math.exp(Priors.GAUGED_BORE * random.nextGaussian());
        meter = Math.exp(0.05 * random.nextGaussian());
        pumpOffset = 2 * random.nextGaussian();
        tipOffset = random.nextGaussian();
        for (int night = 0; night < count; night++) {
            double year = night == 0 ? LAST : LAST - 5 * random.nextDouble();
            nights.add(PoolNight.of(name + "night " + night, year, night(year, night % batches), eras()));
        }
    }

    private Map<String, String> eras() {
        Map<String, String> eras = new LinkedHashMap<>();
        for (String id : List.of("gauge-a", "gauge-b", "meter-1", "crosslay-1", "tip")) {
            eras.put(id, name + id);
        }
        return eras;
    }

    Pool pool() {
        return Pool.of(List.of(TYPE), batches(), nights);
    }

    List<Batch> batches() {
        List<Batch> batches = new ArrayList<>();
        for (int i = 0; i < batchLogs.length; i++) {
            batches.add(new Batch(name + "batch-" + i, TYPE.id(), OptionalDouble.empty()));
        }
        return batches;
    }

    /** A night that flies one batch. */
    private Night night(double year, int batch) {
        double c =
                TYPE.loss().us() * Math.exp(batchLogs[batch] + drift * (year - LAST) + nightly * random.nextGaussian());
        List<Row> rows = new ArrayList<>();
        double multiple = multiple();
        for (double length : new double[] {150, 300}) {
            for (double tip : new double[] {40, 50, 60}) {
                if (pump(length, tip, c) < MOST_PUMP) {
                    rows.add(read(String.valueOf(rows.size() + 1), name + "batch-" + batch, length, tip, c, multiple));
                }
            }
        }
        NightWriter writer = new NightWriter();
        for (int i = 0; i < batchLogs.length; i++) {
            writer.hose(name + "batch-" + i, TYPE.loss().us());
        }
        return writer.discharge("crosslay-1")
                .nozzle("tip", new SmoothBore(Length.ofInches(BORE), Pressure.ofPsi(50)), true)
                .gauge("gauge-a", 400, 0.005, new Tap.BeforePiping())
                .gauge("gauge-b", 200, 0.005, new Tap.Pitot())
                .meter("meter-1", 0.05)
                .rows(rows.toArray(new Row[0]))
                .night();
    }

    private Row read(String id, String hose, double length, double tip, double c, double multiple) {
        double flow = flow(tip);
        double pump = pump(length, tip, c);
        return row(
                id,
                hose,
                length,
                0,
                "tip",
                pump + pumpOffset + multiple * random.nextGaussian(),
                tip + tipOffset + multiple * 0.5 * random.nextGaussian(),
                flow * meter * Math.exp(multiple * 0.0125 * random.nextGaussian()));
    }

    private double flow(double tip) {
        return factor * 29.7 * BORE * BORE * Math.sqrt(tip);
    }

    private double pump(double length, double tip, double c) {
        return tip + (c * length / 100 + k) * flow(tip) * flow(tip) / 1e4;
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
}
