/** The key of a trial: shown to those who hold it, opened to everybody once and for good. */
import { html, nothing } from 'lit';
import { post } from '../shared/api.js';
import { done, failed } from '../shared/notes.js';
import { Part } from '../shared/page.js';
import { moment, set } from '../shared/text.js';

class TrialKey extends Part {
  /** @override */
  static properties = { trial: { attribute: false }, zone: { attribute: false }, seen: { state: true }, sure: { state: true } };

  constructor() {
    super();
    /** @type {any} */
    this.trial = null;
    this.zone = 'UTC';
    /** @type {any} the key as it was shown */
    this.seen = null;
    this.sure = false;
  }

  /** @override @param {Map<string, any>} changed */
  willUpdate(changed) {
    if (changed.get('trial') && changed.get('trial').kept.id !== this.trial.kept.id) this.seen = null;
  }

  /** @override */
  render() {
    const { opened, shown, plan } = this.trial;
    const looked = shown.length ? html`<p class="soft">Shown to ${shown.map((/** @type {any} */ one) => `${one.who}, ${moment(one.at, this.zone)}`).join('; ')}.</p>` : nothing;
    if (opened) return html`<section><h2>The key</h2><p>Opened by ${opened.who}, ${moment(opened.at, this.zone)}${opened.why ? `: ${set(opened.why)}` : ''}. That cannot be undone.</p>${looked}</section>`;
    return html`<section><h2>The key</h2><p>Held by ${plan.holders.join(', ')}. Those who read do not ask.</p>${looked}
      ${this.seen ? this.table() : html`<form class="row" @submit=${(/** @type {SubmitEvent} */ event) => this.look(event)}><label>Code of the key<input name="code" required autocomplete="off" maxlength="20"></label><button>Show me the key; that is recorded</button></form>`}
      ${this.sure ? html`<form class="caution" @submit=${(/** @type {SubmitEvent} */ event) => this.open(event)}><p>Once the labels are open to everybody there is no way back: readings typed later are marked and do not count, and no re-lay can be added.</p>
          <label>Why now<input name="why" required maxlength="200"></label>
          <p class="row"><button class="go">Open the labels for good</button><button type="button" @click=${() => { this.sure = false; }}>Keep them shut</button></p></form>`
        : html`<p class="row"><button @click=${() => { this.sure = true; }}>Open the labels to everybody</button></p>`}</section>`;
  }

  table() {
    return html`<div class="wide" tabindex="0" role="region" aria-label="The key"><table class="relays"><caption>For the one who lays, and for nobody else</caption>
      <thead><tr><th scope="col">re-lay</th><th scope="col" class="words">label</th><th scope="col" class="words">kind to lay</th></tr></thead>
      <tbody>${this.seen.order.map((/** @type {any} */ one) => html`<tr><th scope="row">${one.lay}</th><td class="words">${one.label}</td><td class="words">${set(one.kind)}</td></tr>`)}</tbody></table></div>
      <p class="row"><button @click=${() => { this.seen = null; }}>Put the key away</button></p>`;
  }

  /** @param {SubmitEvent} event */
  async look(event) {
    event.preventDefault();
    const code = String(new FormData(/** @type {HTMLFormElement} */ (event.target)).get('code'));
    try {
      this.seen = await post(`/trials/${this.trial.kept.id}/key`, { code });
      this.dispatchEvent(new Event('changed'));
    } catch (error) {
      failed(error);
    }
  }

  /** @param {SubmitEvent} event */
  async open(event) {
    event.preventDefault();
    const why = String(new FormData(/** @type {HTMLFormElement} */ (event.target)).get('why'));
    try {
      await post(`/trials/${this.trial.kept.id}/opened`, { why });
      done('The labels are open.');
      this.sure = false;
      this.seen = null;
      this.dispatchEvent(new Event('changed'));
    } catch (error) {
      failed(error);
    }
  }
}
customElements.define('hw-trial-key', TrialKey);
