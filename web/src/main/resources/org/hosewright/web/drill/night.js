/** A test night in the hands of a person: its rows as typed, saved as soon as the server takes them. */
import { get, post, check, Trouble } from '../shared/api.js';
import { failed } from '../shared/notes.js';
import { CARRIED, TYPED, base, find } from './columns.js';
import { keep, kept } from './kept.js';
import { newRow, rowOf, unsaved, untouched, filled, same, asChange } from './row.js';

/** @typedef {import('./row.js').Row} Row */
/** @typedef {import('./row.js').StoredRow} StoredRow */

const WAIT_MS = 250;
const AGAIN_MS = 2500;

/** Tells "changed" when anything shown changed, "saved" when the server has something new. */
export class Night extends EventTarget {
  /** @param {any} record the night as the server keeps it */
  constructor(record) {
    super();
    /** @type {string} */
    this.id = record.id;
    /** @type {Row[]} */
    this.rows = [];
    /** @type {'saved' | 'saving' | 'kept' | 'both'} */
    this.state = 'saved';
    this.sending = false;
    this.version = 0;
    this.name = '';
    this.date = '';
    /** @type {string[]} */
    this.columns = [];
    /** @type {StoredRow[]} */
    this.removed = [];
    this.adopt(record);
    this.takeKept();
    this.ensureBlank();
  }

  /** @param {string} id */
  static async open(id) {
    return new Night(await get(`/drills/${id}`));
  }

  /**
   * Takes over what the server has; what was typed here and not saved stays.
   * @param {any} record
   * @param {Row[]} [sent] rows that the server has just taken in
   */
  adopt(record, sent = []) {
    this.version = record.version;
    this.name = record.name;
    this.date = record.date;
    this.columns = record.columns;
    this.accepted = record.accepted;
    this.removed = record.rows.filter((/** @type {StoredRow} */ row) => row.removed);
    const known = this.rows.filter((row) => row.id);
    const waiting = this.rows.filter((row) => !row.id);
    const standing = record.rows.filter((/** @type {StoredRow} */ row) => !row.removed);
    this.rows = standing.map((/** @type {StoredRow} */ stored) => {
      const row = known.find((other) => other.id === stored.id) ?? claim(waiting, sent, stored);
      return row ? merged(row, stored, sent.includes(row)) : rowOf(stored);
    });
    this.rows.push(...waiting);
  }

  takeKept() {
    for (const draft of kept(this.id)) {
      const row = this.rows.find((other) => draft.id && other.id === draft.id);
      if (row && !same(row.cells, draft.cells)) {
        Object.assign(row, { cells: draft.cells, typed: row.typed + 1, version: draft.version });
      } else if (!draft.id && !this.rows.some((other) => same(other.cells, draft.cells))) {
        this.rows.push(newRow(draft.cells, 1));
      }
    }
    if (!this.rows.some(unsaved)) return;
    this.state = 'saving';
    this.later(0);
  }

  /** Makes sure that a blank row for the next reading stands at the end, with what it takes over from the one before. */
  ensureBlank() {
    const last = this.rows[this.rows.length - 1];
    if (last && untouched(last)) {
      const before = this.rows[this.rows.length - 2];
      if (before) last.cells = { ...this.carried(before), reading: last.cells.reading };
      return;
    }
    this.rows.push(newRow({ ...this.carried(last), reading: this.nextName() }, 0));
  }

  /** @param {Row | undefined} row the cells that the next one takes over from it */
  carried(row) {
    const columns = this.columns.filter((column) => CARRIED.includes(base(column)));
    return Object.fromEntries(columns.map((column) => [column, row?.cells[column] ?? '']));
  }

  nextName() {
    const names = [...this.rows, ...this.removed].map((row) => Number(row.cells.reading));
    return String(Math.max(0, ...names.filter(Number.isInteger)) + 1);
  }

  /**
   * Takes over what was typed into a cell.
   * @param {Row} row
   * @param {string} column
   * @param {string} text
   */
  type(row, column, text) {
    if ((row.cells[column] ?? '') === text) return;
    row.cells = { ...row.cells, [column]: text };
    row.typed += 1;
    row.says = undefined;
    if (this.state === 'saved') this.state = 'saving';
    this.remember();
    this.tell();
  }

  /** True where the row says enough to be judged. @param {Row} row */
  complete(row) {
    const has = (/** @type {string} */ name) => Boolean(filled(row.cells)[find(this.columns, name) ?? '']);
    const length = has('length') || /[+x]/.test(row.cells.hose ?? '');
    return has('pump') && (has('tip') || has('flow')) && has('discharge') && has('hose') && has('nozzle') && length;
  }

  /** The first typed cell that is still empty. @param {Row} row */
  missing(row) {
    return TYPED.filter((name) => name !== 'rise').map((name) => find(this.columns, name))
      .find((column) => column && !filled(row.cells)[column]);
  }

  /** A cell is done: save soon, and judge the row where it is whole. @param {Row} row */
  async leave(row) {
    if (!unsaved(row)) return;
    this.ensureBlank();
    this.later(WAIT_MS);
    this.tell();
    if (!this.complete(row)) return;
    const typed = row.typed;
    try {
      const says = await check(`/drills/${this.id}/row-check`, { ...(row.id && { row: row.id }), cells: filled(row.cells) });
      if (row.typed === typed) row.says = says;
      this.tell();
    } catch (error) {
      if (!(error instanceof Trouble && error.away)) failed(error);
    }
  }

  /** @param {number} ms */
  later(ms) {
    clearTimeout(this.timer);
    this.timer = setTimeout(() => this.send(), ms);
  }

  /** Saves all unsaved rows in one act; asks again until the server has them. */
  async send() {
    const rows = this.rows.filter((row) => unsaved(row) && !row.theirs);
    if (this.sending || rows.length === 0) return;
    this.sending = true;
    const typed = rows.map((row) => row.typed);
    try {
      const record = await post(`/drills/${this.id}/changes`, { changes: rows.map(asChange) });
      rows.forEach((row, at) => { row.saved = typed[at]; });
      this.adopt(record, rows);
      this.state = this.standing();
      this.ensureBlank();
      this.dispatchEvent(new Event('saved'));
    } catch (error) {
      this.notSaved(error);
    }
    this.sending = false;
    this.remember();
    this.tell();
    if (this.rows.some((row) => unsaved(row) && !row.theirs)) this.later(this.state === 'kept' ? AGAIN_MS : WAIT_MS);
  }

  /** @param {unknown} error */
  notSaved(error) {
    this.state = 'kept';
    const stored = error instanceof Trouble && error.status === 409 && error.problem.stored;
    if (stored) this.showBoth(stored);
    else if (!(error instanceof Trouble) || !error.away) failed(error);
  }

  /** Shows what somebody else wrote beside what was typed here. @param {any} stored */
  showBoth(stored) {
    for (const row of this.rows.filter(unsaved)) {
      const theirs = stored.rows.find((/** @type {StoredRow} */ other) => other.id === row.id);
      if (theirs && theirs.version !== row.version) row.theirs = theirs;
    }
    this.adopt(stored);
    this.state = this.standing();
  }

  /** How the rows stand while the server answers. @returns {'saved' | 'saving' | 'both'} */
  standing() {
    if (this.rows.some((row) => row.theirs)) return 'both';
    return this.rows.some(unsaved) ? 'saving' : 'saved';
  }

  /** @param {Row} row @param {boolean} mine which of the two shall stand */
  settle(row, mine) {
    const theirs = /** @type {StoredRow} */ (row.theirs);
    row.version = theirs.version;
    if (!mine) Object.assign(row, { cells: { ...theirs.cells }, saved: row.typed });
    row.theirs = undefined;
    if (this.state === 'both') this.state = this.standing();
    this.remember();
    this.later(0);
    this.tell();
  }

  /** Makes one change other than typing. @param {any} change */
  async change(change) {
    while (this.sending) await new Promise((again) => { setTimeout(again, 50); });
    await this.send();
    this.adopt(await post(`/drills/${this.id}/changes`, { changes: [change] }));
    this.ensureBlank();
    this.dispatchEvent(new Event('saved'));
    this.tell();
  }

  remember() {
    keep(this.id, this.rows.filter(unsaved).map(({ id, version, cells }) => ({ id, version, cells })));
  }

  tell() {
    this.dispatchEvent(new Event('changed'));
  }
}

/**
 * The row just sent that a stored row came from, taken out of those that wait.
 * @param {Row[]} waiting
 * @param {Row[]} sent
 * @param {StoredRow} stored
 */
function claim(waiting, sent, stored) {
  const at = waiting.findIndex((row) => sent.includes(row));
  const exact = waiting.findIndex((row) => sent.includes(row) && same(row.cells, stored.cells));
  return at < 0 ? undefined : waiting.splice(exact < 0 ? at : exact, 1)[0];
}

/** @param {Row} row @param {StoredRow} stored @param {boolean} sent @returns {Row} */
function merged(row, stored, sent) {
  row.id = stored.id;
  row.ruling = stored.ruling;
  if (!unsaved(row)) row.cells = { ...stored.cells };
  if (sent || !unsaved(row)) row.version = stored.version;
  return row;
}
