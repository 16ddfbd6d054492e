/** The report of a test night. */
@NullMarked
package org.hosewright.documents.report;

import org.jspecify.annotations.NullMarked;
