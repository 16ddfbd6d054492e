/** Is every line ready? Each package with what its numbers rest on, and what to do next. */
import { html, nothing } from 'lit';
import { get, Trouble } from '../shared/api.js';
import { Part, busy, company } from '../shared/page.js';
import { capital, counted, set, day, moment } from '../shared/text.js';
import { rigOf } from './rig.js';

/** So many rigs are shown with all they rest on at once; of more, one opens what one wants to see. */
const FEW = 3;

class Station extends Part {
  /** @override */
  static properties = { found: { state: true }, trouble: { state: true }, none: { state: true } };

  constructor() {
    super();
    /** @type {any} */
    this.found = null;
    this.trouble = '';
    this.none = false;
    /** @type {string | undefined} */
    this.zone = undefined;
  }

  /** @override */
  async connectedCallback() {
    super.connectedCallback();
    try {
      this.zone = (await company)?.zone;
      this.found = await get('/station');
    } catch (error) {
      if (error instanceof Trouble && error.status === 404) this.none = true;
      else this.trouble = error instanceof Error ? error.message : String(error);
    }
  }

  /** @override */
  render() {
    if (this.none) return this.first();
    if (this.trouble) return html`<p class="wrong">${this.trouble}</p>`;
    if (!this.found) return busy('Looking at the lines');
    const lines = this.found.lines;
    const ready = lines.filter((/** @type {any} */ line) => line.wants.length === 0).length;
    return html`<p class="answer-line">${lines.length === 0 ? 'No line is written down yet.' : ready === lines.length ? `Yes: ${counted(ready, 'line')}.`
        : html`${ready === 0 ? 'Not one of' : `${capital(counted(ready, 'line').split(' ')[0])} of`} ${counted(lines.length, 'line')}.`}</p>
      <p class="soft">Ready means: measured on a test night, with the hose's service test in date, and as long as is safe.</p>
      <ol class="ready">${lines.map((/** @type {any} */ line) => this.line(line))}</ol>
      ${this.orders()}${this.stretches()}${this.practice()}${this.nights()}`;
  }

  /** @param {any} line */
  line(line) {
    const ready = line.wants.length === 0;
    return html`<li class=${ready ? 'yes' : 'no'}><h2>${line.id} <span class="state">${ready ? 'ready' : 'not ready'}</span></h2>
      <p class="soft">${set(line.line)}</p>
      ${line.safe ? html`<p>Safe to <b>${line.safe}</b>, level; stopped by ${set(line.stoppedBy)}. ${set(capital(line.evidence))}.</p>` : nothing}
      ${ready ? nothing : html`<ul class="wants">${line.wants.map((/** @type {any} */ want) => html`<li>${set(want.says)} <a href=${want.go}>${want.does}</a></li>`)}</ul>`}</li>`;
  }

  orders() {
    const { engines, inForce, signed, waiting } = this.found.orders;
    if (engines.length === 0) return nothing;
    return html`<section><h2>Ordered pressures</h2>
      <p class="soft">${inForce ? html`<a href="/orders?order=${inForce}">Order ${inForce}</a> is in force, signed by ${signed.who}, ${moment(signed.at, this.zone)}.` : html`No order is in force. <a href="/orders">Propose one</a>`}
        ${waiting ? html` <a href="/orders?order=${waiting}">Order ${waiting}</a> waits for a signature.` : nothing}</p>
      <ol class="ready">${engines.map((/** @type {import('./rig.js').Rig} */ rig) => rigOf(rig, this.zone, engines.length <= FEW))}</ol></section>`;
  }

  stretches() {
    const { kept, stale } = this.found.stretches;
    if (kept === 0) return nothing;
    return html`<section data-stretches><h2>Stretch sheets</h2>
      <p class="soft">${stale.length === 0 ? `${capital(counted(kept, 'stretch', 'stretches'))} kept; nothing that ${kept === 1 ? 'its sheet rests' : 'their sheets rest'} on has changed.` : `${stale.length} of ${counted(kept, 'stretch', 'stretches')} stale.`}</p>
      ${stale.length === 0 ? nothing : html`<ul class="plain">${stale.map((/** @type {any} */ one) => html`<li><b>${one.title}</b>: ${set(one.why.join(' '))} <a href="/ground?stretch=${one.id}">Look at it again</a></li>`)}</ul>`}</section>`;
  }

  practice() {
    const { kept, sheets } = this.found.practice;
    if (kept === 0) return nothing;
    const stale = sheets.filter((/** @type {any} */ sheet) => sheet.stale.length > 0);
    const count = stale.reduce((/** @type {number} */ sum, /** @type {any} */ sheet) => sum + sheet.stale.length, 0);
    return html`<section data-practice><h2>Practice problems</h2>
      <p class="soft">${count === 0 ? `${capital(counted(kept, 'problem'))} kept; every answer holds.` : `${count} of ${counted(kept, 'problem')} stale.`}</p>
      ${stale.length === 0 ? nothing : html`<ul class="plain">${stale.map((/** @type {any} */ sheet) => html`<li><b>${sheet.title}</b>: ${counted(sheet.stale.length, 'problem')} stale. <a href="/orders">Make a new one</a></li>`)}</ul>`}</section>`;
  }

  nights() {
    const nights = this.found.nights;
    return html`<section><h2>Test nights</h2>
      ${nights.length === 0 ? html`<p class="soft">None yet. <a href="/drill">Start the first one</a></p>` : html`<ul class="plain">${nights.map((/** @type {any} */ night) => html`<li>
        <a href="/drill?night=${night.id}">${night.name}</a>, ${day(night.date)}: ${counted(night.rows, 'reading')}, ${night.acceptedInto ? 'taken over into the kit' : 'not taken over yet'}</li>`)}</ul>`}</section>`;
  }

  first() {
    return html`<div class="empty"><p>Nothing is written down yet. A company begins with its kit: hose, nozzles, engines, gauges, and the lines as they lie on the rigs.</p>
      <p><a href="/kit">Write or import the kit</a></p>
      <p class="soft small">To look around first, start the program with --demo in an empty folder: it brings an invented company's kit and one test night.</p></div>`;
  }
}
customElements.define('hw-station', Station);
