/** The re-lays of a trial in the order of laying: the next one large, to type what the needles show; all of them below. */
import { html, nothing } from 'lit';
import { post } from '../shared/api.js';
import { done, failed } from '../shared/notes.js';
import { Part } from '../shared/page.js';
import { withUnit } from './unit.js';

class TrialRelays extends Part {
  /** @override */
  static properties = { trial: { attribute: false }, us: { type: Boolean, attribute: false }, lay: { state: true }, aside: { state: true }, saving: { state: true } };

  constructor() {
    super();
    /** @type {any} */
    this.trial = null;
    this.us = true;
    /** the re-lay that is read now; 0 for the first unread @type {number} */
    this.lay = 0;
    /** the reading about to be set aside; 0 for none @type {number} */
    this.aside = 0;
    this.saving = false;
  }

  /** @param {number} lay */
  of(lay) {
    return this.trial.readings.filter((/** @type {any} */ one) => one.lay === lay);
  }

  /** The first re-lay without a reading that counts; the last where all have one. */
  next() {
    const open = this.trial.order.find((/** @type {any} */ one) => !this.of(one.lay).some((/** @type {any} */ reading) => !reading.late && !reading.aside));
    return open?.lay ?? this.trial.order.length;
  }

  /** @override */
  render() {
    const now = this.trial.order[(this.lay || this.next()) - 1];
    return html`${this.now(now)}${this.more()}
      <div class="wide" tabindex="0" role="region" aria-label="Re-lays in the order of laying"><table class="relays"><caption>Re-lays in the order of laying</caption>
        <thead><tr><th scope="col">re-lay</th><th scope="col" class="words">label</th>${this.trial.opened ? html`<th scope="col" class="words">kind</th>` : nothing}<th scope="col" class="words">readings</th></tr></thead>
        <tbody>${this.trial.order.map((/** @type {any} */ one) => html`<tr><th scope="row">${one.lay === now.lay ? html`<b>${one.lay}</b>` : html`<button class="link" aria-label="Read re-lay ${one.lay}" @click=${() => this.turn(one.lay)}>${one.lay}</button>`}</th>
          <td class="words">${one.label}</td>${this.trial.opened ? html`<td class="words">${one.kind}</td>` : nothing}
          <td class="words">${this.of(one.lay).map((/** @type {any} */ reading) => this.reading(reading))}</td></tr>`)}</tbody></table></div>`;
  }

  /** @param {any} now */
  now(now) {
    const loss = this.trial.plan.measure === 'loss';
    const [pressure, flow] = this.us ? ['psi', 'gpm'] : ['kPa', 'L/min'];
    const field = (/** @type {string} */ name, /** @type {string} */ says) => html`<div class="field"><label>${says}<input name=${name} required autocomplete="off" inputmode="decimal" enterkeyhint="next"></label></div>`;
    return html`<form class="now" @submit=${(/** @type {SubmitEvent} */ event) => this.write(event, now.lay)}>
      <p class="label">Re-lay ${now.lay}: ${now.label}</p>
      <p class="soft">Hold ${this.trial.plan.held}${loss ? ' on the meter' : ' at the tip'}; read two or three times while it is charged.${this.trial.opened ? ' The key is open: a reading typed now is marked and does not count.' : ''}</p>
      <div class="fields">${loss ? html`${field('pump', `Pump gauge [${pressure}]`)}${field('tip', `Tip gauge [${pressure}]`)}` : field('flow', `Meter [${flow}]`)}</div>
      <p class="row"><button class="go" ?disabled=${this.saving}>Write down the reading</button>
        ${now.lay < this.trial.order.length ? html`<button type="button" @click=${() => this.turn(now.lay + 1)}>Next: re-lay ${now.lay + 1}</button>` : nothing}</p></form>`;
  }

  /** @param {number} lay */
  async turn(lay) {
    this.lay = lay;
    await this.updateComplete;
    this.querySelector('input')?.focus();
  }

  /** @param {any} reading */
  reading(reading) {
    const taken = reading.pump ? `${reading.pump.split(' ')[0]} − ${reading.tip.split(' ')[0]} = ${reading.value}` : reading.value;
    if (reading.aside) return html`<div><span class="struck">${taken}</span><span class="why">set aside by ${reading.aside.who}: ${reading.aside.why}</span></div>`;
    if (reading.late) return html`<div><span class="struck">${taken}</span><span class="why">typed by ${reading.who} after the key was opened; not counted</span></div>`;
    if (this.aside === reading.number) {
      return html`<form class="row" @submit=${(/** @type {SubmitEvent} */ event) => this.setAside(event, reading.number)}><label>What went wrong with ${taken}<input name="why" required maxlength="200"></label>
        <button>Set it aside</button><button type="button" @click=${() => { this.aside = 0; }}>Leave it</button></form>`;
    }
    return html`<div>${taken}${this.trial.opened ? nothing : html`<button class="link" aria-label="Set aside ${taken} of re-lay ${reading.lay}" @click=${() => { this.aside = reading.number; }}>set aside</button>`}</div>`;
  }

  more() {
    if (!this.trial.complete || this.trial.opened) return nothing;
    return html`<form class="row" @submit=${(/** @type {SubmitEvent} */ event) => this.addMore(event)}><label>Further re-lays of each <input name="relays" type="number" min="1" max="60" value="3" required></label><button ?disabled=${this.saving}>Add them to the order</button></form>
      <p class="soft small">All labels again, so that nothing tells which matters; the intervals become wider for the second look.</p>`;
  }

  /** @param {SubmitEvent} event @param {number} lay */
  async write(event, lay) {
    event.preventDefault();
    const form = /** @type {HTMLFormElement} */ (event.target);
    const given = new FormData(form);
    const [pressure, flow] = this.us ? ['psi', 'gpm'] : ['kPa', 'L/min'];
    const taken = Object.fromEntries([...given].map(([key, text]) => [key, withUnit(String(text).trim(), key === 'flow' ? flow : pressure)]));
    if (await this.send('readings', { lay, ...taken }, `Re-lay ${lay} has one more reading.`)) {
      this.lay = lay;
      form.reset();
      form.querySelector('input')?.focus();
    }
  }

  /** @param {SubmitEvent} event @param {number} reading */
  async setAside(event, reading) {
    event.preventDefault();
    const why = String(new FormData(/** @type {HTMLFormElement} */ (event.target)).get('why'));
    if (await this.send('aside', { reading, why }, 'Set aside; it stays in sight.')) this.aside = 0;
  }

  /** @param {SubmitEvent} event */
  async addMore(event) {
    event.preventDefault();
    const relays = Number(new FormData(/** @type {HTMLFormElement} */ (event.target)).get('relays'));
    if (await this.send('more', { relays }, 'The order is longer now; print the sheet anew.')) this.lay = 0;
  }

  /** @param {string} path @param {Record<string, any>} what @param {string} says */
  async send(path, what, says) {
    this.saving = true;
    let kept = false;
    try {
      await post(`/trials/${this.trial.kept.id}/${path}`, what);
      done(says);
      this.dispatchEvent(new Event('changed'));
      kept = true;
    } catch (error) {
      failed(error);
    }
    this.saving = false;
    return kept;
  }
}
customElements.define('hw-trial-relays', TrialRelays);
