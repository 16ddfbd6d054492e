/** A neighbour's file: verified, laid beside ours, and kept as theirs once the fingerprint was compared by telephone. */
import { html, nothing } from 'lit';
import { check, post } from '../shared/api.js';
import { done, failed } from '../shared/notes.js';
import { Part } from '../shared/page.js';
import { day, moment } from '../shared/text.js';
import { whoField } from '../shared/who.js';
import { packages } from './theirs.js';

class TakeIn extends Part {
  /** @override */
  static properties = { zone: { attribute: false }, came: { state: true }, refused: { state: true }, told: { state: true }, busy: { state: true } };

  constructor() {
    super();
    this.zone = 'UTC';
    /** @type {any} the file as the server judged it */
    this.came = null;
    this.refused = '';
    this.told = '';
    this.busy = false;
    /** @type {{ file: string, name: string } | null} */
    this.file = null;
  }

  /** @override */
  render() {
    return html`<section><h2>Take in a neighbour's file</h2>
      <p>It is verified and shown beside ours first. Our kit and our orders are never changed by it.</p>
      <p class="row"><label class="inline">The file they sent <input type="file" accept=".exchange" @change=${this.chosen}></label></p>
      ${this.refused ? html`<p class="wrong" role="alert">${this.refused}</p>` : nothing}
      ${this.came ? this.shown(this.came) : nothing}</section>`;
  }

  /** @param {any} came */
  shown(came) {
    return html`<div class="came" data-came><p class="answer-line">${came.company}</p>
      ${came.says ? html`<p class="wrong">${came.says}</p>` : nothing}
      <p>The signature holds. Made ${moment(came.issued, this.zone)}${came.order ? html`, of ${came.order}; to be used until ${day(came.until)}` : nothing}.
        ${came.before ? html`Held until now: their file of ${moment(came.before, this.zone)}.` : nothing}</p>
      ${packages(came, { before: Boolean(came.before) })}
      ${came.held ? html`<p>This very file is held already.</p>` : this.keeping(came)}</div>`;
  }

  /** @param {any} came */
  keeping(came) {
    return html`<form @submit=${this.keep}>
      ${came.firstUse ? html`<p class="caution">Nobody here has compared the key of ${came.company} yet. Ring them on a number you knew before, have them read out their fingerprint, and write down what you hear. Do not copy it from this page or from the file.</p>
        <div class="field heard"><label>Fingerprint as they read it out, eight groups of four <input name="told" autocomplete="off" spellcheck="false" maxlength="60" required .value=${this.told} @input=${(/** @type {Event} */ event) => { this.told = /** @type {HTMLInputElement} */ (event.target).value; }}></label></div>` : nothing}
      ${whoField()}
      <p class="row"><button class="go" ?disabled=${this.busy}>Keep as theirs</button><button type="button" @click=${() => { this.came = null; }}>Leave it</button></p></form>`;
  }

  /** @param {Event} event */
  async chosen(event) {
    const field = /** @type {HTMLInputElement} */ (event.target);
    const file = field.files?.[0];
    if (!file) return;
    this.came = null;
    this.refused = '';
    this.told = '';
    try {
      const bytes = new Uint8Array(await file.slice(0, 200_001).arrayBuffer());
      this.file = { file: base64(bytes), name: file.name };
      this.came = await check('/exchange/arrivals/look', this.file);
    } catch (error) {
      this.refused = error instanceof Error ? error.message : String(error);
    }
    field.value = '';
  }

  /** @param {Event} event */
  async keep(event) {
    event.preventDefault();
    this.busy = true;
    try {
      const told = this.told.trim();
      await post('/exchange/neighbours', { ...this.file, ...(told && { fingerprint: told }) });
      done(`What ${this.came.company} handed over is kept, as theirs.`);
      this.came = null;
      this.dispatchEvent(new Event('kept'));
    } catch (error) {
      failed(error);
    }
    this.busy = false;
  }
}

/** @param {Uint8Array} bytes */
function base64(bytes) {
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return btoa(text);
}
customElements.define('hw-take-in', TakeIn);
