package org.hosewright.hydraulics.profile;

import java.util.List;

/** A picture as marks with roles; nothing about colours, pens or files.
 *
 * @param width in the unit of its sheet
 * @param height in the same unit
 * @param plot where lengths and pressures stand, for touching and dragging
 * @param marks in the order to be drawn
 */
public record Drawing(double width, double height, Plot plot, List<Mark> marks) {
    public Drawing {
        marks = List.copyOf(marks);
    }
}
