/** What goes on the rig? Every figure of the cards, with what it really gives, before anything is printed. */
import { html, nothing } from 'lit';
import { get, save, Trouble } from '../shared/api.js';
import { failed } from '../shared/notes.js';
import { Part, busy, company } from '../shared/page.js';
import { bare, head } from '../shared/table.js';
import { set, capital, day } from '../shared/text.js';
import { engineChoice, firstEngine } from '../shared/engines.js';

const SHEETS = [
  { path: 'pump-card.pdf', name: 'Pump card', what: 'for the panel: discharge by length, legible at arm\'s length in red light' },
  { path: 'tags.pdf', name: 'Discharge tags', what: 'one for each discharge, to cut out' },
  { path: 'pocket-card.pdf', name: 'Pocket card', what: 'all packages, folded to fit a pocket' },
];

const ORDER_SHEETS = [
  { path: 'order.pdf', name: 'order', what: 'its numbers with what they rest on, and the table of revisions' },
  { path: 'changes.pdf', name: 'change sheet', what: 'what it changes against the order signed before' },
  { path: 'readers.pdf', name: 'list to sign', what: 'for everybody who has read it and will pump by it' },
];

class PapersPage extends Part {
  /** @override */
  static properties = { preview: { state: true }, book: { state: true }, trouble: { state: true }, none: { state: true }, drawing: { state: true }, round: { state: true } };

  constructor() {
    super();
    /** @type {any} */
    this.preview = null;
    this.trouble = '';
    this.none = false;
    /** @type {any} the orders; null where they cannot be had */
    this.book = null;
    /** @type {string | null} the sheet that is being drawn */
    this.drawing = null;
    /** @type {'nearest' | 'up'} */
    this.round = 'nearest';
    /** @type {string[]} */
    this.engines = [];
    this.engine = '';
  }

  /** What the papers are asked for with. */
  query() {
    return new URLSearchParams({ round: this.round, ...(this.engine && { engine: this.engine }) });
  }

  /** @override */
  async connectedCallback() {
    super.connectedCallback();
    const found = await company;
    this.none = found === null;
    this.engines = found?.engines ?? [];
    if (!this.none) this.book = await get('/orders').catch(() => null);
    this.engine = firstEngine(this.engines);
    if (!this.none) await this.look();
  }

  async look() {
    try {
      this.preview = await get(`/papers?${this.query()}`);
      this.trouble = '';
    } catch (error) {
      this.trouble = error instanceof Trouble ? error.message : String(error);
    }
  }

  /** @override */
  render() {
    if (this.none) return html`<div class="empty"><p>There is no kit yet, so there is nothing to print.</p><p><a href="/kit">Write or import the kit</a></p></div>`;
    if (this.trouble) return html`<p class="wrong" role="alert">${this.trouble}</p>`;
    const preview = this.preview;
    if (!preview) return busy('Working out the figures');
    const refused = preview.engines.flatMap((/** @type {any} */ engine) => engine.lines).flatMap((/** @type {any} */ line) => line.entries).filter((/** @type {any} */ entry) => !entry.stands).length;
    return html`${engineChoice(this.engines, this.engine, (engine) => { this.engine = engine; this.look(); })}<p class="sub">Revision ${preview.revision}, ${day(preview.made)}. Rounded to ${preview.step}. ${refused === 0 ? 'Every figure passes its checks.'
        : `${refused} ${refused === 1 ? 'figure is' : 'figures are'} refused and will not be printed.`}</p>
      <p class="stamp">${preview.stamp}</p><p class="soft">${preview.stampMeans}</p>
      ${preview.engines.length === 0 ? html`<div class="empty"><p>No package is on an engine yet.</p><p><a href="/kit">Add a package</a></p></div>` : this.sheets()}
      ${preview.engines.map((/** @type {any} */ engine) => html`<section><h2>${engine.id}</h2>${engine.lines.map((/** @type {any} */ line) => this.line(line))}</section>`)}
      ${preview.assumed.length ? html`<section><h2>What the papers assume</h2><ul class="plain">${preview.assumed.map((/** @type {string} */ one) => html`<li>${set(one)}</li>`)}</ul></section>` : nothing}`;
  }

  sheets() {
    return html`${this.ordered()}<ul class="sheets">${SHEETS.map((sheet) => html`<li><button ?disabled=${this.drawing !== null} @click=${() => this.print(sheet.path)}>
        ${this.drawing === sheet.path ? `Drawing the ${sheet.name.toLowerCase()}` : `Print the ${sheet.name.toLowerCase()}`}</button> <span class="soft">${sheet.what}</span>
        ${this.drawing === sheet.path ? html`<span class="busy"></span>` : nothing}</li>`)}</ul>
      <p class="row"><label class="inline">Round <select @change=${(/** @type {Event} */ event) => { this.round = /** @type {any} */ (event.target).value; this.look(); }}>
        <option value="nearest">to the nearest ${this.preview.step}</option><option value="up">up to the next ${this.preview.step}</option></select></label></p>`;
  }

  /** The papers of the order in force and of the one that waits: from their own numbers, whatever the kit says now. */
  ordered() {
    const { inForce, proposed } = this.book ?? {};
    if (!inForce && !proposed) return nothing;
    return html`${inForce ? this.papersOf(inForce, 'is in force') : nothing}${proposed ? this.papersOf(proposed, 'waits for a signature') : nothing}
      <h2>Papers of the kit as it stands</h2>`;
  }

  /** @param {number} number @param {string} standing */
  papersOf(number, standing) {
    const sheet = (/** @type {string} */ path) => `/orders/${number}/${path}`;
    return html`<section data-order=${number}><h2>Papers of order ${number}</h2><p class="soft"><a href="/orders?order=${number}">Order ${number}</a> ${standing}. Its own cards and tags are printed there.</p>
      <ul class="sheets">${ORDER_SHEETS.map(({ path, name, what }) => html`<li><button ?disabled=${this.drawing !== null} @click=${() => this.draw(sheet(path), sheet(path))}>
        ${this.drawing === sheet(path) ? `Drawing the ${name}` : `Print the ${name}`}</button> <span class="soft">${what}</span></li>`)}</ul></section>`;
  }

  /** @param {string} path */
  async print(path) {
    await this.draw(path, `/papers/${path}?${this.query()}`);
  }

  /** @param {string} name @param {string} from */
  async draw(name, from) {
    this.drawing = name;
    await save(from).catch(failed);
    this.drawing = null;
  }

  /** @param {any} line */
  line(line) {
    const [first] = line.entries;
    return html`<section class="line"><h3>${line.id}</h3>
      <p class="soft">${set(line.hose)}; ${set(line.nozzle)}. Read on ${set(line.gauge)}. ${set(capital(line.evidence))}.</p>
      <div class="wide" tabindex="0" role="region" aria-label="Figures of ${line.id}"><table class="figures">
        <thead><tr>${head('length', first.length)}${head('gauge', first.figure)}${head('flow', first.flow)}${head('tip', first.tip)}${head('reaction', first.reaction)}<th scope="col" class="words">checks</th></tr></thead>
        <tbody>${line.entries.map((/** @type {any} */ entry) => this.entry(entry))}</tbody></table></div>
      <p>Each floor up, ${line.floorHeight}: add ${line.floorAdder}${line.mostGauge ? `, never above ${line.mostGauge}` : ''}. Safe to ${line.safe}, level; stopped by ${set(line.stoppedBy)}.</p>
      ${line.cautions.map((/** @type {string} */ caution) => html`<p class="caution">${set(caution)}</p>`)}</section>`;
  }

  /** @param {any} entry */
  entry(entry) {
    const failed = entry.checks.filter((/** @type {any} */ check) => !check.passed);
    return html`<tr class=${entry.stands ? '' : 'refused'}><th scope="row">${bare(entry.length)}</th>
      <td class="figure">${entry.stands ? bare(entry.figure) : html`<s>${bare(entry.figure)}</s>`}${entry.tested ? nothing : html`<span class="untested">untested</span>`}</td>
      <td>${bare(entry.flow)}</td><td>${bare(entry.tip)}</td><td>${bare(entry.reaction)}</td>
      <td class="words">${entry.stands ? html`<details><summary>passes ${entry.checks.length} checks</summary><ul class="plain">${entry.checks.map((/** @type {any} */ check) => html`<li>${set(check.says)}</li>`)}
          ${entry.notChecked.map((/** @type {string} */ one) => html`<li class="soft">${set(one)}</li>`)}</ul></details>`
        : html`<span class="wrong">refused</span> ${entry.refusal.length ? entry.refusal.map((/** @type {string} */ says) => html`<span class="why">${set(says)} </span>`) : failed.map((/** @type {any} */ check) => set(check.says))}`}</td></tr>`;
  }
}
customElements.define('hw-papers', PapersPage);
