/** What lies under the hose? Walks as recorded, with every section's end; stretches estimated before they are laid. */
import { html, nothing } from 'lit';
import { check, get, post, save, Trouble } from '../shared/api.js';
import { done, failed } from '../shared/notes.js';
import { Part, company } from '../shared/page.js';
import { moment } from '../shared/text.js';
import { whoField } from '../shared/who.js';
import { pickPhoto } from './photo.js';
import './layers.js';
import './stretch.js';
import './walk.js';
import './way.js';

const NARROW = 560;

/** @typedef {{ track: string, name: string, own: boolean }} Track */

class Ground extends Part {
  /** @override */
  static properties = { walks: { state: true }, shown: { state: true }, track: { state: true }, asked: { state: true }, trouble: { state: true }, packages: { state: true }, busy: { state: true } };

  constructor() {
    super();
    /** @type {any[]} */
    this.walks = [];
    /** @type {any} the way on view */
    this.shown = null;
    /** @type {Track | null} recorded or taken in, not yet kept */
    this.track = null;
    this.asked = { package: '', measured: '', measuredWith: 'tape', rise: '', way: 'up', couplings: '' };
    this.trouble = '';
    /** @type {string[]} */
    this.packages = [];
    this.busy = false;
    this.count = 0;
    this.us = true;
    this.zone = '';
  }

  /** @override */
  async connectedCallback() {
    super.connectedCallback();
    const found = await company;
    this.us = found?.units !== 'si';
    this.zone = found?.zone ?? '';
    if (found) this.packages = Object.keys((await get('/kit')).entries.packages ?? {});
    await this.list().catch((error) => { this.trouble = String(error.message ?? error); });
    const walk = new URLSearchParams(location.search).get('walk');
    if (walk) await this.open(walk);
  }

  async list() {
    this.walks = (await get('/walks')).walks;
  }

  get sheet() {
    return this.clientWidth < NARROW ? 'phone' : 'laptop';
  }

  /** What is asked with a track. @returns {Record<string, string>} */
  question() {
    const { package: chosen, measured, measuredWith, rise, way, couplings } = this.asked;
    const track = /** @type {Track} */ (this.track);
    return { track: track.track, ...(track.name.trim() && { name: track.name.trim() }), ...(chosen && { package: chosen }), ...(measured && { measured, measuredWith }), ...(couplings && { couplings }), ...(rise && { [way]: rise }) };
  }

  /** @param {() => Promise<any>} ask */
  async answer(ask) {
    const asked = ++this.count;
    this.busy = true;
    let shown = null;
    let trouble = '';
    try {
      shown = await ask();
    } catch (error) {
      trouble = error instanceof Trouble ? error.message : String(error);
    }
    if (asked !== this.count) return;
    this.shown = shown;
    this.trouble = trouble;
    this.busy = false;
  }

  /** @param {Track} track */
  async look(track) {
    this.track = track;
    await this.answer(() => check('/walks/look', { ...this.question(), sheet: this.sheet }));
  }

  /** @param {string} id */
  async open(id) {
    this.track = null;
    const query = new URLSearchParams({ sheet: this.sheet, ...(this.asked.package && { package: this.asked.package }) });
    await this.answer(() => get(`/walks/${id}?${query}`));
  }

  async keep() {
    try {
      const kept = await post('/walks', this.question());
      if (this.track?.own) /** @type {any} */ (this.querySelector('hw-walk')).clear();
      await this.list();
      done('The walk is kept.');
      await this.open(kept.id);
    } catch (error) {
      failed(error);
    }
  }

  async photograph() {
    try {
      const photo = await pickPhoto();
      if (!photo) return;
      const { kept } = this.shown;
      const picture = await post('/pictures', { name: photo.name, photograph: photo.base64 });
      await post(`/walks/${kept.id}/pictures`, { basedOn: kept.version, picture: picture.id });
      await this.open(kept.id);
    } catch (error) {
      failed(error);
    }
  }

  /** @param {Event} event */
  async ask(event) {
    event.preventDefault();
    const form = new FormData(/** @type {HTMLFormElement} */ (event.target));
    const text = (/** @type {string} */ name) => String(form.get(name) ?? '').trim();
    this.asked = { package: text('package'), measured: text('measured'), measuredWith: text('measuredWith') || 'tape', rise: text('rise'), way: text('way') || 'up', couplings: text('couplings') };
    if (this.track) return this.look(this.track);
    const { kept } = this.shown;
    if (this.asked.measured) {
      try {
        await post(`/walks/${kept.id}/measured`, { basedOn: kept.version, length: this.asked.measured, with: this.asked.measuredWith });
        this.asked = { ...this.asked, measured: '' };
        done('The measured length corrects the walk.');
      } catch (error) {
        failed(error);
      }
    }
    return this.open(kept.id);
  }

  /** @override */
  render() {
    return html`<section><h2>Walk it</h2><hw-walk .us=${this.us} @track=${(/** @type {CustomEvent} */ event) => this.look(event.detail)}></hw-walk></section>
      ${this.trouble ? html`<p class="wrong" role="alert">${this.trouble}</p>` : nothing}
      ${this.busy ? html`<p class="soft" role="status">Smoothing the way<span class="busy"></span></p>` : nothing}
      ${this.shown ? this.way() : nothing}
      <section><h2>Walks that are kept</h2>${this.walks.length ? html`<ul class="plain">${this.walks.map((walk) => html`<li><button class="link" @click=${() => this.open(walk.id)}>${walk.title}</button> <span class="soft">${walk.who}, ${moment(walk.at, this.zone || undefined)}</span></li>`)}</ul>` : html`<p class="soft">None yet.</p>`}</section>
      <section><h2>Estimate a stretch before it is laid</h2><hw-stretch .packages=${this.packages} .us=${this.us} .walked=${this.shown}></hw-stretch></section>
      <section><h2>The company's own map</h2><hw-layers></hw-layers></section>`;
  }

  way() {
    const { kept, name } = this.shown;
    return html`<section class="the-way"><h2>${name || 'The way'}</h2>
      ${this.form()}
      <hw-way .shown=${this.shown}></hw-way>
      ${kept ? html`<p class="row"><button @click=${() => save(`/walks/${kept.id}/reach.pdf?${this.chosen()}`).catch(failed)}>Print what each length reaches</button>
          <button @click=${() => save(`/walks/${kept.id}/way.gpx?${this.chosen()}`).catch(failed)}>Write it as GPX</button>
          <button @click=${() => save(`/walks/${kept.id}/way.geojson?${this.chosen()}`).catch(failed)}>Write it as GeoJSON</button> <span class="soft small">These files say where and when the phone was; nothing is sent to anybody.</span></p>
          <p class="row"><button @click=${() => this.photograph()}>Add a photograph of the way</button> ${(this.shown.pictures ?? []).map((/** @type {string} */ id) => html`<img class="photo" src="/api/v1/pictures/${id}" alt="A photograph of the way">`)}</p>
          <p class="soft small">Kept by ${kept.who}, ${moment(kept.at, this.zone || undefined)}.</p>`
        : html`${whoField()}<p class="row"><button class="go" @click=${() => this.keep()}>Keep this walk</button></p>`}</section>`;
  }

  chosen() {
    return new URLSearchParams(this.asked.package ? { package: this.asked.package } : {});
  }

  form() {
    const { asked, us } = this;
    const chosen = asked.package || this.shown.package || '';
    return html`<form class="way-asked" @submit=${(/** @type {Event} */ event) => this.ask(event)}>
      <div class="field"><label>Package<select name="package"><option value="">none</option>${this.packages.map((id) => html`<option ?selected=${id === chosen}>${id}</option>`)}</select></label></div>
      <div class="field"><label>Whole way as measured (± standard error)<input name="measured" .value=${asked.measured} autocomplete="off" placeholder=${us ? '340 ± 2 ft' : '104 ± 1 m'}></label></div>
      <div class="field"><label>Measured with<select name="measuredWith">${['tape', 'hose laid', 'measuring wheel'].map((by) => html`<option ?selected=${by === asked.measuredWith}>${by}</option>`)}</select></label></div>
      ${this.track && this.shown.tapped.some((/** @type {any} */ mark) => mark.mark === 'coupling') ? html`<div class="field"><label>The couplings marked<select name="couplings"><option value="">are marks alone</option><option value="hose laid" ?selected=${asked.couplings !== ''}>are of hose laid, in order from the pump</option></select></label></div>` : nothing}
      ${this.track ? html`<div class="field"><label>End above or below the start<select name="way"><option ?selected=${asked.way === 'up'}>up</option><option ?selected=${asked.way === 'down'}>down</option></select></label></div>
      <div class="field"><label>by hand, where known<input name="rise" .value=${asked.rise} autocomplete="off" placeholder=${us ? '20 ft' : '6 m'}></label></div>` : nothing}
      <button>Ask with these</button></form>`;
  }
}
customElements.define('hw-ground', Ground);
