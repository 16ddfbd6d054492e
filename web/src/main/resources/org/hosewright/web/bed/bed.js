/** What lies on the rig? The daily check: one tap where it lies as written, a short form where it does not. */
import { html, nothing } from 'lit';
import { get, post } from '../shared/api.js';
import { done, failed } from '../shared/notes.js';
import { Part, busy, company } from '../shared/page.js';
import { ago, capital, counted, moment, set } from '../shared/text.js';
import { whoField } from '../shared/who.js';

/** @typedef {{ hose: string, nozzle: string, setting: string, marks?: string[], note?: string }} What */
/** @typedef {{ package: string, written: What, ordered: boolean, lying?: What, differs: string[] }} BedLine */
/** @typedef {{ id: string, version: number, at?: string, who?: string, days?: number, reserve?: string, lines: BedLine[] }} Rig */

class BedPage extends Part {
  /** @override */
  static properties = { found: { state: true }, trouble: { state: true }, none: { state: true }, engine: { state: true }, open: { state: true }, nozzle: { state: true }, saving: { state: true } };

  constructor() {
    super();
    /** @type {{ engines: Rig[], hoses: string[], nozzles: Record<string, string[]> } | null} */
    this.found = null;
    this.trouble = '';
    this.none = false;
    this.engine = new URLSearchParams(location.search).get('engine') ?? '';
    this.open = '';
    this.nozzle = '';
    this.saving = false;
    this.zone = 'UTC';
  }

  /** @override */
  async connectedCallback() {
    super.connectedCallback();
    const own = await company;
    this.none = own === null;
    this.zone = own?.zone ?? 'UTC';
    if (!this.none) await this.look();
  }

  async look() {
    try {
      this.found = await get('/beds');
      if (!this.rig()) this.engine = this.found?.engines.find((rig) => rig.lines.length > 0)?.id ?? this.found?.engines[0]?.id ?? '';
    } catch (error) {
      this.trouble = error instanceof Error ? error.message : String(error);
    }
  }

  rig() {
    return this.found?.engines.find((rig) => rig.id === this.engine);
  }

  /** @override */
  render() {
    if (this.none) return html`<div class="empty"><p>There is no kit yet, so nothing lies on a rig.</p><p><a href="/kit">Write or import the kit</a></p></div>`;
    if (this.trouble) return html`<p class="wrong" role="alert">${this.trouble}</p>`;
    if (!this.found) return busy('Looking at the rigs');
    const rig = this.rig();
    if (!rig) return html`<div class="empty"><p>The kit names no engine yet.</p><p><a href="/kit">Write one down</a></p></div>`;
    return html`${this.choice()}<p class="answer-line">${this.answer(rig)}</p>
      <p class="soft">${rig.version ? `Looked at last by ${rig.who}, ${moment(rig.at ?? '', this.zone)}, ${ago(rig.days ?? 0)}.` : 'Nobody has written down yet what lies on it.'}</p>
      ${whoField()}
      <p class="row"><button class="go" data-check ?disabled=${this.saving || rig.lines.length === 0} @click=${() => this.asWritten(rig)}>All of ${rig.id} lies as written</button></p>
      ${this.reserve(rig)}
      <ol class="rigs">${rig.lines.map((line) => this.line(rig, line))}</ol>`;
  }

  choice() {
    return html`<label class="inline">Engine <select @change=${(/** @type {Event} */ event) => { this.engine = /** @type {HTMLSelectElement} */ (event.target).value; this.open = ''; }}>
      ${this.found?.engines.map((one) => html`<option value=${one.id} ?selected=${one.id === this.engine}>${one.id}</option>`)}</select></label>`;
  }

  /** @param {Rig} rig */
  answer(rig) {
    if (rig.reserve) return `${capital(rig.reserve)} serves in its place.`;
    const differing = rig.lines.filter((line) => line.differs.length > 0).length;
    const unseen = rig.lines.filter((line) => !line.lying).length;
    if (differing > 0) return `${capital(counted(differing, 'line'))} not as written.`;
    return unseen > 0 ? `${capital(counted(unseen, 'line'))} not looked at.` : 'As written.';
  }

  /** @param {Rig} rig */
  reserve(rig) {
    const others = this.found?.engines.filter((one) => one.id !== rig.id) ?? [];
    if (others.length === 0) return nothing;
    return html`<p><label class="inline">In service <select ?disabled=${this.saving} @change=${(/** @type {Event} */ event) => this.save(rig, rig.lines, /** @type {HTMLSelectElement} */ (event.target).value)}>
      <option value="" ?selected=${!rig.reserve}>${rig.id} itself</option>
      ${others.map((one) => html`<option value=${one.id} ?selected=${one.id === rig.reserve}>${one.id} in its place</option>`)}</select></label></p>
      <p class="soft">Where another rig serves, its own order applies: its piping is not this one's.</p>`;
  }

  /** @param {Rig} rig @param {BedLine} line */
  line(rig, line) {
    const lies = line.lying ?? line.written;
    return html`<li class=${line.differs.length ? 'differs' : ''}><h2>${line.package}</h2>
      <p class="soft">Written: ${this.says(line.written)}.</p>
      ${line.lying ? html`<p>Lies: ${this.says(line.lying)}${line.lying.marks?.length ? `, lengths ${line.lying.marks.join(', ')}` : ''}.${line.lying.note ? ` ${line.lying.note}` : ''}</p>` : html`<p>Not looked at yet.</p>`}
      ${line.differs.map((why) => html`<p class="wrong">${set(why)}${line.ordered ? ' What is ordered for it is stale.' : ''}</p>`)}
      ${this.open === line.package ? this.form(rig, line, lies)
        : html`<p class="row"><button @click=${() => { this.open = line.package; this.nozzle = lies.nozzle; }}>Write down what lies there</button></p>`}</li>`;
  }

  /** @param {What} what */
  says(what) {
    return `${what.hose || 'no hose'}, ${what.nozzle}${what.setting ? ` at ${what.setting}` : ''}`;
  }

  /** @param {Rig} rig @param {BedLine} line @param {What} lies */
  form(rig, line, lies) {
    const settings = this.found?.nozzles[this.nozzle] ?? [];
    return html`<form @submit=${(/** @type {SubmitEvent} */ event) => this.saveLine(event, rig, line)}>
      <div class="fields">
        <div class="field"><label>Hose in laying order, as in 4 x ${this.found?.hoses[0] ?? 'attack'} <input name="hose" .value=${lies.hose}></label></div>
        <div class="field"><label>Marks of the lengths, with commas <input name="marks" .value=${(lies.marks ?? []).join(', ')}></label></div>
        <div class="field"><label>Nozzle <select name="nozzle" @change=${(/** @type {Event} */ event) => { this.nozzle = /** @type {HTMLSelectElement} */ (event.target).value; }}>
          ${Object.keys(this.found?.nozzles ?? {}).map((id) => html`<option value=${id} ?selected=${id === this.nozzle}>${id}</option>`)}</select></label></div>
        ${settings.length > 1 || settings[0] ? html`<div class="field"><label>Setting or ring <select name="setting">${settings.map((one) => html`<option value=${one} ?selected=${one === lies.setting}>${one}</option>`)}</select></label></div>` : nothing}
        <div class="field"><label>What was swapped, after what <input name="note" maxlength="400" .value=${lies.note ?? ''}></label></div>
      </div>
      <p class="row"><button class="go" ?disabled=${this.saving}>Save what lies there</button><button type="button" @click=${() => { this.open = ''; }}>Leave it</button></p></form>`;
  }

  /** @param {SubmitEvent} event @param {Rig} rig @param {BedLine} line */
  async saveLine(event, rig, line) {
    event.preventDefault();
    const form = new FormData(/** @type {HTMLFormElement} */ (event.target));
    const text = (/** @type {string} */ key) => String(form.get(key) ?? '').trim();
    const lying = { hose: text('hose'), nozzle: text('nozzle'), setting: text('setting'), note: text('note'),
      marks: text('marks').split(',').map((mark) => mark.trim()).filter(Boolean) };
    await this.save(rig, rig.lines.map((one) => (one === line ? { ...one, lying } : one)), rig.reserve ?? '');
  }

  /** @param {Rig} rig */
  async asWritten(rig) {
    const lines = rig.lines.map((line) => ({ ...line, lying: { ...line.written, marks: line.lying?.marks ?? [], note: line.lying?.note ?? '' } }));
    await this.save(rig, lines, rig.reserve ?? '');
  }

  /** @param {Rig} rig @param {BedLine[]} lines @param {string} reserve */
  async save(rig, lines, reserve) {
    this.saving = true;
    const seen = lines.flatMap((line) => (line.lying ? [{ package: line.package, hose: line.lying.hose, marks: line.lying.marks ?? [], nozzle: line.lying.nozzle, setting: line.lying.setting, note: line.lying.note ?? '' }] : []));
    try {
      await post(`/beds/${encodeURIComponent(rig.id)}`, { basedOn: rig.version, lines: seen, ...(reserve && { reserve }) });
      this.open = '';
      await this.look();
      done(`Written down what lies on ${rig.id}.`);
    } catch (error) {
      failed(error);
    }
    this.saving = false;
  }
}
customElements.define('hw-bed', BedPage);
