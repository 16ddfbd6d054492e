package org.hosewright.server;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.hosewright.files.readings.ReadingsFile;
import org.hosewright.files.readings.ReadingsTable;
import org.hosewright.ledger.drill.DrillHead;
import org.hosewright.ledger.history.Act;

/** The invented company's kit and its test night, put into a record that is still empty. */
public final class Demo {
    private static final String KIT = "brindle-falls.kit.yaml";
    private static final String NIGHT = "drill-night.readings.csv";
    private static final LocalDate DATE = LocalDate.of(2026, 5, 12);
    private static final Act ACT = new Act("R. Vane, training officer", "example of the invented company");

    private Demo() {}

    /** Fills an empty record.
     *
     * @return true where it was empty
     */
    public static boolean fill(Ports ports) {
        if (ports.kits().findLatest().isPresent() || !ports.drills().listDrills().isEmpty()) {
            return false;
        }
        ports.kits().save(text(KIT), 0, ACT);
        ReadingsTable table = ReadingsFile.read(text(NIGHT), NIGHT);
        List<Map<String, String>> rows =
                table.rows().stream().map(ReadingsTable.Row::cells).toList();
        ports.drills().create(new DrillHead("Drill night", DATE, table.columns()), rows, ACT);
        return true;
    }

    private static String text(String example) {
        try (InputStream in = Demo.class.getResourceAsStream("examples/" + example)) {
            if (in == null) {
                throw new IllegalStateException("The program was built without its example " + example + ".");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
