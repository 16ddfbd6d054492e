/** What we hand over: packages of the order in force in one signed file, its sheet, and the fingerprint to read out. */
import { html, nothing } from 'lit';
import { post, save } from '../shared/api.js';
import { done, failed } from '../shared/notes.js';
import { Part } from '../shared/page.js';
import { day, moment } from '../shared/text.js';
import { whoField } from '../shared/who.js';

class HandOver extends Part {
  /** @override */
  static properties = { found: { attribute: false }, zone: { attribute: false }, busy: { state: true } };

  constructor() {
    super();
    /** @type {any} */
    this.found = null;
    this.zone = 'UTC';
    this.busy = false;
  }

  /** @override */
  render() {
    const found = this.found;
    return html`<section><h2>Hand over to the neighbours</h2>
      <p>Our fingerprint. Read it out to whoever rings to compare it, group by group:</p>
      <p class="fingerprint" data-fingerprint>${found.fingerprint}</p>
      ${found.handed ? this.last(found.handed) : html`<p>Nothing was handed over yet.</p>`}
      ${found.ready.length ? this.form(found) : html`<p>${this.why(found)}</p>`}
      ${found.handed && found.handed.standing !== 'withdrawn' ? this.back() : nothing}</section>`;
  }

  /** @param {any} found */
  why(found) {
    if (!found.order) return html`There is no order in force, so there is nothing to hand over. <a href="/orders">Propose and sign one</a>.`;
    return html`No package of ${found.order} is ready: ${found.stale.join(' ')} <a href="/orders">Sign a new order first</a>.`;
  }

  /** @param {any} last */
  last(last) {
    return html`<p>Handed over last: ${last.standing === 'withdrawn' ? 'the withdrawal of everything' : last.names.join(', ')}, ${moment(last.issued, this.zone)}${last.order ? html`, of ${last.order}; until ${day(last.until)}` : nothing}. Check of the file: <code>${last.check}</code>.</p>
      <p class="row"><button @click=${() => save('/exchange/handed.exchange').catch(failed)}>Save that file</button><button @click=${() => save('/exchange/handed.pdf').catch(failed)}>Print its sheet</button></p>`;
  }

  /** @param {any} found */
  form(found) {
    return html`<form @submit=${this.hand}><fieldset><legend>Packages of ${found.order} that are ready</legend>
        ${found.ready.map((/** @type {string} */ id) => html`<label class="tick"><input type="checkbox" name="package" value=${id} checked> ${id}</label>`)}</fieldset>
      ${found.stale?.length ? html`<p class="soft">Left out, because they are stale: ${found.stale.join(' ')}</p>` : nothing}
      <div class="fields"><div class="field"><label>Last day they are to use it <input type="date" name="until" required .value=${found.until}></label></div>${whoField()}</div>
      <p class="row"><button class="go" ?disabled=${this.busy}>Make the file</button></p>
      <p class="soft">It takes the place of all that was handed over before. Send it as an attachment, exactly as it was made.</p></form>`;
  }

  back() {
    return html`<details><summary>Take back all that was handed over</summary><form @submit=${this.takeBack}>
      <div class="field"><label>Why nothing of it is to be used any more <input name="why" maxlength="400" required></label></div>
      <p class="row"><button ?disabled=${this.busy}>Make the file that takes it back</button></p></form></details>`;
  }

  /** @param {SubmitEvent} event */
  async hand(event) {
    event.preventDefault();
    const form = new FormData(/** @type {HTMLFormElement} */ (event.target));
    await this.make('/exchange/handovers', { packages: form.getAll('package').map(String), until: String(form.get('until')) }, '');
  }

  /** @param {SubmitEvent} event */
  async takeBack(event) {
    event.preventDefault();
    const form = new FormData(/** @type {HTMLFormElement} */ (event.target));
    await this.make('/exchange/withdrawals', {}, String(form.get('why')));
  }

  /** @param {string} path @param {Record<string, any>} what @param {string} why */
  async make(path, what, why) {
    this.busy = true;
    try {
      await post(path, what, why);
      await save('/exchange/handed.exchange');
      done('The file is made and saved. Send it as an attachment.');
      this.dispatchEvent(new Event('handed'));
    } catch (error) {
      failed(error);
    }
    this.busy = false;
  }
}
customElements.define('hw-hand-over', HandOver);
