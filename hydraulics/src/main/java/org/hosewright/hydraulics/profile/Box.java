package org.hosewright.hydraulics.profile;

/** A rectangle that something takes up. */
record Box(double left, double top, double width, double height) {
    double right() {
        return left + width;
    }

    double bottom() {
        return top + height;
    }

    boolean meets(Box other) {
        return left < other.right() && other.left < right() && top < other.bottom() && other.top < bottom();
    }

    boolean within(Box frame) {
        return left >= frame.left && right() <= frame.right() && top >= frame.top && bottom() <= frame.bottom();
    }

    /** True where a straight line from one point to another passes through it; Liang and Barsky's clipping. */
    boolean meets(Point from, Point to) {
        double dx = to.x() - from.x();
        double dy = to.y() - from.y();
        double[] starts = {from.x() - left, right() - from.x(), from.y() - top, bottom() - from.y()};
        double[] runs = {-dx, dx, -dy, dy};
        double enter = 0;
        double leave = 1;
        for (int side = 0; side < 4; side++) {
            if (runs[side] == 0) {
                if (starts[side] < 0) {
                    return false;
                }
            } else if (runs[side] < 0) {
                enter = Math.max(enter, starts[side] / runs[side]);
            } else {
                leave = Math.min(leave, starts[side] / runs[side]);
            }
        }
        return enter <= leave;
    }
}
