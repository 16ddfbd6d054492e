package org.hosewright.ground.walk;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.hosewright.ground.track.Fix;
import org.hosewright.ground.track.LocalPlane;
import org.hosewright.ground.track.Position;
import org.hosewright.ground.track.Track;
import org.hosewright.hydraulics.quantity.Length;

/** A walk of known length with straight and bent legs, corners and stops, as a wandering receiver sees it.
 *
 * <p>It is not made by the model that smooths it: legs are straight or bent, the speed is nearly steady, and how long
 * the receiver's error lasts is drawn anew for every walk.
 */
final class SyntheticWalk {
    static final Position SOMEWHERE = new Position(44.1, -72.6);

    final List<LocalPlane.Point> truth = new ArrayList<>();
    final List<LocalPlane.Point> seen = new ArrayList<>();
    final double noise_m;
    double length_m;
    private final SplittableRandom random;
    private double heading;
    private double bend;
    private double legLeft_m;

    /** Makes a walk.
     *
     * @param noise_m standard deviation of the receiver's error on each axis [m]
     */
    SyntheticWalk(long seed, double noise_m) {
        this.random = new SplittableRandom(seed);
        this.noise_m = noise_m;
        walk(between(60, 600));
        see(between(30, 120), between(0.05, 0.15) * noise_m);
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private void walk(double goal_m) {
        double speed = Math.min(1.7, Math.max(0.8, 1.25 + 0.17 * random.nextGaussian()));
        double sway = 0;
        int standing = 0;
        heading = between(0, 2 * Math.PI);
        legLeft_m = leg_m();
        LocalPlane.Point at = new LocalPlane.Point(0, 0);
        truth.add(at);
        while (length_m < goal_m) {
            standing = random.nextDouble() < 1.0 / 90 ? 4 + random.nextInt(21) : standing - 1;
            if (standing <= 0) {
                sway = sway * Math.exp(-0.1) + 0.08 * Math.sqrt(1 - Math.exp(-0.2)) * random.nextGaussian();
                double step_m = Math.min(speed * (1 + sway), goal_m - length_m);
                length_m += step_m;
                at = step(at, step_m);
            }
            truth.add(at);
        }
    }

    private double leg_m() {
        return Math.max(8, -40 * Math.log(1 - random.nextDouble()));
    }

    private LocalPlane.Point step(LocalPlane.Point from, double step_m) {
        double east = from.east_m();
        double north = from.north_m();
        double left_m = step_m;
        while (left_m > 1e-9) {
            double part_m = Math.min(left_m, legLeft_m);
            east += part_m * Math.sin(heading);
            north += part_m * Math.cos(heading);
            heading += bend * part_m;
            legLeft_m -= part_m;
            left_m -= part_m;
            if (legLeft_m <= 1e-9) {
                legLeft_m = leg_m();
                heading += (random.nextBoolean() ? 1 : -1) * Math.toRadians(between(30, 110));
                bend = random.nextInt(3) == 0 ? 0.01 * random.nextGaussian() : 0;
            }
        }
        return new LocalPlane.Point(east, north);
    }

    private void see(double lasts_s, double white_m) {
        double slow_m = Math.sqrt(noise_m * noise_m - white_m * white_m);
        double keep = Math.exp(-1 / lasts_s);
        double east = slow_m * random.nextGaussian();
        double north = slow_m * random.nextGaussian();
        for (LocalPlane.Point at : truth) {
            seen.add(new LocalPlane.Point(
                    at.east_m() + east + white_m * random.nextGaussian(),
                    at.north_m() + north + white_m * random.nextGaussian()));
            east = keep * east + slow_m * Math.sqrt(1 - keep * keep) * random.nextGaussian();
            north = keep * north + slow_m * Math.sqrt(1 - keep * keep) * random.nextGaussian();
        }
    }

    /** The track that the receiver records, one position a second, its accuracy stated.
     *
     * @param misjudged how many times too large the receiver states its error
     */
    Track track(double misjudged) {
        LocalPlane plane = new LocalPlane(SOMEWHERE);
        Optional<Length> accuracy = Optional.of(new Length(misjudged * noise_m / Model.AXIS_OF_RADIUS));
        Instant start = Instant.parse("2026-05-12T18:00:00Z");
        List<Fix> fixes = new ArrayList<>();
        for (int i = 0; i < seen.size(); i++) {
            Instant time = start.plus(Duration.ofSeconds(i));
            fixes.add(new Fix(plane.position(seen.get(i)), Optional.of(time), accuracy, Optional.empty()));
        }
        return Track.of("", fixes);
    }

    /** The length that every so many-th position gives, the last one always taken. */
    double decimated_m(int every) {
        double sum_m = 0;
        LocalPlane.Point before = seen.get(0);
        for (int i = every; i < seen.size() + every - 1; i += every) {
            LocalPlane.Point next = seen.get(Math.min(i, seen.size() - 1));
            sum_m += before.distance_m(next);
            before = next;
        }
        return sum_m;
    }
}
