/** What do we pump for this? A lay built piece by piece from the company's kit, drawn and solved as it grows. */
import { html, nothing } from 'lit';
import { check, get, Trouble } from '../shared/api.js';
import { Part, busy } from '../shared/page.js';
import { stroke } from '../shared/drawing.js';
import { done } from '../shared/notes.js';
import { pick } from '../shared/file.js';
import { set } from '../shared/text.js';
import { working } from '../shared/working.js';
import { cautions, figures, hoses, limits, methods, panel, tips, warnings } from './answer.js';
import { diagram } from './diagram.js';
import { choice, isUnsaid, sized, text } from './fields.js';
import { copied, take, withNotesOf } from './notes.js';
import { outline } from './outline.js';
import { source } from './source.js';
import { freshLay } from './tree.js';
import { beside, chooser, find, turns, weaker } from './whatif.js';
import { write } from './yaml.js';

const NARROW = 560;
const KEPT = 'hosewright.lay';
const QUESTIONS = /** @type {const} */ ([['tip', 'What do we pump for this tip pressure?'], ['flow', 'What do we pump for this flow at each tip?'], ['pump', 'What do they get at this pump pressure?']]);

/** What is asked where a rise says up or down and not how far. @param {any} part @returns {string} */
function unsaid(part) {
  if (typeof part !== 'object' || part === null) return '';
  if (isUnsaid(part.rise)) return `A hose goes ${part.rise}: say how far${part.hose ? ` (${part.hose})` : ''}.`;
  return Object.values(part).map(unsaid).find((says) => says) ?? '';
}

/** What is asked where a siamese has one line only. @param {any} lay @returns {string} */
function alone(lay) {
  /** @type {string[]} */ const into = [];
  const look = (/** @type {any} */ part) => {
    if (typeof part !== 'object' || part === null) return;
    if (typeof part.join === 'string') into.push(part.join);
    Object.values(part).forEach(look);
  };
  look(lay.lines);
  look(lay.joins);
  const name = Object.keys(lay.joins ?? {}).find((join) => into.filter((one) => one === join).length === 1);
  return name ? `Only one line ends in ${name} so far: let another line end in it too.` : '';
}

class LayPage extends Part {
  /** @override */
  static properties = { kit: { state: true }, lay: { state: true }, shown: { state: true }, trouble: { state: true }, none: { state: true }, tip: { state: true }, found: { state: true }, wish: { state: true }, share: { state: true }, draft: { state: true } };

  constructor() {
    super();
    /** @type {any} the kit's entries */
    this.kit = null;
    /** @type {any} the lay as the file has it */
    this.lay = null;
    /** @type {any} the answer to exactly this lay; null while there is none */
    this.shown = null;
    this.trouble = '';
    this.none = false;
    this.tip = '';
    /** @type {import('./whatif.js').Found | null} */
    this.found = null;
    /** @type {import('./whatif.js').Wish} */
    this.wish = { place: '', what: 'burst', by: '' };
    this.share = '75 %';
    /** @type {string | null} the text while it is being edited */
    this.draft = null;
    this.asked = 0;
    /** The text that was opened, while nothing was changed. */
    this.original = '';
    /** @type {string[]} the notes of the text that was opened */
    this.notes = [];
  }

  /** @override */
  async connectedCallback() {
    super.connectedCallback();
    try {
      this.kit = (await get('/kit')).entries;
    } catch (error) {
      if (error instanceof Trouble && error.status === 404) this.none = true;
      else this.trouble = error instanceof Error ? error.message : String(error);
      return;
    }
    if (!this.ready()) return;
    const kept = localStorage.getItem(KEPT);
    if (!kept || !(await this.open(kept))) this.begin();
  }

  /** True where the kit has what a lay is made of. */
  ready() {
    return ['engines', 'hoses', 'nozzles'].every((key) => Object.keys(this.kit[key] ?? {}).length > 0);
  }

  get us() {
    return this.kit.units === 'us';
  }

  begin() {
    this.lay = freshLay(this.kit);
    this.original = '';
    this.notes = [];
    this.solve();
  }

  /** Takes a lay from text. @param {string} yaml @param {string} [name] */
  async open(yaml, name) {
    try {
      const { lay } = await check('/lays/read', { text: yaml, ...(name && { source: name }) });
      if (!Array.isArray(lay.lines) || lay.lines.length === 0) throw new Error('This is no lay: it has no lines.');
      this.lay = lay;
      this.draft = null;
      this.original = yaml;
      this.notes = take(yaml, lay);
      await this.solve();
      return true;
    } catch (error) {
      this.trouble = error instanceof Error ? error.message : String(error);
      return false;
    }
  }

  /** Changes the lay and solves it anew; what was stands ready to be taken back. @param {() => void} does @param {string} [says] */
  change(does, says) {
    const before = copied(this.lay);
    const original = this.original;
    does();
    this.lay = withNotesOf({ ...this.lay }, this.lay);
    this.original = '';
    if (says) done(says, () => { this.lay = before; this.original = original; this.solve(); });
    this.solve();
  }

  async solve() {
    const yaml = this.original || write(this.lay);
    localStorage.setItem(KEPT, yaml);
    this.found = null;
    const asked = ++this.asked;
    const sheet = this.clientWidth < NARROW ? 'phone' : 'laptop';
    let shown = null;
    let trouble = unsaid(this.lay) || alone(this.lay);
    try {
      if (!trouble) shown = await check('/lays/solve', { text: yaml, sheet, ...(this.tip && { tip: this.tip }) });
    } catch (error) {
      trouble = error instanceof Error ? error.message : String(error);
    }
    if (asked !== this.asked) return;
    this.shown = shown;
    this.trouble = trouble;
  }

  /** @override */
  render() {
    if (this.none) return html`<div class="empty"><p>There is no kit yet, so there is nothing to lay.</p><p><a href="/kit">Write or import the kit</a></p></div>`;
    if (this.kit && !this.ready()) return html`<div class="empty"><p>A lay needs an engine with a discharge, hose and a nozzle.</p><p><a href="/kit">Add them to the kit</a></p></div>`;
    if (!this.lay) return this.trouble ? html`<p class="wrong" role="alert">${this.trouble}</p>` : busy('Opening the kit');
    return html`${this.question()}
      <div class="lay-first"><div class="lay-answer" aria-live="polite">${this.answer()}</div>
        <div class="lay-picture" tabindex="0" role="region" aria-label="The lay, drawn">${diagram(this.lay, this.shown)}</div></div>
      ${this.shown ? this.whatIf() : nothing}
      <section class="lay-edit"><h2>The lay, in laying order</h2>${source(this.desk())}${outline(this.desk())}</section>
      ${this.shown ? this.evidence() : nothing}${this.file()}`;
  }

  desk() {
    return { lay: this.lay, kit: this.kit, us: this.us, shown: this.shown, change: (/** @type {() => void} */ does, /** @type {string | undefined} */ says) => this.change(does, says) };
  }

  question() {
    const [asks] = Object.keys(this.lay.ask);
    const first = { tip: this.us ? '50 psi' : '350 kPa', flow: this.us ? '150 gpm' : '450 L/min', pump: this.us ? '100 psi' : '700 kPa' };
    const standing = this.shown?.result.pump.pressure;
    const pump = standing ? `${Math.round(standing.value)} ${standing.unit}` : first.pump;
    return html`<div class="asked lay-asked">${choice('Ask', asks, QUESTIONS, (key) => this.change(() => { this.lay.ask = { [key]: key === 'pump' ? pump : first[/** @type {'tip' | 'flow'} */ (key)] }; }))}
      ${text(asks === 'tip' ? 'At each open tip' : asks === 'flow' ? 'From each open tip' : 'The pump stands at', this.lay.ask[asks], (value) => this.change(() => { this.lay.ask = { [asks]: sized(value, asks === 'flow' ? (this.us ? 'gpm' : 'L/min') : this.us ? 'psi' : 'kPa') }; }))}</div>`;
  }

  answer() {
    if (this.trouble) return html`<p class="wrong" role="alert">No number for this lay: ${set(this.trouble)}</p>`;
    if (!this.shown) return busy('Working it out');
    return html`${warnings(this.shown)}${figures(this.shown)}${tips(this.shown, this.shown.profile?.tip ?? '', (tip) => { this.tip = tip; this.solve(); })}`;
  }

  whatIf() {
    return html`<section class="what-if"><h2>What if</h2><div class="row">
      ${turns(this.shown).map((one) => html`<button aria-pressed=${this.found?.asked === one} @click=${() => this.suppose(one)}>${one}</button>`)}</div>
      ${chooser(this.lay, this.shown, this.kit, this.us, this.wish, (wish) => { this.wish = wish; }, (change) => this.suppose(change))}
      ${weaker(this.lay, this.share, (share) => { this.share = share; }, (change) => this.suppose(change))}
      <div aria-live="polite">${this.found ? beside(this.found) : nothing}</div></section>`;
  }

  /** Shows what a change does, unless the lay has changed meanwhile. @param {string} change */
  async suppose(change) {
    const asked = this.asked;
    const found = await find(this.lay, change);
    if (asked === this.asked) this.found = found;
  }

  evidence() {
    const shown = this.shown;
    return html`${limits(shown)}${panel(shown)}${cautions(shown)}
      ${shown.profile ? html`<section><h2>The line to ${shown.profile.tip}</h2>${stroke(shown.profile.drawing, shown.profile.says)}</section>` : nothing}
      ${working(shown.workings)}${methods(shown)}${hoses(shown)}`;
  }

  file() {
    const yaml = this.draft ?? (this.original || write(this.lay));
    const gone = this.draft === null ? this.notes.filter((note) => !yaml.includes(note)) : [];
    return html`<section class="lay-file"><h2>The same as text</h2>
      <p class="soft">The open format: the command ./hosewright lay takes this file, and this page opens it again.</p>
      ${gone.length ? html`<p class="caution text-notes">${gone.length === 1 ? 'A note' : `${gone.length} notes`} of the text that was opened went with what it stood at: ${gone.map((note) => note.replace(/^#\s*/, '')).join(' · ')}</p>` : nothing}
      <label for="lay-text" class="away">The lay as text</label>
      <textarea id="lay-text" class="text" rows=${Math.min(30, yaml.split('\n').length + 1)} spellcheck="false" wrap="off" .value=${yaml}
        @input=${(/** @type {Event} */ event) => { this.draft = /** @type {HTMLTextAreaElement} */ (event.target).value; }}></textarea>
      <p class="row"><button ?disabled=${this.draft === null} @click=${() => this.open(yaml)}>Take this text</button>
        <button @click=${() => this.save(yaml)}>Save as a file</button><button @click=${() => this.take()}>Open a file</button>
        <button @click=${() => window.print()}>Print</button>
        <button @click=${() => { const before = this.lay; this.begin(); done('A new lay begun.', () => { this.lay = before; this.solve(); }); }}>Begin a new lay</button></p></section>`;
  }

  /** @param {string} yaml */
  save(yaml) {
    const link = document.createElement('a');
    link.href = URL.createObjectURL(new Blob([yaml], { type: 'application/yaml' }));
    link.download = 'lay.yaml';
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
  }

  async take() {
    try {
      const file = await pick('.yaml,.yml,application/yaml');
      if (file) await this.open(file.text, file.name);
    } catch (error) {
      this.trouble = error instanceof Error ? error.message : String(error);
    }
  }
}
customElements.define('hw-lay', LayPage);
