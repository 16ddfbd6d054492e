package org.hosewright.evidence.pool;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.hosewright.evidence.fault.Hearing;
import org.hosewright.evidence.fault.Sense;
import org.hosewright.evidence.joint.Role;
import org.hosewright.evidence.joint.Survey;
import org.hosewright.evidence.joint.Unknown;
import org.hosewright.evidence.joint.Worth;
import org.hosewright.evidence.night.Night;

/** A test night among others: what its readings say of all that it had to do with. */
public final class PoolNight {
    private final String id;
    private final double year;
    private final Optional<Worth> worth;
    private final Map<String, String> eras;
    private final String leftOut;

    private PoolNight(String id, double year, Optional<Worth> worth, Map<String, String> eras, String leftOut) {
        this.id = id;
        this.year = year;
        this.worth = worth;
        this.eras = Collections.unmodifiableMap(new LinkedHashMap<>(eras));
        this.leftOut = leftOut;
    }

    /** A night whose worth is known. */
    PoolNight(String id, double year, Worth worth, Map<String, String> eras) {
        this(id, year, Optional.of(worth), eras, "");
    }

    /** A night heard: readings that speak against each other are set aside, and one that makes no sense as a whole says nothing.
     *
     * @param id its name
     * @param year when, in years
     * @param eras by id of an instrument: under which name its error is one with that of other nights (between two calibrations);
     *     one that is not here shares its error with no other night; by id of a discharge or nozzle, its name where that differs
     * @throws org.hosewright.hydraulics.error.InvalidInput a reading is impossible
     */
    public static PoolNight of(String id, double year, Night night, Map<String, String> eras) {
        Survey survey = Survey.of(night);
        if (night.readings().stream().allMatch(reading -> reading.laid().shut())) {
            return new PoolNight(id, year, Optional.empty(), eras, "it has no reading with the nozzle open");
        }
        Hearing hearing = Hearing.of(survey);
        Optional<String> objection = new Sense(survey, hearing).findObjection();
        return objection.isPresent()
                ? new PoolNight(id, year, Optional.empty(), eras, objection.get())
                : new PoolNight(id, year, Worth.of(hearing.fit()), eras);
    }

    public String id() {
        return id;
    }

    /** When, in years. */
    public double year() {
        return year;
    }

    /** Why it says nothing; empty where it does. */
    public String leftOut() {
        return leftOut;
    }

    /** What its readings say of its unknowns; absent where it says nothing. */
    Optional<Worth> worth() {
        return worth;
    }

    /** The name that an unknown of the night is shared under; absent where it is the night's own. */
    Optional<String> findShared(Unknown unknown) {
        return unknown.role() == Role.PIPING || unknown.role() == Role.NOZZLE
                ? Optional.of(eras.getOrDefault(unknown.id(), unknown.id()))
                : Optional.ofNullable(eras.get(unknown.id()));
    }
}
