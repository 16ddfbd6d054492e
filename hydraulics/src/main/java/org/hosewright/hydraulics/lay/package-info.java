/** What people lay from an engine, solved: lines, wyes and tips. */
@NullMarked
package org.hosewright.hydraulics.lay;

import org.jspecify.annotations.NullMarked;
