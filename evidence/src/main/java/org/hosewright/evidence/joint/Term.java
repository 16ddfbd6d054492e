package org.hosewright.evidence.joint;

/** An unknown's part in a sum.
 *
 * @param unknown its place
 * @param weight what its value is multiplied by
 */
record Term(int unknown, double weight) {}
