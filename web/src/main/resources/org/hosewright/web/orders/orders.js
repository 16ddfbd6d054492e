/** What is ordered? Each set of pump pressures from the proposal to the rig, old beside new. */
import { html, nothing } from 'lit';
import { get, post, save, Trouble } from '../shared/api.js';
import { done, failed } from '../shared/notes.js';
import { Part, busy, company } from '../shared/page.js';
import { capital, counted, moment } from '../shared/text.js';
import { whoField } from '../shared/who.js';
import { engine } from './engine.js';
import { sheetCheck } from './sheet-check.js';
import './rests.js';

const SHEETS = [
  { path: 'pump-card.pdf', name: 'pump card' },
  { path: 'tags.pdf', name: 'discharge tags' },
  { path: 'pocket-card.pdf', name: 'pocket card' },
];

class Orders extends Part {
  /** @override */
  static properties = { book: { state: true }, order: { state: true }, trouble: { state: true }, none: { state: true }, round: { state: true }, busy: { state: true } };

  constructor() {
    super();
    /** @type {any} */
    this.book = null;
    /** @type {any} the set that is shown */
    this.order = null;
    this.trouble = '';
    this.none = false;
    this.round = 'nearest';
    this.busy = false;
  }

  /** @override */
  async connectedCallback() {
    super.connectedCallback();
    const found = await company;
    this.none = found === null;
    this.zone = found?.zone;
    if (!this.none) await this.open(Number(new URLSearchParams(location.search).get('order')) || undefined);
  }

  /** @param {number} [number] the set to show; the one that waits, or is in force, where none is named */
  async open(number) {
    try {
      this.book = await get('/orders');
      const which = number ?? this.book.proposed ?? this.book.inForce ?? this.book.orders[0]?.number;
      this.order = which ? await get(`/orders/${which}`) : null;
      this.trouble = '';
    } catch (error) {
      this.trouble = error instanceof Trouble ? error.message : String(error);
    }
  }

  /** @override */
  render() {
    if (this.none) return html`<div class="empty"><p>There is no kit yet, so there is nothing to order.</p><p><a href="/kit">Write or import the kit</a></p></div>`;
    if (this.trouble) return html`<p class="wrong" role="alert">${this.trouble}</p>`;
    if (!this.book) return busy('Opening the orders');
    return html`${this.order ? this.shown(this.order) : html`<div class="empty"><p>Nothing is ordered yet. Propose a set of pump pressures from the kit; it becomes an order when somebody signs it.</p></div>`}
      ${this.propose()}${this.rests()}${sheetCheck()}${this.list()}`;
  }

  /** @param {any} order */
  shown(order) {
    const changed = order.engines.reduce((/** @type {number} */ sum, /** @type {any} */ one) => sum + one.changed, 0);
    return html`<p class="sub">Order ${order.number}, ${order.code}: <b data-standing=${order.standing}>${order.standing}</b>. Proposed by ${order.proposed.who}, ${this.when(order.proposed.at)}${order.proposed.why ? html`: ${order.proposed.why}` : nothing}.
        ${order.signed ? html`Signed by ${order.signed.who}, ${this.when(order.signed.at)}.` : nothing}</p>
      ${order.stale > 0 ? html`<p class="caution" role="alert">${capital(counted(order.stale, 'number'))} of it ${order.stale === 1 ? 'is' : 'are'} stale: what ${order.stale === 1 ? 'it rests' : 'they rest'} on is no longer so. Propose anew and see what changes.</p>` : nothing}
      <p>${order.first ? 'No order was signed before it: every number is new.' : `Against the order signed before: ${changed === 0 ? 'no number changes' : `${counted(changed, 'number')} ${changed === 1 ? 'changes' : 'change'}`}.`}
        ${order.gone.length ? html`No longer in it: ${order.gone.join('; ')}.` : nothing}</p>
      ${this.doing(order)}
      ${order.engines.map((/** @type {any} */ one) => engine(one, order, { when: (at) => this.when(at), step: (kind, note) => this.step(kind, one.id, note) }))}`;
  }

  /** @param {any} order */
  doing(order) {
    const print = html`<p class="row"><button @click=${() => save(`/orders/${order.number}/order.pdf`).catch(failed)}>Print the order</button>
        <button @click=${() => save(`/orders/${order.number}/changes.pdf`).catch(failed)}>Print the change sheet</button>
        <button @click=${() => save(`/orders/${order.number}/readers.pdf`).catch(failed)}>Print the list to sign</button> ${SHEETS.map((sheet) => html`<button @click=${() => save(`/papers/${sheet.path}?order=${order.number}`).catch(failed)}>Print the ${sheet.name}</button>`)}</p>`;
    if (order.standing === 'proposed') {
      return html`${whoField()}<p class="row"><button class="go" ?disabled=${this.busy} @click=${() => this.step('signed', '', '')}>Sign order ${order.number}</button>
        <button ?disabled=${this.busy} @click=${() => this.step('withdrawn', '', '')}>Take it back</button></p>
        <p class="soft">Signing makes these numbers the order; the one before is superseded. A signed number is never edited: a later order takes its place.</p>${print}`;
    }
    if (order.standing === 'in force') {
      return html`${whoField()}<p class="row"><button ?disabled=${this.busy} @click=${() => this.step('withdrawn', '', '')}>Withdraw order ${order.number}</button></p>${print}`;
    }
    return print;
  }

  propose() {
    return html`<section><h2>Propose a new set</h2><p>Worked out from the kit as it stands, each number rounded and checked from both sides of its error.</p>
      <p class="row"><label class="inline">Round <select @change=${(/** @type {Event} */ event) => { this.round = /** @type {HTMLSelectElement} */ (event.target).value; }}>
        <option value="nearest">to the nearest step</option><option value="up">up to the next step</option></select></label>
        <button ?disabled=${this.busy} @click=${() => this.proposeNow()}>Propose</button></p></section>`;
  }

  rests() {
    if (!this.order) return nothing;
    const engines = this.order.standing === 'in force' ? this.order.engines.map((/** @type {any} */ one) => one.id) : [];
    return html`<hw-rests .shown=${`${this.order.number} ${this.order.standing}`} .engines=${engines} .inForce=${engines.length ? this.order.number : undefined}></hw-rests>`;
  }

  list() {
    if (this.book.orders.length === 0) return nothing;
    return html`<section><h2>All sets</h2><ul class="plain">${this.book.orders.map((/** @type {any} */ one) => html`<li><button class="link" @click=${() => this.open(one.number)}>Order ${one.number}</button>, ${one.code}: ${one.standing};
      proposed by ${one.proposed.who}, ${this.when(one.proposed.at)}${one.signed ? html`; signed by ${one.signed.who}, ${this.when(one.signed.at)}` : nothing}</li>`)}</ul></section>`;
  }

  async proposeNow() {
    await this.act(async () => {
      const order = await post('/orders', { round: this.round });
      done(`Order ${order.number} is proposed. It is no order before somebody signs it.`);
      return order.number;
    });
  }

  /** @param {string} kind @param {string} on the engine it is about; none for the whole set @param {string} note */
  async step(kind, on, note) {
    await this.act(async () => {
      const number = this.order.number;
      await post(`/orders/${number}/steps`, { kind, ...(on && { engine: on }), ...(note && { note }) });
      done(`Recorded: order ${number} ${kind}${on ? ` for ${on}` : ''}.`);
      return number;
    });
  }

  /** @param {() => Promise<number>} work gives the number of the set to show afterwards */
  async act(work) {
    this.busy = true;
    try {
      await this.open(await work());
    } catch (error) {
      failed(error);
    }
    this.busy = false;
  }

  /** @param {string} at */
  when(at) {
    return moment(at, this.zone);
  }
}
customElements.define('hw-orders', Orders);
