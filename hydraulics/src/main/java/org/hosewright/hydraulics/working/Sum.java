package org.hosewright.hydraulics.working;

import java.util.ArrayList;
import java.util.List;

/** Rows that add up, rounded together.
 *
 * @param rows the parts
 * @param shown each part as shown
 * @param total the sum as shown
 */
record Sum(List<Row> rows, List<String> shown, String total) {
    static Sum of(int decimals, List<Row> rows) {
        Column column = new Column(decimals);
        rows.forEach(row -> column.add(row.value()));
        return new Sum(List.copyOf(rows), column.parts(), column.sum());
    }

    List<Step> steps(String unit) {
        List<Step> steps = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            steps.add(rows.get(i).step(sign(shown.get(i)) + unit));
        }
        return steps;
    }

    Step total(String says, String unit) {
        StringBuilder names = new StringBuilder();
        StringBuilder numbers = new StringBuilder();
        for (int i = 0; i < rows.size(); i++) {
            boolean less = shown.get(i).startsWith("-");
            String link = i == 0 ? (less ? "\u2212" : "") : less ? " \u2212 " : " + ";
            names.append(i == 0 ? "" : " + ").append(rows.get(i).name());
            numbers.append(link).append(less ? shown.get(i).substring(1) : shown.get(i));
        }
        String source = "the parts are rounded so that they add up to the sum";
        return new Step(says, names.toString(), numbers.toString(), sign(total) + unit, source);
    }

    private static String sign(String number) {
        return number.startsWith("-") ? "\u2212" + number.substring(1) : number;
    }
}
