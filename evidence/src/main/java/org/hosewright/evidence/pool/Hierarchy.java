package org.hosewright.evidence.pool;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.hosewright.evidence.joint.Role;
import org.hosewright.evidence.joint.Unknown;
import org.hosewright.evidence.joint.Worth;

/** All nights as one linear problem: batches within types, what each night found of a batch, change over years, instruments.
 *
 * <p>The logarithm of a hose's loss, less that of the type's belief, is: the type's, and the batch's departure from it (one spread), and
 * the change since (years back from the last night; a batch's age against its type's mean age), and the night's departure (the other
 * spread).
 */
final class Hierarchy {
    static final int BATCHES = 0;
    static final int NIGHTS = 1;

    private final Map<String, HoseType> types = new LinkedHashMap<>();
    private final Map<String, Batch> batches = new LinkedHashMap<>();
    private final List<PoolNight> nights;
    private final double year;
    private final Places places = new Places();
    private final Set<String> flown = new LinkedHashSet<>();
    private final Map<Integer, List<Integer>> nightsOf = new LinkedHashMap<>();
    private final List<Equation> equations = new ArrayList<>();

    /** The problem of nights that all say something; at least one.
     *
     * @param nights the nights, the last by date at any place
     */
    Hierarchy(List<HoseType> types, List<Batch> batches, List<PoolNight> nights) {
        types.forEach(type -> this.types.put(type.id(), type));
        batches.forEach(batch -> this.batches.put(batch.id(), batch));
        this.nights = List.copyOf(nights);
        year = nights.stream().mapToDouble(PoolNight::year).max().orElseThrow();
        for (int night = 0; night < nights.size(); night++) {
            meet(night);
        }
        for (int night = 0; night < nights.size(); night++) {
            addNight(night);
        }
        addBeliefs();
    }

    Mixed problem() {
        return new Mixed(places.size(), 2, equations);
    }

    Places places() {
        return places;
    }

    List<PoolNight> nights() {
        return nights;
    }

    /** The last night's. */
    double year() {
        return year;
    }

    HoseType type(String id) {
        HoseType type = types.get(id);
        if (type == null) {
            throw new IllegalArgumentException("no such type of hose: " + id);
        }
        return type;
    }

    Batch batch(String id) {
        Batch batch = batches.get(id);
        if (batch == null) {
            throw new IllegalArgumentException("no such batch of hose: " + id);
        }
        return batch;
    }

    /** The batches of a type that were flown. */
    List<Batch> listFlown(String type) {
        return flown.stream()
                .map(this::batch)
                .filter(batch -> batch.type().equals(type))
                .toList();
    }

    /** The types that were flown. */
    List<HoseType> listTypes() {
        return types.values().stream()
                .filter(type -> !listFlown(type.id()).isEmpty())
                .toList();
    }

    /** The nights that an unknown carries to others: that flew a batch, used an instrument, or flew a type before the last night. */
    List<Integer> listNightsAt(int unknown) {
        return nightsOf.getOrDefault(unknown, List.of());
    }

    private Worth worth(int night) {
        return nights.get(night).worth().orElseThrow();
    }

    private List<Unknown> unknowns(int night) {
        return worth(night).unknowns().list();
    }

    private void meet(int night) {
        for (Unknown unknown : unknowns(night)) {
            if (unknown.role() != Role.HOSE) {
                Optional<String> shared = nights.get(night).findShared(unknown);
                String name = Places.name(nights.get(night), night, unknown);
                places.meet(name, shared, unknown);
                carry(places.place(name), night);
            } else {
                flown.add(unknown.id());
                carry(places.batch(unknown.id()), night);
                if (nights.get(night).year() < year) {
                    carry(places.drift(batch(unknown.id()).type()), night);
                }
            }
        }
    }

    private void carry(int unknown, int night) {
        List<Integer> its = nightsOf.computeIfAbsent(unknown, any -> new ArrayList<>());
        if (its.isEmpty() || its.get(its.size() - 1) < night) {
            its.add(night);
        }
    }

    private void addNight(int night) {
        List<Unknown> unknowns = unknowns(night);
        int[] at = new int[unknowns.size()];
        double[] factors = new double[at.length];
        double[] starts = new double[at.length];
        for (int j = 0; j < at.length; j++) {
            Unknown unknown = unknowns.get(j);
            boolean hose = unknown.role() == Role.HOSE;
            String name = Places.name(nights.get(night), night, unknown);
            Unknown meant = hose ? believed(unknown.id()) : places.shared(name);
            at[j] = hose ? places.flown(unknown.id(), night) : places.place(name);
            factors[j] = (hose ? 1 : meant.deviation()) / unknown.deviation();
            starts[j] = (origin(meant) - origin(unknown)) / unknown.deviation();
            if (hose) {
                addFlown(unknown.id(), night);
            }
        }
        addRows(night, at, factors, starts);
    }

    private void addRows(int night, int[] at, double[] factors, double[] starts) {
        Worth worth = worth(night);
        for (int row = 0; row < worth.size(); row++) {
            double constant = worth.residual(row);
            double[] slopes = new double[at.length];
            for (int j = 0; j < at.length; j++) {
                slopes[j] = worth.slope(row, j) * factors[j];
                constant += worth.slope(row, j) * starts[j];
            }
            equations.add(new Equation(Owner.night(night), Equation.KNOWN, constant, at, slopes));
        }
    }

    /** The belief in a batch's loss as an unknown of a night would have it. */
    private Unknown believed(String batch) {
        HoseType type = type(batch(batch).type());
        return new Unknown(Role.HOSE, batch, type.loss().r(), type.deviation());
    }

    private static double origin(Unknown unknown) {
        return unknown.role().isLogarithmic() ? Math.log(unknown.centre()) : unknown.centre();
    }

    private void addFlown(String batch, int night) {
        String type = batch(batch).type();
        int[] at = {places.flown(batch, night), places.batch(batch), places.drift(type)};
        double back = nights.get(night).year() - year;
        equations.add(new Equation(Owner.night(night), NIGHTS, 0, at, new double[] {1, -1, -back}));
    }

    private void addBeliefs() {
        for (HoseType type : listTypes()) {
            belief(Owner.BELIEF, places.type(type.id()), type.deviation());
            belief(Owner.link(places.drift(type.id())), places.drift(type.id()), PoolPriors.DRIFT);
            List<Batch> its = listFlown(type.id());
            OptionalDouble made =
                    its.stream().flatMapToDouble(batch -> batch.made().stream()).average();
            for (Batch batch : its) {
                double older = batch.made().isPresent()
                        ? made.orElseThrow() - batch.made().getAsDouble()
                        : 0;
                int[] at = {places.batch(batch.id()), places.type(type.id()), places.drift(type.id())};
                Owner owner = Owner.link(places.batch(batch.id()));
                equations.add(new Equation(owner, BATCHES, 0, at, new double[] {1, -1, -older}));
            }
        }
        places.listShared().forEach(name -> belief(Owner.link(places.place(name)), places.place(name), 1));
    }

    private void belief(Owner owner, int place, double deviation) {
        equations.add(new Equation(owner, Equation.KNOWN, 0, new int[] {place}, new double[] {1 / deviation}));
    }
}
