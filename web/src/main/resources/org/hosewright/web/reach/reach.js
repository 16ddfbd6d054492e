/** How far can it go, and what stops it? Each package at a rise and a ceiling. */
import { html, nothing } from 'lit';
import { get, Trouble } from '../shared/api.js';
import { Part, busy, company } from '../shared/page.js';
import { stroke } from '../shared/drawing.js';
import { set, capital } from '../shared/text.js';
import { working } from '../shared/working.js';
import { engineChoice, firstEngine } from '../shared/engines.js';
import './rise.js';

const NARROW = 560;

class Reach extends Part {
  /** @override */
  static properties = { report: { state: true }, trouble: { state: true }, none: { state: true }, working: { state: true } };

  constructor() {
    super();
    /** @type {any} */
    this.report = null;
    this.trouble = '';
    this.none = false;
    this.working = false;
    this.rise = '';
    this.ceiling = '';
    /** @type {string[]} */
    this.engines = [];
    this.engine = '';
  }

  /** @override */
  async connectedCallback() {
    super.connectedCallback();
    const found = await company;
    this.none = found === null;
    this.us = found?.units !== 'si';
    this.engines = found?.engines ?? [];
    this.engine = firstEngine(this.engines);
    if (!this.none) await this.ask();
  }

  async ask() {
    this.working = true;
    const query = new URLSearchParams({ sheet: this.clientWidth < NARROW ? 'phone' : 'laptop', ...(this.engine && { engine: this.engine }), ...(this.rise && { rise: this.rise }), ...(this.ceiling && { ceiling: this.ceiling }) });
    try {
      this.report = await get(`/reach?${query}`);
      this.trouble = '';
    } catch (error) {
      this.trouble = error instanceof Trouble ? error.message : String(error);
    }
    this.working = false;
  }

  /** @override */
  render() {
    if (this.none) return html`<div class="empty"><p>There is no kit yet, so there is no line to stretch.</p><p><a href="/kit">Write or import the kit</a></p></div>`;
    return html`${this.question()}
      ${this.trouble ? html`<p class="wrong" role="alert">${this.trouble}</p>` : nothing}
      ${this.report ? this.answer() : this.trouble ? nothing : busy('Working it out')}`;
  }

  question() {
    return html`${engineChoice(this.engines, this.engine, (engine) => { this.engine = engine; this.ask(); })}
      <form class="asked" @submit=${(/** @type {Event} */ event) => this.submit(event)}>
      <hw-rise .us=${this.us ?? true} @rise=${(/** @type {CustomEvent} */ event) => { this.rise = event.detail; this.ask(); }}></hw-rise>
      <div class="field"><label>Another ceiling than each engine's own<input name="ceiling" autocomplete="off" placeholder=${this.us ?? true ? '225 psi' : '900 kPa'}></label></div>
      <button>Ask at this ceiling</button></form>`;
  }

  /** @param {Event} event */
  submit(event) {
    event.preventDefault();
    this.ceiling = String(new FormData(/** @type {HTMLFormElement} */ (event.target)).get('ceiling') ?? '').trim();
    this.ask();
  }

  answer() {
    const report = this.report;
    if (report.packages.length === 0) return html`<div class="empty"><p>The kit has no package yet. A package is one line as it lies on the rig: discharge, hose, nozzle.</p><p><a href="/kit">Add a package</a></p></div>`;
    return html`<p class="sub" aria-live="polite">${capital(report.rise)}, ${report.ceiling ? `at a ceiling of ${report.ceiling}` : "at each engine's own ceiling"}. Safe holds with 95 % confidence; the best estimate is longer.
        ${this.working ? html`<span class="busy"></span>` : nothing}</p>
      <div class="wide" tabindex="0" role="region" aria-label="Longest stretches"><table class="reaches">
        <thead><tr><th scope="col" class="words">package</th><th scope="col">safe</th><th scope="col">best estimate</th><th scope="col" class="words">stopped by</th><th scope="col" class="words rest">rests on</th></tr></thead>
        <tbody>${report.packages.map((/** @type {any} */ one) => html`<tr><th scope="row" class="words"><a href="#${one.id}">${one.id}</a></th>
          <td class="safe">${one.safe}</td><td>${one.longest}</td><td class="words">${set(one.stoppedBy)}</td><td class="words rest">${one.measured ? 'a test night' : 'book numbers'}</td></tr>`)}</tbody></table></div>
      ${report.packages.map((/** @type {any} */ one) => this.one(one))}
      ${report.assumed.length ? html`<section><h2>What these lengths assume</h2><ul class="plain">${report.assumed.map((/** @type {string} */ line) => html`<li>${set(line)}</li>`)}</ul></section>` : nothing}`;
  }

  /** @param {any} one */
  one(one) {
    return html`<section class="package" id=${one.id}><h2>${one.id}</h2>
      <p class="sub">${set(one.line)}</p>
      <div class="stretch"><div>${stroke(one.drawing, `Pump pressure against length for ${one.id}: safe to ${one.safe}, best estimate ${one.longest}, stopped by ${one.stoppedBy}.`)}</div>
      <div><dl class="answers"><div class="answer"><dd><span class="value">${one.safe}</span></dd><dt>is safe${one.measured ? '' : ', by book numbers'}</dt></div>
        <div class="answer"><dd><span class="value">${one.longest}</span></dd><dt>is the best estimate, ${one.sections} sections; one more is stopped by ${set(one.stoppedBy)}</dt></div></dl>
        ${working(one.workings)}</div></div>
      ${one.cautions.map((/** @type {string} */ caution) => html`<p class="caution">${set(caution)}</p>`)}
      ${one.measured ? nothing : html`<p class="caution">No test night stands behind this hose's loss. <a href="/drill">Fly it</a>, then the length is this company's own.</p>`}
    </section>`;
  }
}
customElements.define('hw-reach', Reach);
