/** All test nights together: hose by type and batch, what each night is worth, what changes over the years. */
import { html, nothing } from 'lit';
import { get } from '../shared/api.js';
import { Part, busy } from '../shared/page.js';
import { set } from '../shared/text.js';
import { list } from './results.js';

class Years extends Part {
  /** @override */
  static properties = { version: { attribute: false }, shown: { state: true }, trouble: { state: true } };

  constructor() {
    super();
    /** @type {unknown} worked out anew when it changes, as long as it is open */
    this.version = null;
    /** @type {any} */
    this.shown = null;
    this.trouble = '';
    this.open = false;
  }

  /** @override @param {Map<string, unknown>} changed */
  updated(changed) {
    if (changed.has('version') && this.open) this.look();
  }

  async look() {
    try {
      this.shown = await get('/years');
      this.trouble = '';
    } catch (error) {
      this.trouble = error instanceof Error ? error.message : String(error);
    }
  }

  /** @override */
  render() {
    return html`<details class="years" @toggle=${(/** @type {Event} */ event) => this.toggled(/** @type {HTMLDetailsElement} */ (event.target))}>
      <summary><h2>All nights together</h2></summary>${this.inside()}</details>`;
  }

  /** @param {HTMLDetailsElement} details */
  toggled(details) {
    this.open = details.open;
    if (details.open) this.look();
  }

  inside() {
    if (this.trouble) return html`<p class="wrong" role="alert">${this.trouble}</p>`;
    if (!this.shown) return busy('Weighing all nights');
    const { shown } = this;
    return html`<p class="sub">${shown.title}.</p>${shown.types.map(type)}
      <div class="evidence">${list('What differs', shown.spreads)}
      ${list('Gauges, meters, piping and nozzles', shown.shared.map((/** @type {any} */ one) => `${one.name} ${one.says} (${one.nights === 1 ? '1 night' : `${one.nights} nights`})`))}
      ${list('What these nights cannot tell', shown.withheld)} ${list('Left out', shown.leftOut)} ${list('What this assumes', shown.assumed)}</div>`;
  }
}
customElements.define('hw-years', Years);

/** @param {any} one */
function type(one) {
  return html`<section><h3>${one.type}: <span class="number">${set(one.says)}</span></h3>
    <table class="batches"><thead><tr><th scope="col">batch</th><th scope="col">loses</th><th scope="col">flown on</th></tr></thead>
    <tbody>${one.batches.map((/** @type {any} */ batch) => html`<tr><th scope="row">${batch.batch}</th><td>${set(batch.says)}</td><td>${set(batch.flownOn)}</td></tr>`)}</tbody></table>
    ${one.driftSays ? html`<p>${set(one.driftSays)}</p>` : nothing}
    ${one.loss ? html`<ul class="plain">${one.worthSays.map((/** @type {string} */ line) => html`<li>${set(line)}</li>`)}
      ${one.anotherSays ? html`<li>${set(one.anotherSays)}</li>` : nothing}</ul>` : nothing}</section>`;
}
