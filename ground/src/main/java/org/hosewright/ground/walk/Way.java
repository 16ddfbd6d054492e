package org.hosewright.ground.walk;

/** A way on the local plane, a point a step. */
final class Way {
    final double[] east_m;
    final double[] north_m;

    Way(double[] east_m, double[] north_m) {
        this.east_m = east_m;
        this.north_m = north_m;
    }

    int size() {
        return east_m.length;
    }

    /** The distance from the start to every step [m]. */
    double[] along_m() {
        double[] along = new double[size()];
        for (int i = 1; i < size(); i++) {
            double east = east_m[i] - east_m[i - 1];
            double north = north_m[i] - north_m[i - 1];
            along[i] = along[i - 1] + Math.sqrt(east * east + north * north);
        }
        return along;
    }
}
