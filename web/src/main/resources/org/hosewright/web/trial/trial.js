/** Do they really differ? Blind trials: set up, read re-lay by re-lay, answered no further than the re-lays carry. */
import { html, nothing } from 'lit';
import { get, save } from '../shared/api.js';
import { failed } from '../shared/notes.js';
import { Part, busy, company } from '../shared/page.js';
import { capital, moment, set } from '../shared/text.js';
import { whoField } from '../shared/who.js';
import './setup.js';
import './relays.js';
import './key.js';

class TrialPage extends Part {
  /** @override */
  static properties = { trials: { state: true }, trial: { state: true }, trouble: { state: true }, begun: { state: true }, making: { state: true } };

  constructor() {
    super();
    /** @type {any[] | null} */
    this.trials = null;
    /** @type {any} */
    this.trial = null;
    this.trouble = '';
    /** @type {{ id: string, code: string } | null} what is told once, after a trial was set up */
    this.begun = null;
    this.making = false;
    this.us = true;
    this.zone = 'UTC';
  }

  /** @override */
  async connectedCallback() {
    super.connectedCallback();
    const own = await company;
    this.us = own?.units !== 'si';
    this.zone = own?.zone ?? 'UTC';
    try {
      this.trials = (await get('/trials')).trials;
      const wanted = new URLSearchParams(location.search).get('trial') ?? this.trials?.[0]?.id;
      if (wanted) await this.open(wanted);
    } catch (error) {
      this.trouble = error instanceof Error ? error.message : String(error);
    }
  }

  /** @param {string} id */
  async open(id) {
    this.trial = await get(`/trials/${encodeURIComponent(id)}`);
    this.making = false;
    history.replaceState(null, '', `?trial=${encodeURIComponent(id)}`);
  }

  async again() {
    await this.open(this.trial.kept.id).catch(failed);
  }

  /** @param {CustomEvent} event */
  async made(event) {
    this.begun = event.detail;
    this.trials = (await get('/trials')).trials;
    await this.open(event.detail.id).catch(failed);
    await this.updateComplete;
    this.querySelector('.code')?.scrollIntoView({ block: 'center' });
  }

  /** @override */
  render() {
    if (this.trouble) return html`<p class="wrong" role="alert">${this.trouble}</p>`;
    if (!this.trials) return busy('Looking for trials');
    if (this.making || this.trials.length === 0) return this.setup(this.trials.length === 0);
    if (!this.trial) return busy('Looking at the trial');
    return html`${this.choice()}${this.code()}
      <p class="answer-line" role="status">${set(this.trial.answer)}</p>
      ${this.trial.pairs.map((/** @type {string} */ pair) => html`<p class="pairs">${capital(set(pair))}</p>`)}
      ${this.trial.remarks.map((/** @type {string} */ remark) => html`<p class="soft">${set(remark)}</p>`)}
      <div class="fields">${whoField()}</div>
      <hw-trial-relays .trial=${this.trial} .us=${this.us} @changed=${() => this.again()}></hw-trial-relays>
      <p class="row"><button @click=${() => save(`/trials/${this.trial.kept.id}/sheet.pdf`).catch(failed)}>Print the blind reading sheet</button></p>
      ${this.standings()}${this.plan()}
      <hw-trial-key .trial=${this.trial} .zone=${this.zone} @changed=${() => this.again()}></hw-trial-key>`;
  }

  /** @param {boolean} first */
  setup(first) {
    return html`${first ? html`<div class="empty"><p>Nothing was compared yet. Two hoses that look alike on one evening may differ by luck alone; a blind trial says how many re-lays it takes to know, keeps the labels from those who read, and names no winner that the re-lays do not carry.</p></div>` : nothing}
      <hw-trial-setup .us=${this.us} @made=${(/** @type {CustomEvent} */ event) => this.made(event)}></hw-trial-setup>
      ${first ? nothing : html`<p class="row"><button @click=${() => { this.making = false; }}>Back to the trial</button></p>`}`;
  }

  choice() {
    return html`<p class="row"><label>Trial <select @change=${(/** @type {Event} */ event) => this.open(/** @type {HTMLSelectElement} */ (event.target).value).catch(failed)}>
      ${this.trials?.map((one) => html`<option value=${one.id} ?selected=${one.id === this.trial.kept.id}>${one.title}</option>`)}</select></label>
      <button @click=${() => { this.making = true; }}>Set up another</button></p>`;
  }

  code() {
    if (this.begun?.id !== this.trial.kept.id) return nothing;
    return html`<div class="caution"><p>The code of the key, shown this once: <b class="code">${this.begun?.code}</b></p>
      <p>Write it down for ${this.trial.plan.holders.join(', ')} and keep it from those who read. Whoever lays needs it to see the key; where it is lost, begin the trial anew.</p>
      <p class="row"><button @click=${() => { this.begun = null; }}>I have written it down</button></p></div>`;
  }

  standings() {
    if (this.trial.standings.length === 0) return nothing;
    return html`<section><h2>As measured</h2><div class="wide" tabindex="0" role="region" aria-label="As measured"><table><thead><tr>
      <th scope="col">${this.trial.opened ? 'kind' : 'label'}</th><th scope="col">re-lays</th><th scope="col">mean</th><th scope="col">between re-lays</th></tr></thead>
      <tbody>${this.trial.standings.map((/** @type {any} */ one) => html`<tr><th scope="row">${one.name}</th><td>${one.relays}</td>
        <td>${one.mean}</td><td>${one.scatter ?? 'laid once'}</td></tr>`)}</tbody></table></div>
      <p class="soft small">A re-lay is one observation; readings of one charge are averaged first. Between re-lays is a standard deviation. Each interval above holds the truth 95 times in 100 for all pairs and all looks together.</p></section>`;
  }

  plan() {
    const plan = this.trial.plan;
    const loss = plan.measure === 'loss';
    return html`<section><h2>As agreed on before</h2><p>${set(plan.kinds.join(', '))}. ${loss ? `Loss from pump to tip at ${plan.held} over ${plan.over}` : `Flow at a tip pressure of ${plan.held}`}, read to ${plan.step}.
      What would change what you do: ${plan.matters}${loss ? ` at ${plan.longest}, which is ${plan.find} here` : ''}. Re-lays of one kind were thought to differ by ${plan.scatter}.</p>
      <p class="soft">Last written to by ${this.trial.kept.who}, ${moment(this.trial.kept.at, this.zone)}.</p></section>`;
  }
}
customElements.define('hw-trial', TrialPage);
