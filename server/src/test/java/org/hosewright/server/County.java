package org.hosewright.server;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.hosewright.files.readings.ReadingsFile;
import org.hosewright.files.readings.ReadingsTable;
import org.hosewright.ledger.drill.DrillHead;
import org.hosewright.ledger.history.Act;
import org.hosewright.server.setup.Ports;

/** An invented county's record, as large as the years make it: engines, their packages, and nights through 20 years. */
final class County {
    private static final Act ACT = new Act("County training officer", "invented record for a measurement");
    private static final int BATCHES = 4;
    private static final int DISCHARGES = 8;
    static final int ROWS = 20;
    private static final String COLUMNS =
            "reading,engine,discharge,hose,length [ft],rise [ft],nozzle,pump [psi],tip [psi],flow [gpm],pump gauge,tip gauge,meter";

    private final int engines;
    private final int packages;
    private final Random random = new Random(20260512);

    /**
     * @param packages in all, shared out evenly over the engines
     */
    County(int engines, int packages) {
        this.engines = engines;
        this.packages = packages;
    }

    /** The kit in the open format. */
    String kit() {
        var text = new StringBuilder("format: 1\ncompany: Brindle Falls County\nzone: America/New_York\nunits: us\n");
        text.append("crew: { reaction: { 1: 60 lbf, 2: 75 lbf, 3: 95 lbf } }\nhoses:\n");
        for (int engine = 1; engine <= engines; engine++) {
            for (int batch = 1; batch <= BATCHES; batch++) {
                double loss = 14 + 4 * random.nextDouble();
                text.append(String.format(
                        Locale.ROOT,
                        "  attack-%d-%d: { diameter: 1 3/4 in, section: 50 ft, loss: %.2f psi / 100 ft @ 100 gpm, basis: book,"
                                + " service-test: 300 psi, tested: 2026-04-11, made: 2019 }%n",
                        engine,
                        batch,
                        loss));
            }
        }
        text.append("nozzles:\n  seven-eighths: { kind: smooth-bore, bore: 7/8 in, at: 50 psi, gauged: 2026-05-12 }\n");
        text.append("  fog-150: { kind: fog, rated: 150 gpm @ 75 psi, most: 200 psi }\nengines:\n");
        for (int engine = 1; engine <= engines; engine++) {
            text.append("  engine-").append(engine).append(":\n    pump: { rated: 1500 gpm, ceiling: 250 psi }\n");
            text.append("    discharges:\n");
            for (int way = 1; way <= DISCHARGES; way++) {
                text.append("      out-").append(way).append(": { size: 2 in, loss: 2.5 psi @ 100 gpm }\n");
            }
        }
        text.append("instruments:\n");
        text.append(
                "  gauge-a: { kind: pressure-gauge, range: 400 psi, accuracy: 0.5 % of range, tap: before piping }\n");
        text.append("  gauge-b: { kind: pressure-gauge, range: 200 psi, accuracy: 0.5 % of range, tap: pitot }\n");
        text.append("  meter-1: { kind: flow-meter, accuracy: 5 % of reading }\npackages:\n");
        for (int named = 0; named < packages; named++) {
            text.append(line(named));
        }
        return text.append("rule: { tip: 50 psi, per: 18 psi / 100 ft }\n").toString();
    }

    private String line(int named) {
        int engine = 1 + named % engines;
        int way = 1 + named / engines % DISCHARGES;
        int batch = 1 + named / engines % BATCHES;
        boolean fog = named % 3 == 0;
        return String.format(
                Locale.ROOT,
                "  line-%d: { engine: engine-%d, discharge: out-%d, hose: %d x attack-%d-%d, nozzle: %s, crew: 2, %s }%n",
                named + 1,
                engine,
                way,
                3 + named % 4,
                engine,
                batch,
                fog ? "fog-150" : "seven-eighths",
                fog ? "target: 150 gpm, least: 135 gpm" : "target: 161 gpm, least: 150 gpm");
    }

    /** Writes the kit and the nights into an empty record.
     *
     * @param nights each of 20 readings, spread over 20 years
     */
    void fill(Ports ports, int nights) {
        ports.kits().save(kit(), 0, ACT);
        for (int night = 0; night < nights; night++) {
            LocalDate date = LocalDate.of(2006, 6, 1).plusDays(7300L * night / nights);
            ReadingsTable table = ReadingsFile.read(readings(night), "night");
            List<Map<String, String>> rows =
                    table.rows().stream().map(ReadingsTable.Row::cells).toList();
            ports.drills().create(new DrillHead("night " + night, date, table.columns()), rows, ACT);
        }
    }

    /* Flow 120 to 180 gpm through a 7/8 in tip: q = 22.74 sqrt(T); 15.5 psi per 100 ft at 100 gpm, 2.5 psi of piping. */
    private String readings(int night) {
        int engine = 1 + night % engines;
        var rows = new ArrayList<String>();
        rows.add(COLUMNS);
        for (int row = 1; row <= ROWS; row++) {
            int length_ft = 150 + 100 * ((row - 1) / 5);
            double tip_psi = 35 + 5 * ((row - 1) % 5);
            double flow_gpm = 22.74 * Math.sqrt(tip_psi);
            double pump_psi = tip_psi + (15.5 * length_ft / 100 + 2.5) * flow_gpm * flow_gpm / 1e4;
            rows.add(String.format(
                    Locale.ROOT,
                    "%d,engine-%d,out-1,attack-%d-1,%d,0,seven-eighths,%.0f,%.0f,%.0f,gauge-a,gauge-b,meter-1",
                    row,
                    engine,
                    engine,
                    length_ft,
                    pump_psi + random.nextGaussian(),
                    tip_psi + random.nextGaussian() * 0.5,
                    flow_gpm * (1 + 0.01 * random.nextGaussian())));
        }
        return String.join("\n", rows) + "\n";
    }
}
