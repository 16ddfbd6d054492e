package org.hosewright.files.relays;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.hosewright.evidence.trial.Measure;
import org.hosewright.evidence.trial.Relay;
import org.hosewright.files.readings.ReadingsFile;
import org.hosewright.files.readings.ReadingsTable;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.QuantityText;
import org.hosewright.hydraulics.quantity.Unit;

/** The re-lays of a trial: rows of one label and one lay are the readings of one charge.
 *
 * @param measure what was measured
 * @param relays in the order of the file
 */
public record RelaysFile(Measure measure, List<Relay> relays) {
    private static final String LABEL = "label";
    private static final String LAY = "lay";
    private static final Map<String, Unit> LOSS = Map.of("loss [psi]", Unit.PSI, "loss [kPa]", Unit.KPA);
    private static final Map<String, Unit> FLOW = Map.of("flow [gpm]", Unit.GPM, "flow [L/min]", Unit.L_MIN);

    public RelaysFile {
        relays = List.copyOf(relays);
    }

    /** The re-lays of a CSV file with the heads label, lay, and one of loss [psi], loss [kPa], flow [gpm], flow [L/min].
     *
     * @param source the file's name, for error messages
     * @throws InvalidInput a head or a cell is missing, or a number is none
     */
    public static RelaysFile read(String csv, String source) {
        ReadingsTable table = ReadingsFile.read(csv, source);
        String column = column(table, source);
        Unit unit = Objects.requireNonNull(LOSS.getOrDefault(column, FLOW.get(column)), column);
        Map<String, List<Double>> values = new LinkedHashMap<>();
        Map<String, String> labels = new LinkedHashMap<>();
        for (ReadingsTable.Row row : table.rows()) {
            String where = source + ", line " + row.line();
            String label = cell(row, LABEL, where);
            String lay = label + "|" + cell(row, LAY, where);
            labels.put(lay, label);
            values.computeIfAbsent(lay, any -> new ArrayList<>()).add(number(unit, cell(row, column, where), where));
        }
        List<Relay> relays = new ArrayList<>();
        values.forEach((lay, read) -> relays.add(new Relay(labels.getOrDefault(lay, lay), read)));
        return new RelaysFile(LOSS.containsKey(column) ? Measure.LOSS : Measure.FLOW, relays);
    }

    private static String column(ReadingsTable table, String source) {
        List<String> found = table.columns().stream()
                .filter(head -> LOSS.containsKey(head) || FLOW.containsKey(head))
                .toList();
        if (found.size() != 1) {
            String allowed = "exactly one of loss [psi], loss [kPa], flow [gpm], flow [L/min]";
            throw new InvalidInput("measured columns", String.join(", ", found), allowed, source);
        }
        return found.get(0);
    }

    private static String cell(ReadingsTable.Row row, String column, String where) {
        String text = row.cell(column);
        if (text.isEmpty()) {
            throw new InvalidInput(column, "", "a word or a number in every row", where);
        }
        return text;
    }

    private static double number(Unit unit, String text, String where) {
        try {
            return QuantityText.parse(unit, text).si();
        } catch (InvalidInput refused) {
            throw refused.at(where);
        }
    }
}
