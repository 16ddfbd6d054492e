/** Rows typed but not yet saved, kept in this browser so that nothing typed is lost. */

/** @typedef {{ id?: string, version: number, cells: Record<string, string> }} KeptRow */

/** @param {string} night */
const place = (night) => `hosewright.night.${night}`;

/**
 * @param {string} night
 * @param {KeptRow[]} rows the unsaved ones; none clears the place
 */
export function keep(night, rows) {
  if (rows.length === 0) localStorage.removeItem(place(night));
  else localStorage.setItem(place(night), JSON.stringify(rows));
}

/**
 * @param {string} night
 * @returns {KeptRow[]}
 */
export function kept(night) {
  try {
    return JSON.parse(localStorage.getItem(place(night)) ?? '[]');
  } catch {
    return [];
  }
}
