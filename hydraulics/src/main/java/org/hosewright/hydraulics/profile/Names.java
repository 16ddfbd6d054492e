package org.hosewright.hydraulics.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Places for names beside what they name, none on another.
 *
 * <p>The first free place counts: beside the thing, then higher and lower, clear of the lines if that can be had. A
 * name that has to stand away from its thing is tied to it by a thin line. What finds no room is left out.
 */
final class Names {
    /** From one place to the next, up or down [em]. */
    private static final double STEP_em = 0.5;

    /** Further away than this a name is tied [em]. */
    private static final double NEAR_em = 0.9;

    private static final double GAP_em = 0.7;

    private final Pen pen;
    private final Box frame;

    Names(Pen pen, Box frame) {
        this.pen = pen;
        this.frame = frame;
    }

    /** Puts a name beside a point.
     *
     * @return whether there was room
     */
    boolean beside(Role role, Point at, String name) {
        if (name.isEmpty()) {
            return true;
        }
        List<Mark.Text> places = new ArrayList<>();
        double em = pen.em();
        double middle = at.y() + (Lettering.ASCENT - Lettering.DESCENT) / 2 * em;
        for (double off = 0; off <= frame.height(); off += STEP_em * em) {
            for (double y : off == 0 ? new double[] {middle} : new double[] {middle - off, middle + off}) {
                places.add(pen.small(role, at.x() + GAP_em * em, y, Anchor.START, name));
                places.add(pen.small(role, at.x() - GAP_em * em, y, Anchor.END, name));
            }
        }
        Optional<Mark.Text> place = first(places);
        place.ifPresent(text -> {
            if (Math.abs(text.y() - middle) > NEAR_em * em) {
                double y = text.y() - (Lettering.ASCENT - Lettering.DESCENT) / 2 * em;
                double inward = text.anchor() == Anchor.START ? -0.15 * em : 0.15 * em;
                pen.stroke(Role.LEADER, at.x(), at.y(), text.x() + inward, y);
            }
            pen.set(text);
        });
        return place.isPresent();
    }

    /** Puts a text at the first of several places that is free.
     *
     * @return whether there was room
     */
    boolean atFirst(List<Mark.Text> places) {
        Optional<Mark.Text> place = first(places);
        place.ifPresent(pen::set);
        return place.isPresent();
    }

    private Optional<Mark.Text> first(List<Mark.Text> places) {
        Optional<Mark.Text> crossing = Optional.empty();
        for (Mark.Text place : places) {
            Box box = Lettering.box(place);
            if (box.within(frame) && pen.isFree(box)) {
                if (pen.isClear(box)) {
                    return Optional.of(place);
                }
                crossing = crossing.isPresent() ? crossing : Optional.of(place);
            }
        }
        return crossing;
    }
}
