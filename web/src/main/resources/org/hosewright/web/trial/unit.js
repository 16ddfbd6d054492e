/** Numbers that are typed without their unit, which stands in the label. */

/** "150" typed in a field of gpm is "150 gpm"; what has a unit keeps it. @param {string} text @param {string} unit */
export function withUnit(text, unit) {
  return /^[\d.]+$/.test(text) ? `${text} ${unit}` : text;
}
