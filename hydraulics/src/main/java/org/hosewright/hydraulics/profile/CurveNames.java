package org.hosewright.hydraulics.profile;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.UnitSystem;

/** The names of curves with how far each is safe: a column at their right ends, or lines above the plot.
 *
 * <p>They stand in the order of the curves, so that the highest curve has the highest name.
 */
final class CurveNames {
    /** From baseline to baseline [em]. */
    private static final double LINE_em = 1.25;

    private final List<String> names;
    private final double em;
    private final double width;
    private final boolean above;

    private CurveNames(List<String> names, double em, double width, boolean above) {
        this.names = names;
        this.em = em;
        this.width = width;
        this.above = above;
    }

    static CurveNames of(ReachDrawing reach, Sheet sheet, double axisWidth) {
        List<String> names = new ArrayList<>();
        double width = 0;
        for (ReachCurve curve : reach.curves()) {
            String safe = curve.longestSafe()
                    .map(length -> safe(length, reach.units()))
                    .orElse("");
            boolean both = !curve.label().isEmpty() && !safe.isEmpty();
            String name = curve.label() + (both ? ", " : "") + safe;
            names.add(name);
            width = Math.max(width, Lettering.width(Role.CURVE, name, sheet.type()));
        }
        double left = sheet.width() - axisWidth - width - 2 * Layout.GAP_em * sheet.type();
        return new CurveNames(names, sheet.type(), width, left < Layout.PLOT_SHARE * sheet.width());
    }

    private static String safe(Length length, UnitSystem units) {
        return length.metres() > 0 ? "safe to " + QuantityShown.of(units).text(length) : "no length is safe";
    }

    /** Width of the column at the right; 0 where the names stand above. */
    double column() {
        return above || width == 0 ? 0 : width + Layout.GAP_em * em;
    }

    /** Height of the lines above; 0 where the names stand at the right. */
    double head() {
        return above ? (names.size() * LINE_em + Lettering.DESCENT) * em : 0;
    }

    void set(Pen pen, Plot plot, List<Curve> curves) {
        List<Integer> highestFirst = highestFirst(curves);
        double x = above ? plot.left() : plot.right() + Layout.GAP_em * em;
        double y = above ? Lettering.ASCENT * em : first(plot, curves, highestFirst);
        for (int index : highestFirst) {
            pen.set(pen.small(Role.CURVE, x, y, Anchor.START, names.get(index)));
            y += LINE_em * em;
        }
    }

    private List<Integer> highestFirst(List<Curve> curves) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < curves.size(); i++) {
            order.add(i);
        }
        order.sort((a, b) ->
                Double.compare(curves.get(b).lastPressure_Pa(), curves.get(a).lastPressure_Pa()));
        return order;
    }

    /** The first baseline of the column, so that it stands about the curves' ends. */
    private double first(Plot plot, List<Curve> curves, List<Integer> order) {
        double sum = 0;
        for (Curve curve : curves) {
            sum += Math.max(plot.top(), curve.end().y());
        }
        double middle = sum / curves.size() + (Lettering.ASCENT - Lettering.DESCENT) / 2 * em;
        double first = middle - (order.size() - 1) * LINE_em * em / 2;
        return Math.max(Lettering.ASCENT * em, first);
    }
}
