package org.hosewright.cli.record;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.Objects;
import org.hosewright.files.kit.KitDocument;
import org.hosewright.files.plain.PlainText;
import org.hosewright.files.readings.ReadingsFile;
import org.hosewright.files.readings.ReadingsTable;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.drill.DrillHead;
import org.hosewright.ledger.history.Act;
import org.hosewright.store.Store;

/** The invented company: its kit and one test night, put into an empty record. */
public final class Demo {
    private static final Act ACT = new Act("demo", "an invented company, for showing");
    private static final String KIT = "drill-night.kit.yaml";
    private static final String READINGS = "drill-night.readings.csv";
    private static final LocalDate NIGHT = LocalDate.of(2026, 5, 12);

    private Demo() {}

    /** Whether a record is the invented company's: the demo saved its first kit. */
    public static boolean isIn(Store store) {
        return store.kits()
                .findRevision(1)
                .filter(first -> first.who().equals(ACT.who()))
                .isPresent();
    }

    /** Fills an empty record; one that the demo filled before is completed and otherwise left as it stands.
     *
     * @throws InvalidInput the record is a real company's
     */
    public static void fill(Store store) {
        if (store.kits().findLatest().isEmpty() && store.drills().listDrills().isEmpty()) {
            String kit = text(KIT, PlainText.YAML_LIMIT);
            store.kits().save(KitDocument.of(kit, KIT).text(), 0, ACT);
        }
        if (!isIn(store)) {
            throw new InvalidInput(
                    "folder for the demo",
                    store.where(),
                    "an empty folder; this one holds a company's own record, which was left as it is",
                    "--data");
        }
        if (store.drills().listDrills().isEmpty()) {
            var table = ReadingsFile.read(text(READINGS, PlainText.CSV_LIMIT), READINGS);
            var rows = table.rows().stream().map(ReadingsTable.Row::cells).toList();
            store.drills().create(new DrillHead("drill-night", NIGHT, table.columns()), rows, ACT);
        }
    }

    private static String text(String name, int limit_bytes) {
        try (InputStream stream = Objects.requireNonNull(Demo.class.getResourceAsStream(name), name)) {
            return PlainText.read(stream, limit_bytes, name);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
