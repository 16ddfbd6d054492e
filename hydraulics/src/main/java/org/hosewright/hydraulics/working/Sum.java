package org.hosewright.hydraulics.working;

import java.util.ArrayList;
import java.util.List;

/** Rows that add up, or that are taken from the first, rounded together.
 *
 * @param rows the parts
 * @param link the sign between their names
 * @param shown each part as shown, with the sign that it has in the sum
 * @param total the sum as shown
 */
record Sum(List<Row> rows, String link, List<String> shown, String total) {
    private static final String SOURCE = "the parts are rounded so that they add up";

    /** All rows added. */
    static Sum of(int decimals, List<Row> rows) {
        Column column = new Column(decimals);
        rows.forEach(row -> column.add(row.value()));
        return new Sum(List.copyOf(rows), " + ", column.parts(), column.sum());
    }

    /** The first row less all others. */
    static Sum ofRest(int decimals, List<Row> rows) {
        Column column = new Column(decimals);
        column.add(rows.get(0).value());
        rows.subList(1, rows.size()).forEach(row -> column.add(-row.value()));
        return new Sum(List.copyOf(rows), " \u2212 ", column.parts(), column.sum());
    }

    /** Each row as a step with its own part for a result. */
    List<Step> steps(String unit) {
        List<Step> steps = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            boolean turned = i > 0 && !link.equals(" + ");
            steps.add(rows.get(i).step(written(turned ? turned(shown.get(i)) : shown.get(i)) + unit));
        }
        return steps;
    }

    /** The sum itself as a step. */
    Step total(String says, String unit) {
        StringBuilder names = new StringBuilder();
        StringBuilder numbers = new StringBuilder();
        for (int i = 0; i < rows.size(); i++) {
            String part = shown.get(i);
            String sign = part.startsWith("-") ? " \u2212 " : " + ";
            names.append(i == 0 ? "" : link).append(rows.get(i).name());
            numbers.append(i == 0 ? written(part) : sign + (part.startsWith("-") ? part.substring(1) : part));
        }
        return new Step(says, names.toString(), numbers.toString(), written(total) + unit, SOURCE);
    }

    private static String turned(String number) {
        return isZero(number) ? number : number.startsWith("-") ? number.substring(1) : "-" + number;
    }

    private static boolean isZero(String number) {
        for (int i = 0; i < number.length(); i++) {
            if (number.charAt(i) >= '1' && number.charAt(i) <= '9') {
                return false;
            }
        }
        return true;
    }

    private static String written(String number) {
        return number.startsWith("-") ? "\u2212" + number.substring(1) : number;
    }
}
