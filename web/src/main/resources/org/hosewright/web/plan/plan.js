/** What should we flow next? A test night asked for, proposed, kept, signed, printed, started. */
import { html, nothing } from 'lit';
import { check, get, post, save } from '../shared/api.js';
import { done, failed } from '../shared/notes.js';
import { Part, busy, company } from '../shared/page.js';
import { capital, counted, day, set } from '../shared/text.js';
import { whoField } from '../shared/who.js';
import { asked, form } from './asking.js';
import { evidence, readings } from './shown.js';

/** @typedef {{ id: string, title: string, version: number }} Head */
/** @typedef {{ plans: Head[], packages: { id: string, says: string, last: string, carried: string }[], instruments: { id: string, says: string }[], questions: string[], today: string }} Choices */

class PlanPage extends Part {
  /** @override */
  static properties = {
    choices: { state: true }, plan: { state: true }, asks: { state: true }, trouble: { state: true }, none: { state: true },
    working: { state: true }, printing: { state: true },
  };

  constructor() {
    super();
    /** @type {Choices | null} */
    this.choices = null;
    /** @type {any} the plan that is shown; kept where it has "kept" */
    this.plan = null;
    /** @type {any} what is asked, as the program takes it */
    this.asks = null;
    this.trouble = '';
    this.none = false;
    this.working = false;
    this.printing = false;
    /** @type {'us' | 'si'} */
    this.units = 'us';
  }

  /** @override */
  async connectedCallback() {
    super.connectedCallback();
    const own = await company;
    this.none = own === null;
    this.units = own?.units ?? 'us';
    if (this.none) return;
    try {
      const choices = await get('/plans');
      const first = choices.packages[0];
      this.asks = first ? { package: first.id, questions: ['hose', 'piping'], date: choices.today } : null;
      this.choices = choices;
      const wanted = new URLSearchParams(location.search).get('plan');
      if (wanted) await this.open(wanted);
      else if (this.asks) await this.look();
    } catch (error) {
      this.wrong(error);
    }
  }

  /** @param {unknown} error */
  wrong(error) {
    this.trouble = error instanceof Error ? error.message : String(error);
  }

  /** @param {string} id */
  async open(id) {
    history.replaceState(null, '', `/plan?plan=${id}`);
    this.plan = await get(`/plans/${id}`);
    this.asks = this.plan.asked;
    this.trouble = '';
  }

  /** Asks for the plan; only the answer to the last question counts. */
  async look() {
    const mine = (this.turn = (this.turn ?? 0) + 1);
    this.working = true;
    try {
      const plan = await check('/plans/look', { plan: this.asks });
      if (mine !== this.turn) return;
      history.replaceState(null, '', '/plan');
      this.plan = plan;
      this.trouble = '';
    } catch (error) {
      if (mine === this.turn) {
        this.plan = null;
        this.wrong(error);
      }
    } finally {
      if (mine === this.turn) this.working = false;
    }
  }

  /** @override */
  render() {
    if (this.none) return html`<div class="empty"><p>A plan needs a kit first: the package to fly, its hose's service tests, the gauges.</p><p><a href="/kit">Write or import the kit</a></p></div>`;
    if (!this.choices) return this.trouble ? html`<p class="wrong" role="alert">${this.trouble}</p>` : busy('Opening the plans');
    if (!this.asks) return html`<div class="empty"><p>The kit has no package yet. A test night flies one: its hose, its nozzle, its discharge.</p><p><a href="/kit">Write one down</a></p></div>`;
    return html`<div class="planned"><div class="answered">${this.answer()}</div>
      <aside aria-label="What is asked"><h2>What is asked</h2>${form(this.choices, this.asks, this.units, (event) => this.ask(event))}${this.kept(this.choices.plans)}</aside></div>`;
  }

  answer() {
    const plan = this.plan;
    if (this.trouble) return html`<p class="wrong" role="alert">${this.trouble}</p>`;
    if (!plan) return busy('Looking for the shortest list');
    return html`<p class="answer-line" data-planned>${capital(plan.readings)} on ${counted(plan.layings, 'lay')}, ${plan.time}, ${plan.water} of water</p>
      <p class="sub">${plan.kept ? `${plan.kept.title}. ` : ''}${plan.package} on ${day(plan.date)}, read with ${plan.with.join(', ')}. ${plan.signed ?? ''}</p>
      ${plan.changed ? html`<p class="wrong">${plan.changed}</p>` : nothing}
      ${readings(plan)}
      ${plan.warnings.length ? html`<div class="caution"><h2>Know before flying it</h2>${plan.warnings.map((/** @type {string} */ says) => html`<p>${set(says)}</p>`)}</div>` : nothing}
      ${plan.kept ? this.doing(plan) : this.keeping()}
      ${this.working ? html`<span class="busy"></span>` : nothing}
      ${evidence(plan)}`;
  }

  keeping() {
    return html`<form class="fields" @submit=${(/** @type {SubmitEvent} */ event) => this.keep(event)}>
      <div class="field"><label>Name of the plan<input name="name" required maxlength="120" placeholder="June flow test"></label></div>
      ${whoField()}<div class="field end"><button class="go">Keep this plan</button></div></form>`;
  }

  /** @param {any} plan */
  doing(plan) {
    return html`<div class="row">
      <button class="go" ?disabled=${Boolean(plan.changed)} @click=${() => this.start(plan)}>Start this night</button>
      ${plan.signed && !plan.changed ? nothing : html`<button ?disabled=${Boolean(plan.changed)} @click=${() => this.sign(plan)}>Sign it for the night</button>`}
      <button ?disabled=${this.printing} @click=${() => this.print(plan)}>${this.printing ? 'Drawing the sheets' : 'Print the sheets'}</button>
      <button @click=${() => this.look()}>Plan it again</button>
      <button @click=${() => this.takeOut(plan)}>Take it off the list</button></div>${whoField()}`;
  }

  /** @param {Head[]} plans */
  kept(plans) {
    if (plans.length === 0) return nothing;
    return html`<h2>Kept plans</h2><ul class="plain">${plans.map((one) => html`<li><a href="/plan?plan=${one.id}"
      aria-current=${one.id === this.plan?.kept?.id ? 'true' : 'false'}>${one.title}</a></li>`)}</ul>`;
  }

  /** @param {SubmitEvent} event */
  async ask(event) {
    event.preventDefault();
    this.asks = asked(/** @type {HTMLFormElement} */ (event.target));
    await this.look();
  }

  /** @param {SubmitEvent} event */
  async keep(event) {
    event.preventDefault();
    const name = new FormData(/** @type {HTMLFormElement} */ (event.target)).get('name');
    await this.act(async () => {
      const head = await post('/plans', { name, plan: this.asks });
      await this.listed();
      await this.open(head.id);
      done(`${head.title} is kept.`);
    });
  }

  /** @param {any} plan */
  async sign(plan) {
    await this.act(async () => {
      await post(`/plans/${plan.kept.id}/signed`, { basedOn: plan.kept.version });
      await this.open(plan.kept.id);
      done('Signed. The sheets now say who answers for the night.');
    });
  }

  /** @param {any} plan */
  async start(plan) {
    await this.act(async () => {
      const night = await post(`/plans/${plan.kept.id}/night`, { date: plan.date });
      location.assign(`/drill?night=${night.id}`);
    });
  }

  /** @param {any} plan */
  async print(plan) {
    this.printing = true;
    await save(`/plans/${plan.kept.id}/sheet.pdf`).catch(failed);
    this.printing = false;
  }

  /** @param {any} plan */
  async takeOut(plan) {
    await this.act(async () => {
      await post(`/plans/${plan.kept.id}/taken-out`, { basedOn: plan.kept.version });
      await this.listed();
      done(`${plan.kept.title} is off the list; it stays in the record.`);
      await this.look();
    });
  }

  async listed() {
    this.choices = await get('/plans');
  }

  /** @param {() => Promise<void>} what */
  async act(what) {
    this.working = true;
    await what().catch(failed);
    this.working = false;
  }
}
customElements.define('hw-plan', PlanPage);
