package org.hosewright.evidence.pool;

import java.util.Arrays;

/** One equation among unknowns: what it is off by has a normal law about 0. */
final class Equation {
    /** In place of a spread's place: what it is off by has deviation 1. */
    static final int KNOWN = -1;

    private final Owner owner;
    private final int spread;
    private final double constant;
    private final int[] at;
    private final double[] slopes;

    /** An equation among a few unknowns.
     *
     * @param spread place of the spread that is its deviation, or {@link #KNOWN}
     * @param constant what it is off by with every unknown 0
     * @param at places of the unknowns, each once
     * @param slopes how what it is off by changes with each
     */
    Equation(Owner owner, int spread, double constant, int[] at, double[] slopes) {
        this.owner = owner;
        this.spread = spread;
        this.constant = constant;
        this.at = Arrays.copyOf(at, at.length);
        this.slopes = Arrays.copyOf(slopes, slopes.length);
    }

    Owner owner() {
        return owner;
    }

    int spread() {
        return spread;
    }

    double constant() {
        return constant;
    }

    /** How many unknowns it has. */
    int size() {
        return at.length;
    }

    int unknown(int k) {
        return at[k];
    }

    double slope(int k) {
        return slopes[k];
    }

    /** How much it changes along a direction. */
    double along(double[] direction) {
        double sum = 0;
        for (int k = 0; k < at.length; k++) {
            sum += slopes[k] * direction[at[k]];
        }
        return sum;
    }
}
