/** One thing of the kit as a form: only what was changed is written back into the text. */
import { html, nothing } from 'lit';
import { live } from 'lit/directives/live.js';
import { Part } from '../shared/page.js';
import { Trouble } from '../shared/api.js';
import { edit } from './edit.js';

/** @typedef {import('./kinds.js').Field} Field */
/** @typedef {{ path: string[], value?: string }} Edit */

class Entry extends Part {
  /** @override */
  static properties = {
    kit: { attribute: false }, path: { attribute: false }, fresh: { type: Boolean, attribute: false }, fieldsOf: { attribute: false },
    one: { attribute: false }, typed: { state: true }, trouble: { state: true }, adding: { state: true },
  };

  constructor() {
    super();
    /** @type {any} the kit as served */
    this.kit;
    /** @type {string[]} where the entry stands; the id is missing in a new one */
    this.path = [];
    this.fresh = false;
    /** @type {(entry: any) => Field[]} */
    this.fieldsOf = () => [];
    this.one = 'entry';
    /** @type {Record<string, string>} what was typed, by dotted path */
    this.typed = {};
    this.trouble = '';

  }

  /** The entry with what was typed. */
  get entry() {
    const entry = structuredClone(this.fresh ? {} : (at(this.kit.entries, this.path) ?? {}));
    for (const [path, text] of Object.entries(this.typed)) put(entry, path.split('.'), text);
    return entry;
  }

  /** @override */
  render() {
    const entry = this.entry;
    return html`<form class="entry" @submit=${(/** @type {Event} */ event) => this.save(event)}>
      <div class="fields">
        ${this.fresh ? html`<div class="field"><label>Name<input name="id" required pattern="[a-z][a-z0-9\\-]{0,39}" placeholder="small letters, digits and hyphens"
          .value=${live(this.name ?? '')} @input=${(/** @type {InputEvent} */ event) => { this.name = /** @type {HTMLInputElement} */ (event.target).value; }}></label></div>` : nothing}
        ${this.fieldsOf(entry).map((one) => this.field(one, entry))}
      </div>
      ${this.parts(entry)}
      ${this.trouble ? html`<p class="wrong" role="alert">${this.trouble}</p>` : nothing}
      <p class="row"><button class="go">${this.fresh ? `Add this ${this.one}` : 'Save the changes'}</button>
        <button type="button" @click=${() => this.dispatchEvent(new Event('left'))}>${Object.keys(this.typed).length ? 'Leave it as it was' : 'Close'}</button>
        ${this.fresh || this.path.length < 2 ? nothing : html`<button type="button" @click=${() => this.takeOut()}>Remove ${this.path[1]}</button>`}</p>
    </form>`;
  }

  /** @param {Field} one @param {any} entry */
  field(one, entry) {
    const key = one.path.join('.');
    const value = String(at(entry, one.path) ?? '');
    const change = (/** @type {Event} */ event) => {
      this.typed = { ...this.typed, [key]: /** @type {HTMLInputElement} */ (event.target).value };
    };
    if (one.options) {
      const options = one.options.includes(value) ? one.options : [value, ...one.options];
      return html`<div class="field"><label>${one.label}<select @change=${change}>
        ${options.map((option) => html`<option value=${option} ?selected=${option === value}>${option || 'not set'}</option>`)}</select></label></div>`;
    }
    return html`<div class="field"><label>${one.label}<input autocomplete="off" placeholder=${one.example ?? ''} .value=${live(value)} @input=${change}></label></div>`;
  }

  /** Where a thing has parts of its own (settings, discharges), a way to add one. @param {any} entry */
  parts(entry) {
    const many = entry.kind === 'selectable' || entry.kind === 'break-apart';
    const key = this.path[0] === 'engines' ? 'discharges' : this.path[0] === 'nozzles' && many ? 'settings' : '';
    if (!key) return nothing;
    const what = key === 'discharges' ? 'discharge' : 'setting';
    return html`<div class="row"><label>Another ${what}<input name="part" autocomplete="off" maxlength="40" placeholder=${what === 'discharge' ? 'crosslay-2' : 'slug'}></label>
      <button type="button" @click=${() => this.addPart(key)}>Add the ${what}</button></div>`;
  }

  /** @param {string} key */
  addPart(key) {
    const input = /** @type {HTMLInputElement} */ (this.querySelector('[name=part]'));
    const name = input.value.trim();
    if (!name) {
      input.focus();
      return;
    }
    this.typed = { ...this.typed, [`${key}.${name}.${key === 'discharges' ? 'size' : 'kind'}`]: key === 'discharges' ? '' : 'smooth-bore' };
    input.value = '';
  }

  /** @returns {Edit[]} */
  edits() {
    if (this.fresh) return [{ path: [this.path[0], this.name ?? ''], value: flow(filled(this.entry)) }];
    const kept = at(this.kit.entries, this.path) ?? {};
    return Object.entries(this.typed)
      .filter(([path, text]) => String(at(kept, path.split('.')) ?? '') !== text)
      .map(([path, text]) => ({ path: [...this.path, ...path.split('.')], ...(text.trim() && { value: scalar(text.trim()) }) }));
  }

  /** @param {Event} event */
  async save(event) {
    event.preventDefault();
    await this.send(this.edits(), this.fresh ? `${this.name} added.` : `${this.path[1] ?? 'The company'} changed.`);
  }

  async takeOut() {
    await this.send([{ path: this.path }], `${this.path[1]} removed.`);
  }

  /** @param {Edit[]} edits @param {string} says */
  async send(edits, says) {
    if (edits.length === 0) {
      this.dispatchEvent(new Event('left'));
      return;
    }
    try {
      const kit = await edit(this.kit, edits, says);
      this.typed = {};
      this.trouble = '';
      this.dispatchEvent(new CustomEvent('saved', { detail: kit }));
    } catch (error) {
      if (!(error instanceof Trouble)) throw error;
      this.trouble = error.message;
    }
  }
}
customElements.define('hw-kit-entry', Entry);

/** @param {any} entry @param {string[]} path */
function at(entry, path) {
  return path.reduce((inner, key) => inner?.[key], entry);
}

/** @param {any} entry @param {string[]} path @param {string} text */
function put(entry, [key, ...rest], text) {
  if (rest.length === 0) entry[key] = text;
  else put((entry[key] = typeof entry[key] === 'object' ? entry[key] : {}), rest, text);
}

/** Without what was left empty. @param {any} entry @returns {any} */
function filled(entry) {
  const kept = Object.entries(entry).map(([key, value]) => [key, typeof value === 'object' ? filled(value) : value]);
  return Object.fromEntries(kept.filter(([, value]) => (typeof value === 'object' ? Object.keys(value).length : String(value).trim())));
}

/** A text as YAML: plain where that is safe, else in quotes. @param {string} text */
function scalar(text) {
  return /^[\p{L}\d][^:#{}[\],&*!|>'"`\n]*$/u.test(text) || /^-?\d/.test(text) && !/[:#{}[\],]/.test(text) ? text : JSON.stringify(text);
}

/** A map as YAML on one line. @param {any} value @returns {string} */
function flow(value) {
  if (typeof value !== 'object') return scalar(String(value));
  return `{ ${Object.entries(value).map(([key, inner]) => `${key}: ${flow(inner)}`).join(', ')} }`;
}
