/** How much water a fire or a building asks for, by the rules that people are taught. */
@NullMarked
package org.hosewright.hydraulics.demand;

import org.jspecify.annotations.NullMarked;
