package org.hosewright.ledger.stretch;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import org.hosewright.hydraulics.limit.Limit;
import org.hosewright.hydraulics.limit.RatedCurve;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.line.KitLines;

/** The pump with a second line beside the stretch, each from a discharge of its own: the higher one sets it.
 *
 * @param named the second line's package, at its whole length on the same rise
 * @param pump pump pressure for both
 * @param gated how much the other line's discharge is gated down
 * @param gate the discharge that is gated
 * @param flow of both
 * @param first the limit of either line that is used most at the pump pressure for both, taken as high as it may be with
 *     95 % confidence: behind a gate that is part shut the hose sees all of it once its nozzle is shut; absent where
 *     nothing has a figure
 * @param enough false where the pump's rated capacity at that pressure does not cover both; true where it has no rating
 */
public record SecondLine(
        HosePackage named,
        Pressure pump,
        Pressure gated,
        String gate,
        Flow flow,
        Optional<Limit> first,
        boolean enough) {

    /** True where limits are known and none is broken, with 95 % confidence. */
    public boolean isSafe() {
        return first.isPresent() && !first.get().broken();
    }

    /** The stretch that it lies beside.
     *
     * @param of its package
     * @param line as it lies
     */
    record First(HosePackage of, Line line) {}

    /** A second line beside a stretch; absent where both hang on one discharge: that is a lay, not two lines.
     *
     * @param first the stretch, which pumps by its duty
     * @param rise of both
     */
    static Optional<SecondLine> find(Kit kit, First first, HosePackage second, Length rise, Optional<LocalDate> today) {
        HosePackage of = first.of();
        if (second.engine().equals(of.engine()) && second.discharge().equals(of.discharge())) {
            return Optional.empty();
        }
        OnePump one = OnePump.of(kit, of, first.line(), today);
        OnePump other = OnePump.of(kit, second, KitLines.of(kit, second, rise), today);
        boolean higher = other.pump().pascals() > one.pump().pascals();
        Pressure pump = higher ? other.pump() : one.pump();
        Pressure less = higher ? one.pump() : other.pump();
        Pressure most = new Pressure(Math.max(one.high().pascals(), other.high().pascals()));
        Flow both = new Flow(one.flow().cubicMetresPerSecond() + other.flow().cubicMetresPerSecond());
        return Optional.of(new SecondLine(
                second,
                pump,
                new Pressure(pump.pascals() - less.pascals()),
                higher ? of.discharge() : second.discharge(),
                both,
                Stream.concat(one.limitsAt(most), other.limitsAt(most)).max(Comparator.comparingDouble(Limit::used)),
                isEnough(one, pump, both)));
    }

    private static boolean isEnough(OnePump one, Pressure pump, Flow both) {
        return one.bounds()
                .rated()
                .map(rated ->
                        new RatedCurve(rated).capacity(pump).cubicMetresPerSecond() >= both.cubicMetresPerSecond())
                .orElse(true);
    }
}
