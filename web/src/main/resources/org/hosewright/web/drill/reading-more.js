/** What stands under a reading: what is odd about it and what to do, and on demand its other cells. */
import { html, nothing } from 'lit';
import { live } from 'lit/directives/live.js';
import { Part } from '../shared/page.js';
import { done, failed } from '../shared/notes.js';
import { capital, set } from '../shared/text.js';
import { TYPED, base, head, unit } from './columns.js';
import { untouched } from './row.js';

class ReadingMore extends Part {
  /** @override */
  static properties = {
    night: { attribute: false }, row: { attribute: false }, judged: { attribute: false },
    aside: { type: Boolean, attribute: false }, open: { type: Boolean, attribute: false }, asking: { state: true },
  };

  constructor() {
    super();
    /** @type {import('./night.js').Night} */
    this.night;
    /** @type {import('./row.js').Row} */
    this.row;
    /** @type {any} */
    this.judged = undefined;
    this.aside = false;
    this.open = false;
    /** @type {'use' | 'set aside' | null} the ruling whose reason is being asked for */
    this.asking = null;
  }

  get name() {
    return this.row.cells.reading ?? '';
  }

  /** @override */
  render() {
    return html`${this.row.theirs ? this.both() : nothing} ${this.finding()} ${this.ruling()} ${this.asking ? this.reason() : this.actions()}
      ${this.open ? this.others() : nothing}`;
  }

  finding() {
    const judged = this.judged;
    if (!judged) return nothing;
    if (judged.trouble) return html`<p class="wrong">${judged.trouble}</p>`;
    if (!judged.kind || judged.kind === 'none') return nothing;
    const also = judged.also?.map((/** @type {string} */ kind) => kind.replace('-', ' ')).join(', ');
    return html`<p class="says"><span class="wrong">${set(capital(judged.says))}.</span>
      ${judged.check ? html`${set(capital(judged.check))}.` : nothing}
      ${also ? html`<span class="also">The readings alone cannot exclude: ${also}.</span>` : nothing}
      ${judged.with ? html`<span class="with">${set(judged.with)}</span>` : nothing}</p>`;
  }

  ruling() {
    const ruling = this.row.ruling;
    if (!ruling) return nothing;
    return html`<p>${ruling.who} ruled: ${ruling.verdict === 'use' ? 'use it' : 'set it aside'}, because ${ruling.reason}.</p>`;
  }

  actions() {
    if (!this.row.id || (!this.open && !this.aside && !this.row.ruling && (this.judged?.kind ?? 'none') === 'none')) return nothing;
    return html`<p class="row">
      ${this.aside
        ? html`<button @click=${() => this.ask('use')}>Use reading ${this.name}</button>`
        : html`<button @click=${() => this.ask('set aside')}>Set aside reading ${this.name}</button>`}
      ${this.row.ruling ? html`<button @click=${() => this.rule('as judged', 'ruling taken back')}>Take the ruling back</button>` : nothing}
      ${this.open ? html`<button @click=${() => this.takeOut()}>Remove reading ${this.name}</button>` : nothing}
    </p>`;
  }

  /** @param {'use' | 'set aside'} verdict */
  async ask(verdict) {
    this.asking = verdict;
    await this.updateComplete;
    /** @type {HTMLInputElement} */ (this.querySelector('.reason input')).focus();
  }

  reason() {
    const what = this.asking === 'use' ? 'Use' : 'Set aside';
    return html`<form class="reason row" @submit=${(/** @type {Event} */ event) => this.give(event)}>
      <label>Why ${this.asking === 'use' ? 'use it' : 'set it aside'}?
        <input name="reason" required maxlength="200" autocomplete="off"></label>
      <button class="go">${what} reading ${this.name}</button>
      <button type="button" @click=${() => { this.asking = null; }}>Leave it</button>
    </form>`;
  }

  /** @param {Event} event */
  give(event) {
    event.preventDefault();
    const given = new FormData(/** @type {HTMLFormElement} */ (event.target)).get('reason');
    const verdict = this.asking;
    this.asking = null;
    if (verdict) this.rule(verdict, String(given).trim());
  }

  /** @param {string} verdict @param {string} reason */
  async rule(verdict, reason) {
    const before = this.row.ruling;
    try {
      await this.night.change(this.ruled(verdict, reason));
      const says = verdict === 'as judged' ? `Ruling on reading ${this.name} taken back.`
        : `Reading ${this.name} is ${verdict === 'use' ? 'used' : 'set aside'}.`;
      done(says, () => this.night.change(this.ruled(before?.verdict ?? 'as judged', before?.reason ?? 'undone')).catch(failed));
    } catch (error) {
      failed(error);
    }
  }

  /** @param {string} verdict @param {string} reason */
  ruled(verdict, reason) {
    return { do: 'rule', row: this.row.id, version: this.row.version, verdict, reason };
  }

  async takeOut() {
    const { id, version } = this.row;
    const name = this.name;
    try {
      await this.night.change({ do: 'remove-row', row: id, version });
      done(`Reading ${name} removed from the table; it stays in the record.`, () => this.restore(id));
    } catch (error) {
      failed(error);
    }
  }

  /** @param {string | undefined} id */
  async restore(id) {
    const removed = this.night.removed.find((row) => row.id === id);
    if (removed) await this.night.change({ do: 'restore-row', row: id, version: removed.version }).catch(failed);
  }

  others() {
    const columns = this.night.columns.filter((column) => !TYPED.includes(base(column)));
    return html`<div class="fields">${columns.map((column) => html`<div class="field"><label>${head(column)} ${unit(column)}
      <input .value=${live(this.row.cells[column] ?? '')} autocomplete="off"
        @input=${(/** @type {InputEvent} */ event) => this.night.type(this.row, column, /** @type {HTMLInputElement} */ (event.target).value)}
        @change=${() => this.night.leave(this.row)}></label></div>`)}</div>
      ${untouched(this.row) ? html`<p class="soft small">The next readings take these over until you change them.</p>` : nothing}`;
  }

  both() {
    const theirs = /** @type {import('./row.js').StoredRow} */ (this.row.theirs);
    const differing = this.night.columns.filter((column) => (theirs.cells[column] ?? '') !== (this.row.cells[column] ?? ''));
    return html`<div class="caution"><p>Somebody else changed this reading while you typed.</p>
      <ul class="plain">${differing.map((column) => html`<li>${head(column)}: theirs ${theirs.cells[column] || 'empty'}, yours ${this.row.cells[column] || 'empty'}</li>`)}</ul>
      <p class="row"><button @click=${() => this.night.settle(this.row, true)}>Keep yours</button>
        <button @click=${() => this.night.settle(this.row, false)}>Take theirs</button></p></div>`;
  }
}
customElements.define('hw-reading-more', ReadingMore);
