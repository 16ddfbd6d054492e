package org.hosewright.server.api;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hosewright.evidence.calibration.RowCheck;
import org.hosewright.evidence.night.Night;
import org.hosewright.evidence.night.Reading;
import org.hosewright.evidence.night.Ruling;
import org.hosewright.files.readings.ReadingParser;
import org.hosewright.files.readings.ReadingsTable;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.drill.DrillRecord;
import org.hosewright.ledger.drill.DrillRow;
import org.hosewright.ledger.drill.RulingRecord;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.line.NightEngines;
import org.hosewright.ledger.line.NightGear;

/** The rows of a night's table that can be analysed, and those that cannot be read.
 *
 * @param readings in the order of the table; rows still being typed are left out
 * @param rulings by reading id
 * @param troubles what is wrong with a row, by row id
 */
record StandingNight(List<Reading> readings, Map<String, Ruling> rulings, Map<String, InvalidInput> troubles) {

    static StandingNight of(DrillRecord drill, Kit kit) {
        Map<String, InvalidInput> troubles = new LinkedHashMap<>();
        Map<String, Ruling> rulings = new LinkedHashMap<>();
        List<ReadingsTable.Row> good = new ArrayList<>();
        Set<String> names = new HashSet<>();
        NightEngines engines = NightEngines.NONE;
        Night alone = alone(kit, drill, engines);
        for (DrillRow stored : drill.listStanding()) {
            var row = new ReadingsTable.Row(0, stored.cells());
            if (!Cells.complete(row)) {
                continue;
            }
            try {
                Reading reading = ReadingParser.parse(row, kit, "this night");
                NightEngines more = engines.with(reading);
                alone = more.equals(engines) ? alone : alone(kit, drill, more);
                engines = more;
                check(reading, alone, names);
                drill.findRuling(stored.id()).ifPresent(ruling -> rulings.put(reading.id(), ruling(ruling)));
                good.add(row);
            } catch (InvalidInput e) {
                troubles.put(stored.id(), e);
            }
        }
        return new StandingNight(readings(drill, good, kit), rulings, troubles);
    }

    /** The same night, refused where a row of it cannot be read: numbers that are to be used must not pass one over. */
    StandingNight whole() {
        troubles.values().stream().findFirst().ifPresent(trouble -> {
            throw trouble;
        });
        return this;
    }

    /** A row by itself: possible, and under a name of its own. */
    private static void check(Reading reading, Night alone, Set<String> names) {
        RowCheck.check(alone, reading);
        if (!names.add(reading.id())) {
            throw new InvalidInput(
                    "a reading's name given twice", reading.id(), "a name of its own for each reading", "reading");
        }
    }

    private static List<Reading> readings(DrillRecord drill, List<ReadingsTable.Row> good, Kit kit) {
        var table = new ReadingsTable(drill.columns(), good);
        return good.isEmpty() ? List.of() : ReadingParser.parse(table, kit, "this night");
    }

    /** The night without a reading yet. */
    private static Night alone(Kit kit, DrillRecord drill, NightEngines engines) {
        return new Night(List.of(), NightGear.of(kit, Optional.of(drill.date()), engines), Map.of(), kit.units());
    }

    private static Ruling ruling(RulingRecord ruling) {
        return new Ruling(ruling.verdict() == RulingRecord.Verdict.USE, ruling.reason());
    }

    /** The readings before a row, or all where the row is not in the table yet. */
    static DrillRecord before(DrillRecord drill, Optional<String> rowId) {
        List<DrillRow> rows = drill.rows().stream()
                .takeWhile(row -> !rowId.equals(Optional.of(row.id())))
                .toList();
        return new DrillRecord(drill.id(), drill.version(), drill.head(), rows, drill.rulings(), drill.acceptances());
    }
}
