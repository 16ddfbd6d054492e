package org.hosewright.documents.drawing;

import org.hosewright.hydraulics.profile.Role;

/** The pens of a drawing's roles, in millimetres; shape and words carry the meaning, the pen only repeats it. */
final class RolePen {
    private RolePen() {}

    static Pen of(Role role) {
        return switch (role) {
            case PRESSURE -> Pen.ink(0.65);
            case CURVE -> Pen.ink(0.35);
            case PIPING -> Pen.ink(0.35);
            case COUPLING -> Pen.ink(0.25);
            case LIMIT -> Pen.ink(0.4);
            case PIN, TIP, SAFE -> Pen.ink(0.3);
            case PIN_ASIDE -> new Pen(Pen.ACCENT, 0.3, "");
            case LEAD -> Pen.ink(0.3).dashed("0.3 0.9");
            case LEADER -> Pen.pale(0.2);
            case GRID -> new Pen("#d9d6cc", 0.18, "");
            default -> Pen.pale(0.25);
        };
    }

    static String fill(Role role) {
        return role == Role.GROUND ? Pen.GROUND : Pen.BAND;
    }

    static String words(Role role) {
        return switch (role) {
            case AXIS, HOSE, BESIDE, COUPLING -> "#4a4742";
            case PIN_ASIDE -> Pen.ACCENT;
            default -> Pen.INK;
        };
    }

    static boolean bold(Role role) {
        return role == Role.ANSWER || role == Role.PIN_ASIDE;
    }
}
