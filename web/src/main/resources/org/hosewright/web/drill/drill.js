/** What did the night show? Readings typed or imported, checked as they come, and the numbers they give. */
import { html, nothing } from 'lit';
import { get, post, save, Trouble } from '../shared/api.js';
import { done, failed } from '../shared/notes.js';
import { Part, busy, company } from '../shared/page.js';
import { counted, day } from '../shared/text.js';
import { steps } from '../shared/working.js';
import { Night } from './night.js';
import { advice, answers, cannotTell, deliveries, list, needed, verdict } from './results.js';
import './new-night.js';
import './readings.js';
import './years.js';
import '../shared/profile.js';

/** @typedef {{ id: string, name: string, date: string, rows: number, acceptedInto?: number }} Summary */

class Drill extends Part {
  /** @override */
  static properties = {
    nights: { state: true }, night: { state: true }, report: { state: true }, trouble: { state: true },
    working: { state: true }, starting: { state: true }, noKit: { state: true }, printing: { state: true }, line: { state: true },
  };

  constructor() {
    super();
    /** @type {Summary[] | null} */
    this.nights = null;
    /** @type {Night | null} */
    this.night = null;
    /** @type {any} what the analysis shows; stays while a newer one is worked out */
    this.report = null;
    this.trouble = '';
    this.working = false;
    this.starting = false;
    this.noKit = false;
    this.line = 0;
    this.printing = false;
  }

  /** @override */
  async connectedCallback() {
    super.connectedCallback();
    this.noKit = (await company) === null;
    try {
      this.nights = (await get('/drills')).drills;
      const wanted = new URLSearchParams(location.search).get('night') ?? this.nights?.[0]?.id;
      if (wanted) await this.open(wanted);
    } catch (error) {
      this.trouble = error instanceof Error ? error.message : String(error);
    }
  }

  /** @param {string} id */
  async open(id) {
    history.replaceState(null, '', `/drill?night=${id}`);
    const night = await Night.open(id);
    night.addEventListener('changed', () => this.requestUpdate());
    night.addEventListener('saved', () => this.analyse());
    this.report = null;
    this.line = 0;
    this.starting = false;
    this.night = night;
    await this.analyse();
  }

  /** Works the night out anew; only the answer to the last question counts. */
  async analyse() {
    const night = /** @type {Night} */ (this.night);
    const mine = (this.asked = (this.asked ?? 0) + 1);
    this.working = true;
    try {
      const report = await get(`/drills/${night.id}/report`);
      if (mine !== this.asked) return;
      this.report = report;
      this.trouble = '';
      for (const row of night.rows) if (row.id) row.says = report.troubles[row.id];
    } catch (error) {
      if (mine === this.asked && !(error instanceof Trouble && error.away)) this.trouble = error instanceof Error ? error.message : String(error);
    } finally {
      if (mine === this.asked) this.working = false;
    }
  }

  /** @override */
  render() {
    if (this.noKit) {
      return html`<div class="empty"><p>A night needs a kit first: the hose, the nozzle and the gauges it is flown with.</p>
        <p><a href="/kit">Write or import the kit</a></p></div>`;
    }
    if (this.nights === null) return this.trouble ? html`<p class="wrong">${this.trouble}</p>` : busy('Opening the night');
    if (this.starting || !this.night) return html`<hw-new-night .first=${this.nights.length === 0}
      @started=${(/** @type {CustomEvent} */ event) => this.started(event.detail)} @left=${() => { this.starting = false; }}></hw-new-night>`;
    return this.page(this.night);
  }

  /** @param {any} record */
  async started(record) {
    this.nights = (await get('/drills')).drills;
    await this.open(record.id).catch(failed);
  }

  /** @param {Night} night */
  page(night) {
    const shown = this.report?.shown;
    return html`${this.about(night, shown)}
      ${this.trouble ? html`<p class="wrong" role="alert">${this.trouble} ${shown ? 'The numbers below are from before.' : ''}</p>` : nothing}
      <div class="night ${this.trouble ? 'before' : ''}">
        ${shown ? html`<div class="picture">${this.lines(shown)}
            <hw-profile .source="/drills/${night.id}/profile?line=${this.line}" .version=${this.report.version}></hw-profile></div>
          <div class="said">${verdict(shown.verdict)}</div>
          <div class="numbers">${answers(shown)}${this.buttons(night, shown)}</div>` : this.nothingYet()}
        <section class="table" aria-labelledby="readings-head">
          <h2 id="readings-head" class="away">Readings</h2>
          <hw-readings .night=${night} .judged=${shown?.judged ?? {}}></hw-readings>
          ${shown ? advice(shown) : nothing}
          ${this.state(night)}
        </section>
      </div>
      ${shown ? this.evidence(shown) : nothing}
      ${this.report ? html`<hw-years .version=${this.report.version}></hw-years>` : nothing}`;
  }

  /** @param {Night} night @param {any} shown */
  about(night, shown) {
    /** @type {Summary[]} */
    const nights = this.nights ?? [];
    const count = shown ? `${counted(shown.readings, 'reading')}, ${shown.used === shown.readings ? 'all' : counted(shown.used, 'reading').split(' ')[0]} used` : 'no reading yet';
    return html`<div class="about"><p class="sub">${night.name}, ${day(night.date)}${shown ? `, ${shown.about}` : ''}: ${count}.
        ${night.accepted && !night.accepted.changedSince ? html`Taken over into the kit.` : nothing}</p>
      <div class="row">
        ${nights.length > 1 ? html`<label class="away" for="nights">Night</label><select id="nights" @change=${(/** @type {Event} */ event) =>
          this.open(/** @type {HTMLSelectElement} */ (event.target).value).catch(failed)}>
          ${nights.map((one) => html`<option value=${one.id} ?selected=${one.id === night.id}>${one.name}, ${day(one.date)}</option>`)}</select>` : nothing}
        <button @click=${() => /** @type {any} */ (this.querySelector('hw-readings')).next()}>Type a reading</button>
        <button @click=${() => { this.starting = true; }}>New night</button>
        <button @click=${() => save(`/drills/${night.id}/readings.csv`).catch(failed)}>Write out as CSV</button>
      </div></div>`;
  }

  /** Where more than one line was flown: which of them is drawn. @param {any} shown */
  lines(shown) {
    if (shown.lines.length < 2) return nothing;
    return html`<label class="drawn">Line drawn <select @change=${(/** @type {Event} */ event) => { this.line = /** @type {HTMLSelectElement} */ (event.target).selectedIndex; }}>
      ${shown.lines.map((/** @type {string} */ line, /** @type {number} */ at) => html`<option ?selected=${at === this.line}>${line}</option>`)}</select></label>`;
  }

  nothingYet() {
    if (this.trouble) return nothing;
    return this.working ? busy('Working it out') : html`<p class="caution">Type the first reading below. With one length you see what the line
      needs there; a second, longer one tells the hose from the piping.</p>`;
  }

  /** @param {Night} night */
  state(night) {
    const says = { saved: 'All readings are saved.', saving: 'Not saved yet.',
      both: 'A reading is not saved: somebody else changed it too. Choose which of the two stands.',
      kept: 'Not saved yet: the program on this machine does not answer. What you typed is kept in this browser and is saved as soon as it answers again.' };
    return html`<p class="soft small" role="status" data-state=${night.state}>${says[night.state]} ${this.working ? 'Working out the numbers.' : ''}</p>`;
  }

  /** @param {Night} night @param {any} shown */
  buttons(night, shown) {
    if (shown.headlines.length === 0) return nothing;
    return html`<p class="row"><button class="go" ?disabled=${this.report.version !== night.version} @click=${() => this.accept(night)}>Accept these numbers</button>
      <button ?disabled=${this.printing} @click=${() => this.print(night)}>${this.printing ? 'Drawing the report' : 'Print the report'}</button></p>
      ${this.printing ? html`<span class="busy"></span>` : nothing}`;
  }

  /** @param {Night} night */
  async print(night) {
    this.printing = true;
    await save(`/drills/${night.id}/report.pdf`).catch(failed);
    this.printing = false;
  }

  /** @param {Night} night */
  async accept(night) {
    try {
      const before = await get('/kit');
      const made = await post(`/drills/${night.id}/acceptance`, { version: this.report.version, basedOn: before.version });
      await this.open(night.id);
      done(made.says, () => this.takeBack(before, made.kit.version, night));
    } catch (error) {
      failed(error);
    }
  }

  /** @param {any} before @param {number} basedOn @param {Night} night */
  async takeBack(before, basedOn, night) {
    try {
      await post('/kit', { text: before.text, basedOn }, `numbers of ${night.name} taken back`);
      await this.open(night.id);
      done('The kit is again as it was before.');
    } catch (error) {
      failed(error);
    }
  }

  /** @param {any} shown */
  evidence(shown) {
    return html`<div class="evidence"><section><h2>What the present rule delivers</h2>
        ${deliveries(shown.rule, 'By the rule, level')} ${deliveries(shown.book, 'By the numbers held before this night, level')}</section>
      ${needed(shown)} ${list('Without single readings', shown.swings)} ${cannotTell(shown)} ${list('Keep in mind', shown.cautions)} ${list('What these numbers assume', shown.assumed)}
      ${shown.workings.length ? html`<section class="working"><h2>The working</h2>${shown.workings.map((/** @type {any} */ one) =>
        html`<details id=${workingId(one.title)}><summary>${one.title}</summary>${steps(one)}</details>`)}</section>` : nothing}</div>`;
  }
}
customElements.define('hw-drill', Drill);

/** The place that a needed pressure leads to: "needed-550-ft". @param {string} title */
function workingId(title) {
  const length = /^Needed pump pressure at (\S+ \S+?),/.exec(title)?.[1];
  return length ? `needed-${length.replace(' ', '-')}` : nothing;
}

addEventListener('hashchange', () => {
  const place = location.hash.startsWith('#needed-') && document.getElementById(location.hash.slice(1));
  if (place instanceof HTMLDetailsElement) place.open = true;
});
