package org.hosewright.ledger.lay;

import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.lay.Lay;
import org.hosewright.hydraulics.lay.LayCautions;
import org.hosewright.hydraulics.lay.LayState;
import org.hosewright.hydraulics.lay.SecondLine;
import org.hosewright.ledger.kit.Kit;

/** What is said of a lay before its numbers, since it decides whether they are to be used: broken limits apart. */
final class BeforeNumbers {
    private final Kit kit;
    private final Laid laid;

    BeforeNumbers(Kit kit, Laid laid) {
        this.kit = kit;
        this.laid = laid;
    }

    /** Water that does not come, piping that nobody knows, hydrant tests past the company's interval, ranges that are left, outlets of which nobody can tell. */
    List<String> list(LayState state, Optional<LocalDate> today) {
        Set<String> says = new LinkedHashSet<>(LayCautions.listMissing(state, kit.units()));
        for (Lay.FromDischarge line : laid.lay().lines()) {
            if (line.discharge().loss().isEmpty()) {
                says.add(sayPiping(line.discharge()));
            }
        }
        laid.tests().stream()
                .filter(test -> isStale(test, today))
                .map(this::sayStale)
                .forEach(says::add);
        says.addAll(new OutsideRange(kit).list(state, laid.engine()));
        for (String shut : SecondLine.listUnknown(laid.lay())) {
            says.add("What " + shut + " does when it opens is not known: nobody has looked up the kind of its outlet.");
        }
        return new ArrayList<>(says);
    }

    private boolean isStale(LocalDate test, Optional<LocalDate> today) {
        return today.isPresent()
                && kit.hydrantTest()
                        .filter(interval -> test.plus(interval).isBefore(today.get()))
                        .isPresent();
    }

    private String sayStale(LocalDate test) {
        long months = kit.hydrantTest().map(Period::toTotalMonths).orElse(0L);
        return "The hydrant's test of " + test + " is older than the company's " + months
                + (months == 1 ? " month" : " months") + ": what it gives today is not known until it is tested again.";
    }

    private static String sayPiping(Discharge discharge) {
        return "The piping of " + discharge.id() + " has never been measured: its loss is missing from every pressure"
                + " here, so that the tips get less than this says.";
    }
}
