/** The papers of a test night before it is flown. */
@NullMarked
package org.hosewright.documents.night;

import org.jspecify.annotations.NullMarked;
