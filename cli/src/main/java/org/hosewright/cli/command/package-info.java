/** One class a command, and what all commands share. */
@NullMarked
package org.hosewright.cli.command;

import org.jspecify.annotations.NullMarked;
