/** What else rests on the order: stretch sheets and practice problems, the stale ones counted and listed; new practice made here. */
import { html, nothing } from 'lit';
import { get, post, save } from '../shared/api.js';
import { done, failed } from '../shared/notes.js';
import { Part } from '../shared/page.js';
import { capital, counted, set } from '../shared/text.js';

/** So many questions fit one side of paper. */
const PROBLEMS = 12;

class Rests extends Part {
  /** @override */
  static properties = { shown: { attribute: false }, engines: { attribute: false }, inForce: { attribute: false }, stretches: { state: true }, practice: { state: true }, busy: { state: true } };

  constructor() {
    super();
    /** The order that is shown and how it stands: what rests on it is looked at anew with each. */
    this.shown = '';
    /** @type {string[]} engines of the order in force */
    this.engines = [];
    /** @type {number | undefined} number of the order in force */
    this.inForce = undefined;
    /** @type {any[] | null} */
    this.stretches = null;
    /** @type {any} */
    this.practice = null;
    this.busy = false;
  }

  /** @override @param {Map<string, unknown>} changed */
  willUpdate(changed) {
    if (changed.has('shown')) this.look();
  }

  async look() {
    try {
      const [stretches, practice] = await Promise.all([get('/stretches'), get('/practice')]);
      this.stretches = stretches.stretches;
      this.practice = practice;
    } catch (error) {
      failed(error);
    }
  }

  /** @override */
  render() {
    if (!this.stretches || !this.practice) return nothing;
    return html`<section data-rests><h2>What else rests on these numbers</h2>${this.sheets(this.stretches)}${this.problems(this.practice)}${this.make()}</section>`;
  }

  /** @param {any[]} all */
  sheets(all) {
    const stale = all.filter((one) => one.stale.length > 0);
    if (all.length === 0) return html`<p class="soft">No stretch is kept.</p>`;
    return html`<p>${share(stale.length, all.length, 'stretch sheet', 'stretch sheets')}</p>
      ${stale.length ? html`<ul class="plain">${stale.map((one) => html`<li><b>${one.title}</b>: ${set(one.stale.join(' '))} <a href="/ground?stretch=${one.id}">Look at it again</a></li>`)}</ul>` : nothing}`;
  }

  /** @param {any} practice */
  problems(practice) {
    if (practice.kept === 0) return html`<p class="soft">No practice sheet is kept.</p>`;
    const stale = practice.sheets.reduce((/** @type {number} */ sum, /** @type {any} */ sheet) => sum + sheet.stale.length, 0);
    return html`<p>${share(stale, practice.kept, 'practice problem', 'practice problems')}</p>
      <ul class="plain">${practice.sheets.map((/** @type {any} */ sheet) => this.sheet(sheet))}</ul>`;
  }

  /** @param {any} sheet */
  sheet(sheet) {
    const why = [...new Set(sheet.stale.flatMap((/** @type {any} */ one) => one.why))];
    return html`<li><b>${sheet.title}</b>: ${counted(sheet.problems, 'problem')}${sheet.stale.length ? html`, <span class="wrong">${sheet.stale.length} stale</span>: ${sheet.stale.map((/** @type {any} */ one) => `no. ${one.problem}, ${one.package}`).join('; ')}. ${set(why.join(' '))}` : '.'}
      <button @click=${() => save(`/practice/${sheet.id}/sheet.pdf`).catch(failed)}>Print ${sheet.title}</button>
      <button @click=${() => this.takeOut(sheet)}>Take it out</button></li>`;
  }

  make() {
    if (!this.inForce) return html`<p class="soft">Practice for drivers is made from a signed order; none is in force.</p>`;
    return html`<p>Practice for drivers: questions from order ${this.inForce}, with a sheet of answers for who asks.</p>
      <p class="row">${this.engines.map((engine) => html`<button ?disabled=${this.busy} @click=${() => this.made(engine)}>Make a practice sheet for ${engine}</button> `)}</p>`;
  }

  /** @param {string} engine */
  async made(engine) {
    this.busy = true;
    try {
      const head = await post('/practice', { engine, problems: PROBLEMS });
      await this.look();
      done(`The practice sheet ${head.title} is kept.`);
    } catch (error) {
      failed(error);
    }
    this.busy = false;
  }

  /** @param {any} sheet */
  async takeOut(sheet) {
    try {
      await post(`/practice/${sheet.id}/taken-out`, { basedOn: sheet.version });
      await this.look();
      done(`The practice sheet ${sheet.title} is taken out; the history keeps it.`);
    } catch (error) {
      failed(error);
    }
  }
}
customElements.define('hw-rests', Rests);

/** @param {number} stale @param {number} all @param {string} one @param {string} many */
function share(stale, all, one, many) {
  return stale === 0 ? `${capital(counted(all, one, many))}, none stale.` : `${stale} of ${all} ${all === 1 ? one : many} stale.`;
}
