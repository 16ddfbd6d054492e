package org.hosewright.evidence.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.hosewright.evidence.calibration.NightWriter.Row;

/** A fault put into a clean night, weakly or strongly, where a person would make it. */
enum Planted {
    KINK(FindingKind.EXTRA_LOSS, false) {
        @Override
        Row spoil(Row row, Truth truth, boolean strong) {
            return row.pump(row.pump() + (strong ? 30 : 15));
        }
    },
    PART_SHUT_GATE(FindingKind.EXTRA_LOSS, true) {
        @Override
        Row spoil(Row row, Truth truth, boolean strong) {
            double square = square(row, truth);
            return row.pump(row.pump() + (strong ? 12 : 7) * square);
        }
    },
    PLUGGED_TIP(FindingKind.NOZZLE, false) {
        @Override
        Row spoil(Row row, Truth truth, boolean strong) {
            return throttled(row, truth, strong ? 0.7 : 0.82);
        }
    },
    WIDER_TIP(FindingKind.NOZZLE, false) {
        @Override
        Row spoil(Row row, Truth truth, boolean strong) {
            return throttled(row, truth, strong ? 1.3 : 1.15);
        }
    },
    METER_SLIPS(FindingKind.FLOW_METER, false) {
        @Override
        Row spoil(Row row, Truth truth, boolean strong) {
            return row.flow(row.flow() * (strong ? 1.25 : 1.12));
        }
    },
    METER_JAMS(FindingKind.FLOW_METER, false) {
        @Override
        Row spoil(Row row, Truth truth, boolean strong) {
            return row.flow(row.flow() * (strong ? 0.3 : 0.8));
        }
    },
    METER_STALLS_AT_LOW_FLOW(FindingKind.FLOW_METER, false) {
        @Override
        Row spoil(Row row, Truth truth, boolean strong) {
            return row.flow(row.flow() * (strong ? 0.55 : 0.82));
        }

        @Override
        int at(Truth truth) {
            return least(truth);
        }
    },
    WRONG_SETTING(FindingKind.NOZZLE, false) {
        @Override
        Row spoil(Row row, Truth truth, boolean strong) {
            return throttled(row, truth, strong ? 0.6 : 0.8);
        }
    },
    PUMP_GAUGE_MISREAD(FindingKind.PUMP_GAUGE, false) {
        @Override
        Row spoil(Row row, Truth truth, boolean strong) {
            return row.pump(row.pump() - (strong ? 30 : 15));
        }
    },
    TIP_GAUGE_MISREAD(FindingKind.TIP_GAUGE, false) {
        @Override
        Row spoil(Row row, Truth truth, boolean strong) {
            return row.tip(row.tip() + (strong ? 15 : 8));
        }
    },
    TIP_GAUGE_UPSTREAM(FindingKind.TIP_GAUGE, false) {
        @Override
        Row spoil(Row row, Truth truth, boolean strong) {
            double sections = strong ? 1 : 0.5;
            return row.tip(row.tip() + sections * truth.c / 2 * square(row, truth));
        }
    },
    SECTION_LESS(FindingKind.LENGTH, false) {
        @Override
        Row spoil(Row row, Truth truth, boolean strong) {
            return row.pump(row.pump() - (strong ? 2 : 1) * truth.c / 2 * square(row, truth));
        }
    },
    SECTION_MORE(FindingKind.LENGTH, false) {
        @Override
        Row spoil(Row row, Truth truth, boolean strong) {
            return row.pump(row.pump() + (strong ? 2 : 1) * truth.c / 2 * square(row, truth));
        }
    },
    LAY_MISCOUNTED(FindingKind.LENGTH, true) {
        @Override
        Row spoil(Row row, Truth truth, boolean strong) {
            return row.pump(row.pump() + (strong ? 2 : 1) * truth.c / 2 * square(row, truth));
        }
    },
    RISE_SIGN(FindingKind.RISE, true) {
        @Override
        Row spoil(Row row, Truth truth, boolean strong) {
            return row.pump(row.pump() + 0.434 * 2 * (strong ? 35 : 20));
        }
    };

    private final FindingKind kind;
    private final boolean wholeLay;

    Planted(FindingKind kind, boolean wholeLay) {
        this.kind = kind;
        this.wholeLay = wholeLay;
    }

    /** The kind that the finding must name, or leave open. */
    FindingKind kind() {
        return kind;
    }

    /** True where the needles contradict each other in a way that only this fault explains. */
    boolean isTellable() {
        return kind == FindingKind.FLOW_METER || kind == FindingKind.TIP_GAUGE || kind == FindingKind.NOZZLE;
    }

    abstract Row spoil(Row row, Truth truth, boolean strong);

    /** The place of the reading that is spoilt. */
    int at(Truth truth) {
        return truth.rows.size() / 2;
    }

    private static int least(Truth truth) {
        int least = 0;
        for (int i = 1; i < truth.rows.size(); i++) {
            boolean open = !truth.rows.get(i).shut();
            least = open && truth.rows.get(i).tip() < truth.rows.get(least).tip() ? i : least;
        }
        return least;
    }

    private static double square(Row row, Truth truth) {
        double hundred = truth.flow(row.tip() / truth.tapShare) / 100;
        return hundred * hundred;
    }

    /** The same pressure at the tip with another share of the flow. */
    private static Row throttled(Row row, Truth truth, double share) {
        double less = (1 - share * share) * square(row, truth);
        double length = row.hose().get(0).length().feet();
        return row.pump(row.pump() - (truth.c * length / 100 + truth.k) * less).flow(row.flow() * share);
    }

    /** The rows of a night with the fault in one reading, or in all of its lay.
     *
     * @param at the reading
     * @param spoilt takes the places of the readings with the fault
     */
    Row[] rows(Truth truth, int at, boolean strong, Set<Integer> spoilt) {
        List<Row> rows = new ArrayList<>(truth.rows);
        Set<Integer> places = new TreeSet<>();
        for (int i = 0; i < rows.size(); i++) {
            boolean sameLay = rows.get(i).hose().equals(rows.get(at).hose())
                    && rows.get(i).rise() == rows.get(at).rise();
            if (i == at || (wholeLay && sameLay && !rows.get(i).shut())) {
                places.add(i);
            }
        }
        places.forEach(i -> rows.set(i, spoil(rows.get(i), truth, strong)));
        spoilt.addAll(places);
        return rows.toArray(new Row[0]);
    }
}
