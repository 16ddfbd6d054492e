package org.hosewright.ledger.exchange;

import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.UnitSystem;

/** All that a company hands to its neighbours at one moment; a later one takes its place.
 *
 * @param company whose it is
 * @param units the units of its figures
 * @param issued when it was made, to the second
 * @param until the last day that it is to be used
 * @param order what its figures are of; empty where it is a withdrawal
 * @param packages what is handed over; empty where it is a withdrawal
 * @param withdrawn why what was handed over before is not to be used any more; empty for a handover of packages
 */
public record Handover(
        String company,
        UnitSystem units,
        Instant issued,
        LocalDate until,
        Optional<HandedOrder> order,
        List<HandedPackage> packages,
        String withdrawn) {
    /** More packages than any neighbour can use. */
    public static final int MOST = 100;

    public Handover {
        packages = List.copyOf(packages);
        boolean gives = order.isPresent() && !packages.isEmpty() && packages.size() <= MOST;
        boolean takesBack = order.isEmpty() && packages.isEmpty();
        if (company.isBlank()
                || !issued.equals(issued.truncatedTo(ChronoUnit.SECONDS))
                || !(withdrawn.isBlank() ? gives : takesBack)) {
            throw new InvalidInput(
                    "file of a company",
                    company.isBlank() ? "nobody's" : company,
                    "1 to " + MOST + " packages with the order they are of, or a withdrawal with its reason",
                    "");
        }
        Set<String> names = new HashSet<>();
        packages.stream().filter(one -> !names.add(one.name())).findFirst().ifPresent(twice -> {
            throw new InvalidInput("package", twice.name(), "each package once", "");
        });
    }

    public boolean isWithdrawal() {
        return !withdrawn.isBlank();
    }

    /** True once its last day is over. */
    public boolean ranOut(LocalDate today) {
        return today.isAfter(until);
    }

    public Optional<HandedPackage> find(String name) {
        return packages.stream().filter(one -> one.name().equals(name)).findFirst();
    }
}
