/** What do we have? Everything the company owns, as forms and as the open format's text. */
import { html, nothing } from 'lit';
import { get, save, Trouble } from '../shared/api.js';
import { failed } from '../shared/notes.js';
import { Part, busy } from '../shared/page.js';
import { pick } from '../shared/file.js';
import { capital, counted, set } from '../shared/text.js';
import { whoField } from '../shared/who.js';
import { KINDS, companyFields } from './kinds.js';
import { replace } from './edit.js';
import './entry.js';

/** @typedef {import('./kinds.js').Kind} Kind */

class Kit extends Part {
  /** @override */
  static properties = { kit: { state: true }, none: { state: true }, open: { state: true }, trouble: { state: true }, draft: { state: true } };

  constructor() {
    super();
    /** @type {any} */
    this.kit = null;
    this.none = false;
    /** @type {string | null} the entry whose form is open, as section/id */
    this.open = null;
    this.trouble = '';
    /** @type {string | null} the text while it is being edited */
    this.draft = null;
  }

  /** @override */
  async connectedCallback() {
    super.connectedCallback();
    document.addEventListener('hosewright-kit', (event) => {
      this.kit = /** @type {CustomEvent} */ (event).detail;
      this.none = false;
      this.draft = null;
    });
    try {
      this.kit = await get('/kit');
    } catch (error) {
      if (error instanceof Trouble && error.status === 404) this.none = true;
      else this.trouble = error instanceof Error ? error.message : String(error);
    }
  }

  /** @override */
  render() {
    if (this.none) return this.first();
    if (!this.kit) return this.trouble ? html`<p class="wrong">${this.trouble}</p>` : busy('Opening the kit');
    const entries = this.kit.entries;
    return html`<p class="sub">${this.summary(entries)}</p>
      <p class="row"><button @click=${() => this.take()}>Import a kit (YAML)</button>
        <button @click=${() => save('/kit.yaml').catch(failed)}>Write out as YAML</button></p>
      ${this.trouble ? html`<p class="wrong" role="alert">${this.trouble}</p>` : nothing}
      ${KINDS.map((kind) => this.section(kind, entries))}
      ${this.company()} ${this.text()}`;
  }

  /** @param {any} entries */
  summary(entries) {
    const hoses = Object.values(entries.hoses ?? {});
    const tested = hoses.filter((/** @type {any} */ hose) => String(hose.basis).startsWith('test')).length;
    const outlets = Object.values(entries.engines ?? {}).flatMap((/** @type {any} */ engine) => Object.keys(engine.discharges ?? {})).length;
    if (KINDS.every((kind) => !entries[kind.key])) return 'Only the name yet. Begin with a hose, a nozzle and a gauge; then the engine and its lines.';
    const count = (/** @type {string} */ key, /** @type {string} */ one) => counted(Object.keys(entries[key] ?? {}).length, one);
    return capital(`${counted(hoses.length, 'hose')}, ${tested === 0 ? 'none measured yet' : `${counted(tested, 'hose').split(' ')[0]} measured`}; ${count('nozzles', 'nozzle')};
      ${count('engines', 'engine')} with ${counted(outlets, 'discharge')}; ${count('instruments', 'instrument')}; ${count('packages', 'package')}.`);
  }

  /** @param {Kind} kind @param {any} entries */
  section(kind, entries) {
    const all = Object.entries(entries[kind.key] ?? {});
    return html`<section class="kind"><h2>${kind.title}</h2>
      ${all.length === 0 ? html`<p class="soft">${kind.empty}</p>` : nothing}
      <ul class="things">${all.map(([id, entry]) => this.thing(kind, id, entry))}</ul>
      ${this.open === `${kind.key}/` ? this.form(kind, '') : html`<button @click=${() => this.show(`${kind.key}/`)}>Add a${/^[aeiou]/.test(kind.one) ? 'n' : ''} ${kind.one}</button>`}
    </section>`;
  }

  /** @param {Kind} kind @param {string} id @param {any} entry */
  thing(kind, id, entry) {
    const key = `${kind.key}/${id}`;
    const open = this.open === key;
    return html`<li>
      <button class="link" aria-expanded=${open} @click=${() => this.show(open ? null : key)}>${id}</button>
      <span class="facts">${kind.summary(entry).filter(Boolean).map((fact) => html`<span>${set(fact)}</span>`)}</span>
      ${open ? this.form(kind, id) : nothing}</li>`;
  }

  /** @param {Kind} kind @param {string} id empty for a new one */
  form(kind, id) {
    const { entries } = this.kit;
    return html`<hw-kit-entry .kit=${this.kit} .path=${id ? [kind.key, id] : [kind.key]} .fresh=${!id} .one=${kind.one}
      .fieldsOf=${(/** @type {any} */ entry) => kind.fields(entry, entries, entries.units === 'us')}
      @saved=${() => this.show(null)} @left=${() => this.show(null)}></hw-kit-entry>`;
  }

  company() {
    const { entries } = this.kit;
    const open = this.open === 'company';
    return html`<section class="kind"><h2>Company, crew and present rule</h2>
      <ul class="things"><li><button class="link" aria-expanded=${open} @click=${() => this.show(open ? null : 'company')}>${entries.company}</button>
        <span class="facts"><span>${entries.zone}</span>
          ${Object.entries(entries.crew?.reaction ?? {}).map(([people, force]) => html`<span>${people} at the nozzle: ${force}</span>`)}
          ${entries.rule ? html`<span>present rule ${entries.rule.tip} and ${entries.rule.per}</span>` : html`<span>no rule of thumb</span>`}</span>
        ${open ? html`<hw-kit-entry .kit=${this.kit} .path=${[]} .one=${'company'} .fieldsOf=${() => companyFields(entries.units === 'us')}
          @saved=${() => this.show(null)} @left=${() => this.show(null)}></hw-kit-entry>` : nothing}</li></ul></section>`;
  }

  text() {
    const draft = this.draft ?? this.kit.text;
    return html`<section><h2>The same as text</h2>
      <p class="soft">The open format. Comments, order and keys that begin with x- stay as you write them.</p>
      <label for="kit-text" class="away">The kit as text</label>
      <textarea id="kit-text" class="text" rows=${Math.min(40, draft.split('\n').length + 1)} spellcheck="false" wrap="off" .value=${draft}
        @input=${(/** @type {InputEvent} */ event) => { this.draft = /** @type {HTMLTextAreaElement} */ (event.target).value; }}></textarea>
      <div class="fields">${whoField()}</div>
      <p class="row"><button class="go" ?disabled=${this.draft === null || this.draft === this.kit.text} @click=${() => this.put(draft, 'The text of the kit changed.')}>Save the text</button>
        ${this.draft !== null && this.draft !== this.kit.text ? html`<button @click=${() => { this.draft = null; this.trouble = ''; }}>Leave it as it was</button>` : nothing}
        <span class="soft small">Version ${this.kit.version}, saved by ${this.kit.who}.</span></p></section>`;
  }

  first() {
    return html`<div class="empty"><p>Nothing yet. Import the company's kit file, or begin with its name and add the things one by one.</p>
      <p class="row"><button class="go" @click=${() => this.take()}>Import a kit (YAML)</button>
        <button @click=${() => this.begin('us')}>Begin in feet, psi and gpm</button><button @click=${() => this.begin('si')}>Begin in metres, kPa and L/min</button></p>
      <p class="soft small">To look around first, start the program with --demo in an empty folder: it brings an invented company's kit and test night.</p></div>
      ${this.trouble ? html`<p class="wrong" role="alert">${this.trouble}</p>` : nothing}`;
  }

  /** @param {'us' | 'si'} units */
  begin(units) {
    const zone = Intl.DateTimeFormat().resolvedOptions().timeZone || 'UTC';
    this.put(`format: 1\ncompany: Our company\nzone: ${zone}\nunits: ${units}\n`, 'Kit begun.');
  }

  async take() {
    try {
      const file = await pick('.yaml,.yml,application/yaml');
      if (file) await this.put(file.text, `${file.name} imported.`, file.name);
    } catch (error) {
      this.trouble = error instanceof Error ? error.message : String(error);
    }
  }

  /** @param {string} text @param {string} says @param {string} [source] */
  async put(text, says, source) {
    try {
      await replace(this.kit, text, says, source);
      this.trouble = '';
    } catch (error) {
      this.trouble = error instanceof Error ? error.message : String(error);
    }
  }

  /** @param {string | null} key */
  show(key) {
    this.open = key;
  }
}
customElements.define('hw-kit', Kit);
