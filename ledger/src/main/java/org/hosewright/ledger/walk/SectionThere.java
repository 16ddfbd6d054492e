package org.hosewright.ledger.walk;

import java.util.Optional;
import org.hosewright.ground.walk.SectionMark;

/** A section's end on the ground, and the package's line to there.
 *
 * @param mark where the section ends
 * @param line the line to there; absent without a package, or where its earlier hoses already reach further
 */
public record SectionThere(SectionMark mark, Optional<LineThere> line) {}
