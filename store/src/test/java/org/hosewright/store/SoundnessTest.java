package org.hosewright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.DriverManager;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.hosewright.ledger.drill.DrillChange;
import org.hosewright.ledger.drill.DrillHead;
import org.hosewright.ledger.drill.DrillRecord;
import org.hosewright.ledger.drill.Drills.Seen;
import org.hosewright.ledger.drill.RulingRecord.Verdict;
import org.hosewright.ledger.history.Act;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each rule of the store's check finds what it is there for. */
final class SoundnessTest {
    private static final Act ACT = new Act("Chief", "");

    @TempDir
    Path folder;

    @BeforeEach
    void fill() {
        try (Store store = Store.open(folder)) {
            store.kits().save("kit", 0, ACT);
            store.kits().save("kit", 1, ACT);
            var head = new DrillHead("May", LocalDate.of(2026, 5, 12), List.of("pump"));
            DrillRecord drill = store.drills().create(head, List.of(Map.of("pump", "1"), Map.of("pump", "2")), ACT);
            String row = drill.rows().get(0).id();
            var changes = List.<DrillChange>of(
                    new DrillChange.EditRow(row, 1, Map.of("pump", "3")),
                    new DrillChange.Rule(row, 1, Verdict.USE, "sure"));
            store.drills().change(drill.id(), changes, ACT);
            store.drills().accept(new Seen(drill.id(), 2), "kit", 2, ACT);
            assertThat(store.check()).isEmpty();
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            delete from history where entry = 4 | entries missing from the history
            update history_head set last = 7 | entries missing from the history
            delete from kit_revision where version = 1 | kit versions missing: 1
            update drill set version = 4 | drills whose version is not the number of acts on them: 1
            delete from drill_head | drills with a head missing: 1
            delete from drill_row_revision where version = 2 | rows with a revision missing or too many: 1
            update drill_row set version = 1 | rows with a revision missing or too many: 1
            delete from drill_row where place = 1 | rows out of place: 1
            update ruling set entry = 99 | records without their history entry: 1
            update kit_revision set entry = 1 where version = 3 | acceptances into a kit that another act saved: 1
            """)
    void brokenRuleIsFoundHolds(String damage, String finding) throws Exception {
        try (var connection = DriverManager.getConnection("jdbc:sqlite:" + Sqlite.file(folder));
                var statement = connection.createStatement()) {
            statement.execute(damage);
        }
        try (Store store = Store.open(folder)) {
            assertThat(store.check()).anyMatch(line -> line.startsWith(finding));
        }
    }
}
