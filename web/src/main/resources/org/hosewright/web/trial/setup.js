/** Sets a blind trial up: what is compared, what would change what you do, how many re-lays that takes. */
import { html, nothing } from 'lit';
import { check, post, who } from '../shared/api.js';
import { failed } from '../shared/notes.js';
import { Part } from '../shared/page.js';
import { whoField } from '../shared/who.js';
import { withUnit } from './unit.js';

/** Fields that the number of re-lays hangs on. */
const SIZED = ['measure', 'held', 'over', 'longest', 'matters', 'scatter', 'step', 'kinds'];

class TrialSetup extends Part {
  /** @override */
  static properties = { us: { type: Boolean, attribute: false }, measure: { state: true }, size: { state: true }, trouble: { state: true }, busy: { state: true } };

  constructor() {
    super();
    this.us = true;
    this.measure = 'loss';
    /** @type {{ relays: number, find: string, scatter: string } | null} */
    this.size = null;
    this.trouble = '';
    this.busy = false;
  }

  get units() {
    return this.us ? { pressure: 'psi', flow: 'gpm', length: 'ft' } : { pressure: 'kPa', flow: 'L/min', length: 'm' };
  }

  /** @override */
  render() {
    const units = this.units;
    const loss = this.measure === 'loss';
    const measured = loss ? units.pressure : units.flow;
    const put = (/** @type {string} */ us, /** @type {string} */ si) => (this.us ? us : si);
    return html`<form @submit=${(/** @type {SubmitEvent} */ event) => this.begin(event)} @input=${(/** @type {Event} */ event) => this.changed(event)}><h2>A new trial</h2>
      <div class="fields">
        <div class="field"><label>Name of the trial<input name="name" required maxlength="80" placeholder="Three jackets"></label></div>
        <div class="field"><label>Compared by<select name="measure" @change=${(/** @type {Event} */ event) => { this.measure = /** @type {HTMLSelectElement} */ (event.target).value; }}>
          <option value="loss">loss: hoses at one flow</option><option value="flow">flow: nozzles at one tip pressure</option></select></label></div>
        <div class="field"><label>${loss ? `Flow held in every re-lay [${units.flow}]` : `Tip pressure held in every re-lay [${units.pressure}]`}<input name="held" required inputmode="decimal" value=${loss ? put('150', '570') : put('50', '345')}></label></div>
        <div class="field"><label>Hose in the trial [${units.length}]<input name="over" required inputmode="decimal" value=${put('300', '90')}></label></div>
        ${loss ? html`<div class="field"><label>Longest stretch you would lay [${units.length}]<input name="longest" required inputmode="decimal" value=${put('600', '180')}></label></div>` : nothing}
        <div class="field"><label>Difference that changes what you do${loss ? ', at the longest' : ''} [${measured}]<input name="matters" required inputmode="decimal" value=${loss ? put('10', '70') : put('10', '40')}></label></div>
        <div class="field"><label>How far re-lays of one kind differ [${measured}]<input name="scatter" required inputmode="decimal" value=${loss ? put('2', '14') : put('3', '11')}></label></div>
        <div class="field"><label>Finest step you read [${measured}]<input name="step" required inputmode="decimal" value=${put('1', '5')}></label></div>
      </div>
      <div class="field kinds"><label>What is compared, one a line: two or more<textarea name="kinds" required rows="4"></textarea></label></div>
      <div class="fields">${whoField()}
        <div class="field"><label>Others who hold the key, with commas<input name="others" autocomplete="off"></label></div></div>
      <p class="soft">You set it up, so you hold the key, and you do not read.</p>
      ${this.trouble ? html`<p class="wrong" role="alert">${this.trouble}</p>` : nothing}
      ${this.size ? this.found(this.size) : html`<p class="row"><button type="button" class="go" ?disabled=${this.busy} @click=${() => this.ask()}>How many re-lays does it take?</button></p>`}</form>`;
  }

  /** @param {{ relays: number, find: string, scatter: string }} size */
  found(size) {
    return html`<dl class="answers"><div class="answer"><dd><span class="value">${size.relays} re-lays</span><span class="unit">of each</span></dd>
      <dt>find a difference of ${size.find} four times in five, where re-lays of one kind differ by ${size.scatter}</dt></div></dl>
      <p class="row"><label>Re-lays of each kind <input name="relays" type="number" min="2" max="60" required value=${size.relays}></label>
        <button class="go" ?disabled=${this.busy}>Draw labels and order, and begin</button></p>`;
  }

  /** The size stands only for what it was asked of. @param {Event} event */
  changed(event) {
    if (SIZED.includes(/** @type {HTMLInputElement} */ (event.target).name)) this.size = null;
  }

  task() {
    const form = new FormData(/** @type {HTMLFormElement} */ (this.querySelector('form')));
    const text = (/** @type {string} */ key) => String(form.get(key) ?? '').trim();
    const units = this.units;
    const loss = this.measure === 'loss';
    const measured = loss ? units.pressure : units.flow;
    const over = withUnit(text('over'), units.length);
    return {
      measure: this.measure, held: withUnit(text('held'), loss ? units.flow : units.pressure), over, longest: loss ? withUnit(text('longest'), units.length) : over,
      matters: withUnit(text('matters'), measured), scatter: withUnit(text('scatter'), measured), step: withUnit(text('step'), measured),
      kinds: text('kinds').split('\n').map((kind) => kind.trim()).filter(Boolean),
    };
  }

  async ask() {
    try {
      this.size = await check('/trials/size', this.task());
      this.trouble = '';
    } catch (error) {
      this.trouble = error instanceof Error ? error.message : String(error);
    }
  }

  /** @param {SubmitEvent} event */
  async begin(event) {
    event.preventDefault();
    if (!this.size) return this.ask();
    const form = new FormData(/** @type {HTMLFormElement} */ (event.target));
    const others = String(form.get('others') ?? '').split(',').map((name) => name.trim()).filter(Boolean);
    this.busy = true;
    try {
      const detail = await post('/trials', { name: String(form.get('name')), holders: [who(), ...others].filter(Boolean), task: { ...this.task(), relays: Number(form.get('relays')) } });
      this.dispatchEvent(new CustomEvent('made', { detail }));
    } catch (error) {
      failed(error);
    }
    this.busy = false;
    return undefined;
  }
}
customElements.define('hw-trial-setup', TrialSetup);
