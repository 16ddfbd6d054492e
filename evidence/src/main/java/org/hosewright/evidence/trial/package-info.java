/** Hoses or nozzles compared blind: how many re-lays it takes, in which order, and what the re-lays do and do not say. */
@NullMarked
package org.hosewright.evidence.trial;

import org.jspecify.annotations.NullMarked;
