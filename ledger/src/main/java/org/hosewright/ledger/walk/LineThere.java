package org.hosewright.ledger.walk;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import org.hosewright.hydraulics.limit.Limit;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Pressure;

/** A package's line when its tip stands at a mark.
 *
 * @param pump pump pressure that it needs there, with what the losses and the rise leave open
 * @param ordered what is ordered at this length, on the panel gauge, where there is an order
 * @param flow flow at the tip: at the ordered pressure where there is one, else at the needed one
 * @param first the limit that is used most at the needed pressure, taken as high as it may be with 95 % confidence;
 *     absent where nothing has a figure
 * @param asOrdered the limit that is used most at the ordered pressure; absent where nothing is ordered
 * @param fit false where a hose of the line belongs out of service
 */
public record LineThere(
        Known<Pressure> pump,
        Optional<Pressure> ordered,
        Known<Flow> flow,
        Optional<Limit> first,
        Optional<Limit> asOrdered,
        boolean fit) {

    /** True where limits are known and none is broken at the needed pressure, with 95 % confidence. */
    public boolean isSafe() {
        return fit && first.isPresent() && !first.get().broken();
    }

    /** True where what is ordered breaks a limit here: it is ordered for another length. */
    public boolean isBrokenAsOrdered() {
        return asOrdered.isPresent() && asOrdered.get().broken();
    }

    /** True where neither what is needed nor what is ordered breaks a limit. */
    public boolean isSafeAsOrdered() {
        return isSafe() && !isBrokenAsOrdered();
    }

    /** The limit used most at either pressure. */
    public Optional<Limit> tightest() {
        return Stream.concat(first.stream(), asOrdered.stream()).max(Comparator.comparingDouble(Limit::used));
    }
}
