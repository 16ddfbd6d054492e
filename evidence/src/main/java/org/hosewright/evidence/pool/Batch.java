package org.hosewright.evidence.pool;

import java.util.OptionalDouble;

/** Hose of one type that was bought together.
 *
 * @param id its name, as readings have it
 * @param type id of its type
 * @param made year of manufacture, where known
 */
public record Batch(String id, String type, OptionalDouble made) {}
