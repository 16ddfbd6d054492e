/** Starts a night: with a name and a day, and the readings of a file where there is one. */
import { html, nothing } from 'lit';
import { post } from '../shared/api.js';
import { Part, company } from '../shared/page.js';
import { pick } from '../shared/file.js';
import { whoField } from '../shared/who.js';
import { fresh } from './columns.js';

class NewNight extends Part {
  /** @override */
  static properties = { first: { type: Boolean, attribute: false }, file: { state: true }, trouble: { state: true } };

  constructor() {
    super();
    this.first = false;
    /** @type {{ name: string, text: string } | null} */
    this.file = null;
    this.trouble = '';
  }

  /** @override */
  render() {
    return html`<form @submit=${(/** @type {Event} */ event) => this.start(event)}>
      <h2>A new night</h2>
      ${this.first ? html`<p>A night is a table of steady readings: how long the line was, what the pump gauge, the tip gauge and the
        meter showed. Type them as they are called in, or import the file you already have.</p>` : nothing}
      <div class="fields">
        <div class="field"><label>Name<input name="name" required maxlength="80" placeholder="October flow test"></label></div>
        <div class="field"><label>Day<input name="date" type="date" required .value=${today()}></label></div>
        ${whoField()}
      </div>
      ${this.trouble ? html`<p class="wrong" role="alert">${this.trouble}</p>` : nothing}
      <p class="row">
        <button class="go">${this.file ? `Start with ${this.file.name}` : 'Start with an empty table'}</button>
        <button type="button" @click=${() => this.take()}>Import readings (CSV)</button>
        ${this.first ? nothing : html`<button type="button" @click=${() => this.dispatchEvent(new Event('left'))}>Back</button>`}
      </p></form>`;
  }

  async take() {
    try {
      const file = await pick('.csv,text/csv');
      if (!file) return;
      this.file = file;
      this.trouble = '';
      const name = /** @type {HTMLInputElement} */ (this.querySelector('[name=name]'));
      if (!name.value) name.value = file.name.replace(/(\.readings)?\.csv$/i, '').replaceAll('-', ' ');
    } catch (error) {
      this.trouble = error instanceof Error ? error.message : String(error);
    }
  }

  /** @param {Event} event */
  async start(event) {
    event.preventDefault();
    const given = new FormData(/** @type {HTMLFormElement} */ (event.target));
    const units = (await company)?.units ?? 'us';
    const rows = this.file ? { csv: this.file.text, source: this.file.name } : { columns: fresh(units) };
    try {
      const record = await post('/drills', { name: given.get('name'), date: given.get('date'), ...rows });
      this.dispatchEvent(new CustomEvent('started', { detail: record }));
    } catch (error) {
      this.trouble = error instanceof Error ? error.message : String(error);
    }
  }
}
customElements.define('hw-new-night', NewNight);

function today() {
  const now = new Date();
  return new Date(now.getTime() - now.getTimezoneOffset() * 60_000).toISOString().slice(0, 10);
}
