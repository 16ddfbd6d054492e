package org.hosewright.hydraulics.profile;

import java.util.List;

/** An answer as it is set: the number large, its unit behind it, short lines below. */
final class AnswerBlock {
    private static final double UNIT_GAP_em = 0.45;

    /** From baseline to baseline of the small lines [em]. */
    private static final double LINE_em = 1.25;

    private static final double BELOW_NUMBER_em = 1.5;

    private final Answer answer;
    private final double em;

    AnswerBlock(Answer answer, double em) {
        this.answer = answer;
        this.em = em;
    }

    /** The same with the short lines in one. */
    AnswerBlock inOneLine() {
        String line = String.join(" \u00b7 ", answer.beside());
        return new AnswerBlock(
                new Answer(answer.number(), answer.unit(), line.isEmpty() ? List.of() : List.of(line)), em);
    }

    double width() {
        double most = number() + unit();
        for (String line : answer.beside()) {
            most = Math.max(most, Lettering.width(Role.BESIDE, line, em));
        }
        return most;
    }

    double height() {
        return above() + below();
    }

    /** From the number's baseline up. */
    double above() {
        return answer.number().isEmpty() ? 0 : Lettering.ASCENT * Pen.LARGE_em * em;
    }

    /** From the number's baseline down. */
    double below() {
        int lines = answer.beside().size();
        double number = answer.number().isEmpty() ? 0 : Lettering.DESCENT * Pen.LARGE_em * em;
        return Math.max(number, lines == 0 ? 0 : (BELOW_NUMBER_em + (lines - 1) * LINE_em + Lettering.DESCENT) * em);
    }

    /** Sets the block.
     *
     * @param x its left edge where it starts there, its right edge where it ends there
     * @param y the number's baseline
     */
    void set(Pen pen, double x, double y, Anchor anchor) {
        boolean start = anchor == Anchor.START;
        double numberX = start || answer.unit().isEmpty() ? x : x - unit();
        double unitX = start ? x + number() + UNIT_GAP_em * em : x;
        pen.set(new Mark.Text(Role.ANSWER, numberX, y, Pen.LARGE_em * em, anchor, answer.number()));
        pen.set(pen.small(Role.BESIDE, unitX, y, anchor, answer.unit()));
        double lineY = y + BELOW_NUMBER_em * em;
        for (String line : answer.beside()) {
            pen.set(pen.small(Role.BESIDE, x, lineY, anchor, line));
            lineY += LINE_em * em;
        }
    }

    private double number() {
        return Lettering.width(Role.ANSWER, answer.number(), Pen.LARGE_em * em);
    }

    private double unit() {
        return answer.unit().isEmpty() ? 0 : UNIT_GAP_em * em + Lettering.width(Role.BESIDE, answer.unit(), em);
    }
}
