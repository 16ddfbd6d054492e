/** A stretch estimated before it is laid, kept with its place, printed as a sheet, and learnt from afterwards. */
import { html, nothing } from 'lit';
import { check, get, post, save } from '../shared/api.js';
import { done, failed } from '../shared/notes.js';
import { Part } from '../shared/page.js';
import { counted, set } from '../shared/text.js';
import { whoField } from '../shared/who.js';
import { pickPhoto } from './photo.js';
import { fields, siteFields, stretchOf } from './plan.js';
import { drawn } from './track.js';
import './map.js';

const EMPTY = { parts: [], packages: [], pictures: [], way: [], laid: [], cautions: [] };

/** What the factor was learnt from. @param {{ stretches: number, walks: number }} factor */
function learnt({ stretches, walks }) {
  const laid = stretches - walks;
  return [laid ? counted(laid, 'stretch laid', 'stretches laid') : '', walks ? counted(walks, 'walk along hose laid', 'walks along hose laid') : ''].filter(Boolean).join(' and ');
}

class Stretch extends Part {
  /** @override */
  static properties = { packages: { attribute: false }, us: { type: Boolean }, walked: { attribute: false }, stretches: { state: true }, stretch: { state: true }, kept: { state: true }, answer: { state: true }, trouble: { state: true }, drawing: { state: true }, way: { state: true }, factor: { state: true } };

  constructor() {
    super();
    /** @type {string[]} */
    this.packages = [];
    this.us = true;
    /** @type {any} the walked way on view */
    this.walked = null;
    /** @type {any[]} */
    this.stretches = [];
    /** @type {any} */
    this.stretch = EMPTY;
    /** @type {any} head of the kept one that is open */
    this.kept = null;
    /** @type {any} */
    this.answer = null;
    this.trouble = '';
    this.drawing = false;
    /** @type {any} the drawn way's answer */
    this.way = null;
    /** @type {any} */
    this.factor = null;
  }

  /** @override */
  async connectedCallback() {
    super.connectedCallback();
    await this.list().catch(() => undefined);
    const asked = new URLSearchParams(location.search).get('stretch');
    if (asked) await this.open(asked).catch(failed);
  }

  async list() {
    this.stretches = (await get('/stretches')).stretches;
    this.factor = await get('/stretches/factor').catch(() => null);
  }

  get form() {
    return /** @type {HTMLFormElement} */ (this.querySelector('form.stretch-form'));
  }

  held() {
    return stretchOf(this.form, this.stretch);
  }

  /** @param {Event} [event] */
  async estimate(event) {
    event?.preventDefault();
    try {
      this.answer = await check('/stretches/estimate', { stretch: this.held() });
      this.trouble = '';
    } catch (error) {
      this.trouble = error instanceof Error ? error.message : String(error);
    }
  }

  /** @param {string} id */
  async open(id) {
    const answer = await get(`/stretches/${id}`);
    this.stretch = { ...EMPTY, ...answer.stretch };
    this.kept = answer.kept;
    this.answer = answer;
    this.putAway();
  }

  /** Puts the map away; what was drawn stays with the stretch. */
  putAway() {
    this.drawing = false;
    this.way = null;
  }

  /** Takes the map out, with the way that the stretch has. */
  async takeOut() {
    this.stretch = this.held();
    this.drawing = true;
    if (this.stretch.way.length > 1) await this.look(this.stretch.way);
  }

  async keep() {
    const stretch = this.held();
    try {
      const kept = this.kept ? await post(`/stretches/${this.kept.id}`, { basedOn: this.kept.version, stretch }) : await post('/stretches', { stretch });
      done('The stretch is kept.');
      await this.list();
      await this.open(kept.id);
    } catch (error) {
      failed(error);
    }
  }

  async photograph() {
    try {
      const photo = await pickPhoto();
      if (!photo) return;
      const kept = await post('/pictures', { name: photo.name, photograph: photo.base64 });
      this.stretch = { ...this.held(), pictures: [...this.stretch.pictures, kept.id] };
    } catch (error) {
      failed(error);
    }
  }

  /** @param {{ places: number[][], end: boolean }} drawn corners, and whether the end was dragged: then it goes to whole sections */
  async drawnAs({ places, end }) {
    this.stretch = { ...this.held(), way: places };
    if (places.length < 2) {
      this.way = null;
      return;
    }
    await this.look(places);
    if (end && this.way?.wholeEnd) {
      /** @type {any} */ (this.querySelector('hw-ground-map')).moveEnd(this.way.wholeEnd);
      const whole = [...places.slice(0, -1), this.way.wholeEnd];
      this.stretch = { ...this.held(), way: whole };
      await this.look(whole);
    }
  }

  /** @param {number[][]} places */
  async look(places) {
    this.way = await check('/walks/look', { track: drawn('drawn by hand', places), package: this.held().packages[0] }).catch(failed);
  }

  /** @param {Event} event */
  async laid(event) {
    event.preventDefault();
    const form = new FormData(/** @type {HTMLFormElement} */ (event.target));
    try {
      const kept = await post(`/stretches/${this.kept.id}/laid`, { basedOn: this.kept.version, on: String(form.get('on')), used: String(form.get('used')) });
      done('What it took is kept; the factor learns from it.');
      await this.list();
      await this.open(kept.id);
    } catch (error) {
      failed(error);
    }
  }

  /** @override */
  render() {
    if (this.packages.length === 0) return html`<div class="empty"><p>The kit has no package yet, so no line can be laid along a way. A walk can be recorded all the same.</p><p><a href="/kit">Add a package to the kit</a></p></div>`;
    return html`${this.stretches.length ? html`<p>Kept: ${this.stretches.map((one) => html`<button class="link" @click=${() => this.open(one.id).catch(failed)}>${one.title}</button>${one.stale?.length ? html` <span class="wrong">stale</span>` : nothing} `)}
        ${this.kept ? html`<button class="link" @click=${() => { this.kept = null; this.stretch = EMPTY; this.answer = null; this.putAway(); }}>begin another</button>` : nothing}</p>` : nothing}
      ${this.factor ? html`<p class="soft">${this.factor.stretches ? html`This company lays <b>${this.factor.factor}</b> times what it plans, between ${this.factor.low} and ${this.factor.high}, learnt from ${learnt(this.factor)}.` : 'No stretch was laid and told yet: the range is that of any company, from common practice.'}</p>` : nothing}
      ${this.walked?.takenLength ? html`<p>The way on view is ${this.walked.distance} long, ${this.walked.rise}. <button type="button" class="link" @click=${() => this.useWalked()}>Take it as the way to the door</button></p>` : nothing}
      <form class="stretch-form" @submit=${(/** @type {Event} */ event) => this.estimate(event)}>${fields(this.stretch, this.packages, this.us)}
        <p class="row"><button class="go">Estimate</button> <button type="button" @click=${() => (this.drawing ? this.putAway() : this.takeOut())}>${this.drawing ? 'Put the map away' : 'Draw the way by hand'}</button></p>
        ${this.drawing ? this.map() : nothing}
        ${this.trouble ? html`<p class="wrong" role="alert">${this.trouble}</p>` : nothing}
        ${this.answer ? this.found() : nothing}
        <details ?open=${this.kept !== null}><summary>For the sheet: address, where the rig stands, photographs, cautions</summary>${siteFields(this.stretch)}
          <p class="row"><button type="button" @click=${() => this.photograph()}>Add a photograph</button> ${this.stretch.pictures.map((/** @type {string} */ id) => html`<img class="photo" src="/api/v1/pictures/${id}" alt="A photograph of the place">`)}</p>
          ${whoField()}<p class="row"><button type="button" @click=${() => this.keep()}>Keep the stretch</button></p></details></form>
      ${this.kept ? this.stale() : nothing}${this.kept ? this.papers() : nothing}`;
  }

  map() {
    const sections = this.way ? `${this.way.distance} as drawn: ${counted(this.way.sections, 'section')}, their ends marked.` : 'Tap each corner, first where the pump stands; drag any of them. The end, dragged, goes to whole sections.';
    const straight = this.way && this.stretch.way.length === 2;
    return html`<p role="status" class="draw-says">${sections} ${straight ? 'A straight line on a map is no length of hose: tap the corners of the way, or walk it.' : this.way ? html`<button type="button" class="link" @click=${() => this.useDrawn()}>Take the drawn way as the way to the door</button>` : nothing}</p>
      <hw-ground-map .drawing=${true} .places=${this.stretch.way} .shown=${this.way} @drawn=${(/** @type {CustomEvent} */ event) => this.drawnAs(event.detail)}></hw-ground-map>
      <p class="row"><button type="button" @click=${() => /** @type {any} */ (this.querySelector('hw-ground-map')).cornerHere()}>Corner in the middle of the map</button>
        <button type="button" @click=${() => /** @type {any} */ (this.querySelector('hw-ground-map')).dropCorner()}>Take the last corner back</button></p>
      <p class="caution">A way drawn on a map is no measured length: walk it before anybody relies on it.</p>`;
  }

  useDrawn() {
    this.toDoor(this.way.marks.at(-1).hose, 'drawn on the map, to whole sections');
  }

  /** The walked length with how well it is known, and the rise where there is one. */
  useWalked() {
    const { takenLength, takenRise, takenWay, name } = this.walked;
    this.toDoor(takenLength, `walked: ${name}`);
    if (takenRise) {
      const { up: _up, down: _down, ...level } = this.stretch;
      this.stretch = { ...level, [takenWay]: takenRise };
    }
  }

  /** @param {string} length @param {string} says */
  toDoor(length, says) {
    const held = this.held();
    this.stretch = { ...held, parts: [{ kind: 'to-door', length, says }, ...held.parts.filter((/** @type {any} */ part) => part.kind !== 'to-door')] };
  }

  found() {
    const answer = this.answer;
    const range = answer.fewest === answer.most ? '' : `, between ${answer.fewest} and ${answer.most}`;
    return html`<div class="estimate"><dl class="answers"><div class="answer"><dd><span class="value">${answer.sections} sections</span><span class="unit">${answer.hose}</span></dd><dt>to take${range}</dt></div></dl>
      ${answer.within ? nothing : html`<p class="wrong">Not within reach: safe to ${answer.safe}, stopped by ${answer.stoppedBy}.</p>`}
      <div class="wide" tabindex="0" role="region" aria-label="Pump pressures of the stretch"><table class="sections figures-4"><thead><tr><th scope="col">sections</th><th scope="col">hose</th><th scope="col">pump</th><th scope="col">flow</th><th scope="col" class="words">first limit</th></tr></thead>
        <tbody>${answer.lines.map((/** @type {any} */ line) => html`<tr><th scope="row">${line.sections}</th><td>${line.hose}</td><td>${line.pump}</td><td>${line.safe ? line.flow : html`<span class="wrong">not safe</span>`}</td><td class="words">${line.limit ? `${line.limit}, ${line.used} %` : 'no limit is known'}</td></tr>`)}</tbody></table></div>
      ${answer.within ? html`<p>Safe to <b>${answer.safe}</b> on this rise; stopped by ${answer.stoppedBy}.</p>` : nothing}
      <p>Each floor more, ${answer.floor}: add ${answer.floorAdder}.</p>
      ${answer.second ? html`<p>With ${answer.second.package} as a second line: pump <b>${answer.second.pump}</b>, gate ${answer.second.gate} down by ${answer.second.gated}; ${answer.second.flow} in all.${answer.second.limit ? html` ${answer.second.safe ? 'First limit' : html`<span class="wrong">Not safe</span>`}: ${answer.second.limit}, ${answer.second.used} %.` : ' No limit is known.'}${answer.second.enough ? '' : html` <span class="wrong">More than the pump is rated for at that pressure.</span>`}</p>` : nothing}
      ${answer.cautions.map((/** @type {string} */ caution) => html`<p class="caution">${set(caution)}</p>`)}
      <details><summary>What this assumes</summary><ul class="plain">${answer.assumed.map((/** @type {string} */ line) => html`<li>${set(line)}</li>`)}</ul></details></div>`;
  }

  /** What changed since the stretch was kept; its sheet says STALE until somebody keeps it anew. */
  stale() {
    /** @type {string[]} */
    const why = this.answer?.stale ?? [];
    return why.length ? html`<div class="caution" role="alert" data-stale><p>Its sheet is stale: ${why.map((one) => set(one)).join(' ')} Look at it again and keep it anew.</p></div>` : nothing;
  }

  papers() {
    const sheet = `/stretches/${this.kept.id}/sheet.pdf`;
    return html`<p class="row"><button @click=${() => save(sheet).catch(failed)}>Print the stretch sheet</button> <button @click=${() => save(`${sheet}?private=yes`).catch(failed)}>Print it with the private notes</button></p>
      <form class="row" @submit=${(/** @type {Event} */ event) => this.laid(event)}><div class="field"><label>It was laid, at a drill or a fire, on<input name="on" type="date" required></label></div><div class="field"><label>and took, without the reserve<input name="used" required autocomplete="off" placeholder=${this.us ? '300 ft' : '90 m'}></label></div><button>Tell what it took</button></form>`;
  }
}
customElements.define('hw-stretch', Stretch);
