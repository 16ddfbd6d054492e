package org.hosewright.evidence.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.hosewright.evidence.calibration.NightWriter.Row;
import org.junit.jupiter.api.Test;

/** A library of planted faults: each kind weak and strong in two nights, beside clean nights; none may be absorbed silently. */
class PlantedFaultsTest {
    private static final long FIRST_SEED = 41;
    private static final int NIGHTS = 2;
    private static final int CLEAN_NIGHTS = 12;
    private static final double MOST_ACCUSED = 0.02;

    private final Map<Planted, Map<String, Integer>> confusion = new EnumMap<>(Planted.class);
    private final List<String> wrong = new ArrayList<>();
    private int clean;
    private int accused;

    @Test
    void plantedFaultsAreNamedOrLeftOpenHolds() {
        for (Planted planted : Planted.values()) {
            for (Truth truth : nights(FIRST_SEED, NIGHTS)) {
                plant(planted, truth, false);
                plant(planted, truth, true);
            }
        }
        for (Truth truth : nights(FIRST_SEED, CLEAN_NIGHTS)) {
            count(Calibration.of(truth.night()), Set.of());
        }
        confusion.forEach((planted, found) -> System.out.println(planted + " (" + planted.kind() + "): " + found));
        System.out.println("first seed " + FIRST_SEED + ", clean readings accused: " + accused + " of " + clean);
        assertThat(wrong).isEmpty();
        assertThat(accused).isLessThanOrEqualTo((int) (MOST_ACCUSED * clean));
    }

    /** Nights with a meter, at least eight open readings on three lengths, and scatter as instruments usually have it. */
    static List<Truth> nights(long first, int count) {
        List<Truth> nights = new ArrayList<>();
        for (long seed = first; nights.size() < count; seed++) {
            Truth truth = new Truth(seed);
            boolean usual = truth.pumpScatter < 1.5 && truth.tipScatter < 0.75 && truth.meterScatter < 0.02;
            if (usual && truth.metered && open(truth) >= 8 && truth.lengths.size() >= 3) {
                nights.add(truth);
            }
        }
        return nights;
    }

    private static long open(Truth truth) {
        return truth.rows.stream().filter(row -> !row.shut()).count();
    }

    private void plant(Planted planted, Truth truth, boolean strong) {
        int at = planted.at(truth);
        Set<Integer> spoilt = new TreeSet<>();
        Row[] rows = planted.rows(truth, at, strong, spoilt);
        Calibration night = Calibration.of(truth.gear().rows(rows).night());
        count(night, spoilt);
        Judged judged = night.readings().get(at);
        Finding finding = judged.finding();
        FindingKind kind = planted.kind();
        boolean named = finding.kind() == kind;
        boolean open = finding.also().contains(kind);
        confusion
                .computeIfAbsent(planted, any -> new TreeMap<>())
                .merge(finding.kind() + (open ? " (open)" : ""), 1, Integer::sum);
        boolean must = planted.isTellable() && strong;
        if ((!named && !open) || (must && !named) || judged.used()) {
            wrong.add(planted + (strong ? " strongly" : " weakly") + " in " + judged.reading() + ": " + finding);
        }
    }

    private void count(Calibration night, Set<Integer> spoilt) {
        for (int i = 0; i < night.readings().size(); i++) {
            if (!spoilt.contains(i)) {
                clean++;
                accused += night.readings().get(i).finding().kind() == FindingKind.NONE ? 0 : 1;
            }
        }
    }
}
