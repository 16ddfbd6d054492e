/** One row of a readings table: as typed here, and as the server keeps it. */

/**
 * @typedef {{ verdict: string, reason: string, who: string }} Ruling
 * @typedef {{ complete: boolean, kind?: string, says?: string, check?: string, expected?: string, column?: string, trouble?: string }} RowSays
 * @typedef {object} Row
 * @property {string} key names it on this page
 * @property {string} [id] the server's name for it; none until it was saved
 * @property {number} version the server's version that the typing began from
 * @property {Record<string, string>} cells text by column
 * @property {number} typed counts the changes made here
 * @property {number} saved the count that the server has
 * @property {Ruling} [ruling]
 * @property {RowSays} [says] the judgement on the row by itself
 * @property {StoredRow} [theirs] what somebody else wrote in between
 * @typedef {{ id: string, version: number, removed: boolean, cells: Record<string, string>, ruling?: Ruling }} StoredRow
 */

let keys = 0;

/** @param {Record<string, string>} cells @param {number} typed @returns {Row} */
export function newRow(cells, typed) {
  return { key: `r${keys++}`, version: 0, cells, typed, saved: 0 };
}

/** @param {StoredRow} stored @returns {Row} */
export function rowOf(stored) {
  return { key: `r${keys++}`, id: stored.id, version: stored.version, cells: { ...stored.cells }, typed: 0, saved: 0, ruling: stored.ruling };
}

/** @param {Row} row */
export function unsaved(row) {
  return row.typed !== row.saved;
}

/** True for the blank row that waits for the next reading. @param {Row} row */
export function untouched(row) {
  return !row.id && row.typed === 0;
}

/** The cells that hold text. @param {Record<string, string>} cells */
export function filled(cells) {
  return Object.fromEntries(Object.entries(cells).filter(([, text]) => text.trim()));
}

/** @param {Record<string, string>} one @param {Record<string, string>} other */
export function same(one, other) {
  const [left, right] = [filled(one), filled(other)];
  return Object.keys(left).length === Object.keys(right).length && Object.keys(left).every((key) => left[key] === right[key]);
}

/** The change that saves a row. @param {Row} row */
export function asChange(row) {
  const cells = filled(row.cells);
  return row.id ? { do: 'edit-row', row: row.id, version: row.version, cells } : { do: 'add-row', cells };
}
