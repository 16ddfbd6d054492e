/** What do the neighbours pump? Their figures as theirs, with their date; a file taken in beside ours; ours handed over. */
import { html, nothing } from 'lit';
import { get, post, save } from '../shared/api.js';
import { done, failed } from '../shared/notes.js';
import { Part, busy, company } from '../shared/page.js';
import { capital, counted, day, moment } from '../shared/text.js';
import { whoField } from '../shared/who.js';
import './hand-over.js';
import './take-in.js';
import { packages } from './theirs.js';
import { sheetCheck } from './sheet-check.js';

class Neighbours extends Part {
  /** @override */
  static properties = { found: { state: true }, trouble: { state: true }, none: { state: true }, busy: { state: true } };

  constructor() {
    super();
    /** @type {any} */
    this.found = null;
    this.trouble = '';
    this.none = false;
    this.busy = false;
    this.zone = 'UTC';
  }

  /** @override */
  async connectedCallback() {
    super.connectedCallback();
    const own = await company;
    this.none = own === null;
    this.zone = own?.zone ?? 'UTC';
    if (!this.none) await this.look();
  }

  async look() {
    try {
      this.found = await get('/exchange');
      this.trouble = '';
    } catch (error) {
      this.trouble = error instanceof Error ? error.message : String(error);
    }
  }

  /** @override */
  render() {
    if (this.none) return html`<div class="empty"><p>There is no kit yet, so there is nothing to lay beside a neighbour's.</p><p><a href="/kit">Write or import the kit</a></p></div>`;
    if (this.trouble) return html`<p class="wrong" role="alert">${this.trouble}</p>`;
    if (!this.found) return busy('Looking at what the neighbours handed over');
    const list = this.found.neighbours;
    return html`${list.length === 0
        ? html`<div class="empty"><p>No neighbour has handed anything over yet. Take in a file of theirs below, or hand yours over and have them do the same.</p></div>`
        : html`<p class="sub">${capital(counted(list.length, 'neighbour'))}. Their figures hold for their own hose, nozzles, pumps and gauges; none of them is an order of ours.</p>`}
      ${list.map((/** @type {any} */ one) => this.neighbour(one))}
      <hw-take-in .zone=${this.zone} @kept=${() => this.look()}></hw-take-in>
      <hw-hand-over .found=${this.found} .zone=${this.zone} @handed=${() => this.look()}></hw-hand-over>
      ${sheetCheck()}`;
  }

  /** @param {any} one */
  neighbour(one) {
    return html`<section class="neighbour" data-neighbour=${one.id}><h2>${one.company}</h2>
      ${one.says ? html`<p class="wrong" role="alert">${one.says}</p>` : nothing}
      <p>Their figures, made ${moment(one.issued, this.zone)}${one.order ? html`, of ${one.order}; to be used until ${day(one.until)}` : nothing}.
        <span class="soft">Fingerprint compared by ${one.confirmedBy}, ${moment(one.confirmedAt, this.zone)}.</span></p>
      ${packages(one, { before: false })}
      <details><summary>Their key and this file</summary><p class="fingerprint">${one.fingerprint}</p><p>Check of the file: <code>${one.check}</code>. All that is theirs is kept here as <code>${one.id}</code>, apart from what is ours.</p>
        ${whoField()}<p class="row"><button ?disabled=${this.busy} @click=${() => this.takeOut(one)}>Take ${one.company} out</button></p>
        <p class="soft">It stays in the history. Their key must then be compared anew.</p></details>
      <p class="row"><button @click=${() => save(`/exchange/neighbours/${encodeURIComponent(one.id)}/sheet.pdf`).catch(failed)}>Print their sheet</button></p></section>`;
  }

  /** @param {any} one */
  async takeOut(one) {
    this.busy = true;
    try {
      await post(`/exchange/neighbours/${encodeURIComponent(one.id)}/taken-out`, {});
      await this.look();
      done(`${one.company} is taken out.`);
    } catch (error) {
      failed(error);
    }
    this.busy = false;
  }
}
customElements.define('hw-neighbours', Neighbours);
