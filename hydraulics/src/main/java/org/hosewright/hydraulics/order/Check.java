package org.hosewright.hydraulics.order;

/** One check of an ordered pressure.
 *
 * @param what what is checked
 * @param passed whether it holds
 * @param says the outcome with its numbers, as a sentence
 */
public record Check(String what, boolean passed, String says) {}
