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
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.drill.DrillHead;
import org.hosewright.ledger.history.Act;
import org.hosewright.server.setup.Ports;

/** The invented company's kit and its test night, put into a record that is still empty. */
public final class Demo {
    private static final String KIT = "brindle-falls.kit.yaml";
    private static final String NIGHT = "drill-night.readings.csv";
    private static final LocalDate DATE = LocalDate.of(2026, 5, 12);
    private static final Act ACT = new Act("R. Vane, training officer", "example of the invented company");

    private Demo() {}

    /** Whether a record is the invented company's: its first kit was the demonstration's. */
    public static boolean isIn(Ports ports) {
        return ports.kits()
                .findRevision(1)
                .filter(first -> first.why().equals(ACT.why()))
                .isPresent();
    }

    /** Fills an empty record; one that was filled before is completed and otherwise left as it stands.
     *
     * @param where the record's folder or address, for the error
     * @throws InvalidInput the record is a company's own
     */
    public static void fill(Ports ports, String where) {
        boolean night = !ports.drills().listDrills().isEmpty();
        if (ports.kits().findLatest().isEmpty() && !night) {
            ports.kits().save(text(KIT), 0, ACT);
        }
        if (!isIn(ports)) {
            throw new InvalidInput(
                    "record for the demonstration",
                    where,
                    "an empty one; this holds a company's own numbers, which were left as they are",
                    "");
        }
        if (!night) {
            ReadingsTable table = ReadingsFile.read(text(NIGHT), NIGHT);
            List<Map<String, String>> rows =
                    table.rows().stream().map(ReadingsTable.Row::cells).toList();
            ports.drills().create(new DrillHead("Drill night", DATE, table.columns()), rows, ACT);
        }
        DemoGround.fill(ports.leaves(), ACT);
        DemoExchange.fill(ports.leaves(), ACT);
    }

    static String text(String example) {
        return new String(bytes(example), StandardCharsets.UTF_8);
    }

    static byte[] bytes(String example) {
        try (InputStream in = Demo.class.getResourceAsStream("examples/" + example)) {
            if (in == null) {
                throw new IllegalStateException("The program was built without its example " + example + ".");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
