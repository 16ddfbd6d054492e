/** The readings as a table that is quick to type: Tab from cell to cell, Enter for the next reading. */
import { html, nothing } from 'lit';
import { live } from 'lit/directives/live.js';
import { repeat } from 'lit/directives/repeat.js';
import { Part } from '../shared/page.js';
import { capital } from '../shared/text.js';
import { FIRST, TYPED, base, find, head, unit, riseKept, riseSaid } from './columns.js';
import { untouched, unsaved } from './row.js';
import './reading-more.js';

/** @typedef {import('./row.js').Row} Row */
/** @typedef {import('./night.js').Night} Night */

class Readings extends Part {
  /** @override */
  static properties = { night: { attribute: false }, judged: { attribute: false }, open: { state: true } };

  constructor() {
    super();
    /** @type {Night} */
    this.night;
    /** @type {Record<string, any>} what the analysis says, by reading */
    this.judged = {};
    /** @type {string | null} the row whose other cells are shown */
    this.open = null;
    /** @type {Map<string, { text: string, left: boolean }>} rises being typed, and those left that cannot be read, by row */
    this.typing = new Map();
    this.redraw = () => this.requestUpdate();
  }

  /** @override @param {Map<string, unknown>} changed */
  willUpdate(changed) {
    if (!changed.has('night')) return;
    /** @type {Night | undefined} */ (changed.get('night'))?.removeEventListener('changed', this.redraw);
    this.night.addEventListener('changed', this.redraw);
  }

  get columns() {
    return TYPED.map((name) => find(this.night.columns, name)).filter((column) => column !== undefined);
  }

  /** @override */
  render() {
    const columns = this.columns;
    return html`<table class="readings">
      <caption class="away">Readings. Type, Tab to the next cell, Enter for the next reading.</caption>
      <thead>
        <tr>
          <th scope="col"><span class="no">reading</span></th>
          ${columns.map((column) => html`<th scope="col">${head(column)} <span class="unit">${unit(column)}</span></th>`)}
          <th scope="col" class="expected">expected <span class="unit">${unit(find(this.night.columns, 'pump') ?? '')}</span></th>
          <th scope="col" class="words judgement">what it says</th>
        </tr>
      </thead>
      ${repeat(this.night.rows, (row) => row.key, (row) => this.row(row, columns))}
    </table>`;
  }

  /** @param {Row} row @param {string[]} columns */
  row(row, columns) {
    const name = row.cells.reading ?? '';
    const judged = this.refused(row) ?? (row.says?.trouble ? row.says : (!unsaved(row) && this.judged[name]) || row.says);
    const aside = judged?.used === false || row.ruling?.verdict === 'set aside';
    const kind = untouched(row) ? 'next' : aside ? 'aside' : judged?.kind && judged.kind !== 'none' ? 'odd' : '';
    return html`<tbody class=${kind} data-row=${row.key}>
      <tr>
        <th scope="row">
          <button class="name" aria-expanded=${this.open === row.key} @click=${() => this.toggle(row)}>
            <span class="away">reading </span>${name || '?'}</button>
        </th>
        ${columns.map((column) => html`<td>${this.cell(row, column, name, judged)}</td>`)}
        <td class="expected">${judged?.expected ? judged.expected.split(' ')[0] : nothing}</td>
        <td class="words judgement">${this.verdict(row, judged, aside)}</td>
      </tr>
      ${this.under(row, judged, aside)}
    </tbody>`;
  }

  /** @param {Row} row @param {string} column @param {string} name @param {any} judged */
  cell(row, column, name, judged) {
    const rise = base(column) === 'rise';
    const text = row.cells[column] ?? '';
    return html`<input aria-label="${head(column)} of reading ${name}" autocomplete="off" enterkeyhint="next"
      inputmode=${rise ? 'text' : 'decimal'} data-column=${column} aria-invalid=${judged?.column === column}
      .value=${live(rise ? this.rise(row, text) : text)}
      @focus=${(/** @type {FocusEvent} */ event) => /** @type {HTMLInputElement} */ (event.target).select()}
      @input=${(/** @type {InputEvent} */ event) => this.typed(row, column, event, rise)}
      @change=${() => this.leave(row)}
      @keydown=${(/** @type {KeyboardEvent} */ event) => this.key(event, row, column)}>`;
  }

  /** @param {Row} row @param {string} column @param {Event} event @param {boolean} rise */
  typed(row, column, event, rise) {
    const text = /** @type {HTMLInputElement} */ (event.target).value;
    if (!rise) return this.night.type(row, column, text);
    this.typing.set(row.key, { text, left: false });
    this.requestUpdate();
    if (!signed(text)) this.night.type(row, column, riseKept(text));
  }

  /** The rise in words, but exactly as typed while it is being typed. @param {Row} row @param {string} kept */
  rise(row, kept) {
    return this.typing.get(row.key)?.text ?? riseSaid(kept);
  }

  /** What is wrong with a rise that was typed and left; the server never sees it, so no answer of its may hide this. @param {Row} row */
  refused(row) {
    const typing = this.typing.get(row.key);
    if (!typing?.left) return undefined;
    const height = typing.text.trim().slice(1).trim();
    const trouble = `The rise of reading ${row.cells.reading} cannot be '${typing.text.trim()}'; what would do: ${height} up or ${height} down.`;
    return { complete: false, trouble, column: find(this.night.columns, 'rise') };
  }

  /** @param {Row} row */
  leave(row) {
    this.requestUpdate();
    const typing = this.typing.get(row.key);
    if (typing && signed(typing.text)) {
      this.typing.set(row.key, { ...typing, left: true });
      return;
    }
    this.typing.delete(row.key);
    this.night.leave(row);
  }

  /** @param {Row} row @param {any} judged @param {boolean} aside */
  verdict(row, judged, aside) {
    if (untouched(row)) return this.night.rows.length === 1 ? 'type the first reading here' : nothing;
    if (!judged) return nothing;
    if (aside) return 'set aside';
    if (judged.trouble) return html`<span class="wrong">cannot be read</span>`;
    if (judged.kind && judged.kind !== 'none') return html`<span class="wrong">look at this</span>`;
    return judged.expected ? 'as expected' : nothing;
  }

  /** @param {Row} row @param {any} judged @param {boolean} aside */
  under(row, judged, aside) {
    const open = this.open === row.key;
    const odd = judged && (judged.trouble || aside || (judged.kind && judged.kind !== 'none'));
    const planned = this.planned(row);
    if (planned && !open && !odd && !row.theirs) return html`<tr class="under"><td colspan=${this.columns.length + 1} class="words">${capital(planned)}.</td><td colspan="2" class="judgement"></td></tr>`;
    if (!open && !odd && !row.theirs && !row.ruling) return nothing;
    return html`<tr class="under"><td colspan=${this.columns.length + 1} class="words">
      <hw-reading-more .night=${this.night} .row=${row} .judged=${judged} .aside=${aside} .open=${open}></hw-reading-more>
    </td><td colspan="2" class="judgement"></td></tr>`;
  }

  /** What a planned reading says that nobody has read yet; empty for any other. @param {Row} row */
  planned(row) {
    const cell = (/** @type {string} */ name) => row.cells[find(this.night.columns, name) ?? '']?.trim() ?? '';
    return row.id && !cell('pump') && !cell('tip') && !cell('flow') ? cell('note') : '';
  }

  /** @param {Row} row */
  toggle(row) {
    this.open = this.open === row.key ? null : row.key;
  }

  /** @param {KeyboardEvent} event @param {Row} row @param {string} column */
  key(event, row, column) {
    const rows = this.night.rows;
    const at = rows.indexOf(row);
    if (event.key === 'Enter') {
      event.preventDefault();
      this.enter(row, at);
    } else if (event.key === 'ArrowDown' && at < rows.length - 1) {
      event.preventDefault();
      this.go(rows[at + 1], column);
    } else if (event.key === 'ArrowUp' && at > 0) {
      event.preventDefault();
      this.go(rows[at - 1], column);
    }
  }

  /** Enter: to what is still missing in this reading, else to the next reading. @param {Row} row @param {number} at */
  enter(row, at) {
    this.leave(row);
    const missing = this.night.missing(row);
    const first = find(this.night.columns, FIRST) ?? this.columns[0];
    if (missing && !this.night.complete(row)) this.go(row, missing);
    else if (at + 1 < this.night.rows.length) this.go(this.night.rows[at + 1], first);
  }

  /** To the first cell of the reading that comes next: the first that is planned and not read, or else a new one. */
  next() {
    const rows = this.night.rows;
    this.go(rows.find((row) => this.planned(row)) ?? rows[rows.length - 1], find(this.night.columns, FIRST) ?? this.columns[0]);
  }

  /** @param {Row} row @param {string} column */
  async go(row, column) {
    await this.updateComplete;
    const place = this.querySelector(`[data-row="${row.key}"]`);
    const cells = [...(place?.querySelectorAll('input[data-column]') ?? [])];
    /** @type {HTMLInputElement | undefined} */ (cells.find((cell) => cell.getAttribute('data-column') === column))?.focus();
  }
}
customElements.define('hw-readings', Readings);

/** A height behind a bare sign, which may mean either way. @param {string} text */
function signed(text) {
  return /^\s*[-+\u2212]/.test(text);
}
