/** Things the company keeps beside kit, nights and orders, each whole and through all its versions. */
@NullMarked
package org.hosewright.ledger.leaf;

import org.jspecify.annotations.NullMarked;
