package org.hosewright.hydraulics.method;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.PointLoss;

/** Lines laid side by side between the same two ends, as one hose that carries the whole flow.
 *
 * @source the handbook's table of siamesed lines (two 2 1/2 in C 0.5, three 0.22: City of Renton hose sheet), which one
 *     formula gives: C = 1 / (sum of 1 / sqrt(C))^2, from equal loss in each
 * @validFor lines that part and meet at the same two places; no loss in the fittings
 */
public final class ParallelLines {
    private ParallelLines() {}

    /** The loss of lines of one length, taken at the whole flow. */
    public static HoseLoss of(List<HoseLoss> lines) {
        return new HoseLoss(together(lines.stream().map(HoseLoss::r).toList()));
    }

    /** The loss of lines of different lengths, taken at the whole flow.
     *
     * @param losses loss of each line
     * @param lengths length of each line, in the same order
     */
    public static PointLoss of(List<HoseLoss> losses, List<Length> lengths) {
        if (losses.size() != lengths.size()) {
            throw new InvalidInput("lengths of parallel lines", String.valueOf(lengths.size()), "as many as lines", "");
        }
        List<Double> each = new ArrayList<>();
        for (int i = 0; i < losses.size(); i++) {
            each.add(losses.get(i).r()
                    * Numbers.requirePositive("length of a line", lengths.get(i).metres()));
        }
        return new PointLoss(together(each));
    }

    private static double together(List<Double> resistances) {
        if (resistances.isEmpty()) {
            throw new InvalidInput("parallel lines", "", "one line or more", "");
        }
        double sum = 0;
        for (double resistance : resistances) {
            sum += 1 / Math.sqrt(Numbers.requirePositive("loss of a line", resistance));
        }
        return 1 / (sum * sum);
    }
}
