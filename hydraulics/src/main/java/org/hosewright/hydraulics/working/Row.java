package org.hosewright.hydraulics.working;

/** A step whose result is a part of a sum, before the parts are rounded together.
 *
 * @param name what the part is called in the sum
 * @param says what is worked out
 * @param formula the formula in letters
 * @param numbers the formula with the numbers put in
 * @param source what it rests on
 * @param value the part, in the units of the paper
 */
record Row(String name, String says, String formula, String numbers, String source, double value) {
    Step step(String result) {
        return new Step(says, formula, numbers, result, source);
    }
}
