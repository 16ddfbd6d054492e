package org.hosewright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hosewright.ledger.drill.DrillChange;
import org.hosewright.ledger.drill.DrillHead;
import org.hosewright.ledger.drill.DrillRecord;
import org.hosewright.ledger.drill.DrillSaving;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.kit.KitRevision;
import org.hosewright.ledger.kit.KitSaving;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A store under test, fresh for each test and sound after it, whichever database it stands on. */
abstract class StoreCase {
    static final Instant NOW = Instant.parse("2026-05-12T23:04:05.006Z");
    static final Act TYPING = new Act("Training officer", "");
    static final DrillHead HEAD =
            new DrillHead("May flow test", LocalDate.of(2026, 5, 12), List.of("reading", "pump [psi]", "tip [psi]"));

    @TempDir
    Path folder;

    Store store;

    /** Opens the store under test; the same one each time within a test. */
    abstract Store open(Clock clock);

    @BeforeEach
    void openFirst() {
        store = open(Clock.fixed(NOW.plusNanos(789), ZoneOffset.UTC));
    }

    @AfterEach
    void isSoundInTheEnd() {
        assertThat(store.check()).isEmpty();
        assertThat(store.history().audit().broken()).isEmpty();
        store.close();
    }

    static Map<String, String> cells(String reading, String pump, String tip) {
        var cells = new LinkedHashMap<String, String>();
        cells.put("tip [psi]", tip);
        cells.put("reading", reading);
        cells.put("pump [psi]", pump);
        return cells;
    }

    DrillRecord change(DrillRecord drill, DrillChange... changes) {
        return saved(store.drills().change(drill.id(), List.of(changes), TYPING));
    }

    static DrillRecord saved(DrillSaving saving) {
        assertThat(saving).isInstanceOf(DrillSaving.Saved.class);
        return ((DrillSaving.Saved) saving).drill();
    }

    static KitRevision saved(KitSaving saving) {
        assertThat(saving).isInstanceOf(KitSaving.Saved.class);
        return ((KitSaving.Saved) saving).revision();
    }
}
