/** The re-lays of a blind trial as a file. */
@NullMarked
package org.hosewright.files.relays;

import org.jspecify.annotations.NullMarked;
