package org.hosewright.hydraulics.profile;

/** A place in a drawing; x to the right, y downward, in the drawing's unit. */
public record Point(double x, double y) {}
