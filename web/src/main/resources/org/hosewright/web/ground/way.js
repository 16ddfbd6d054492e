/** A way that was walked or drawn, as an answer: how long, how it rises, what the pump must do at each section. */
import { html, nothing } from 'lit';
import { Part } from '../shared/page.js';
import { stroke } from '../shared/drawing.js';
import { counted, set } from '../shared/text.js';
import './map.js';

class Way extends Part {
  /** @override */
  static properties = { shown: { attribute: false }, chosen: { state: true } };

  constructor() {
    super();
    /** @type {any} */
    this.shown = null;
    this.chosen = 0;
  }

  /** @override */
  render() {
    const shown = this.shown;
    if (!shown) return nothing;
    return html`<div class="way-first"><div>
        <dl class="answers"><div class="answer"><dd><span class="value">${shown.distance}</span></dd><dt>along the way; summed from position to position it would be ${shown.raw}</dt></div>
          <div class="answer"><dd><span class="value">${counted(shown.sections, 'section')}</span></dd><dt>of ${shown.section} cover it${shown.sectionsAtMost > shown.sections ? `; take ${shown.sectionsAtMost} to be sure` : ''}</dt></div>
          <div class="answer"><dd><span class="value">${shown.rise}</span></dd><dt>from ${shown.riseSays}</dt></div>
          ${shown.safe ? html`<div class="answer"><dd><span class="value">${shown.safe}</span></dd><dt>is safe along it with ${shown.package}${shown.stoppedBy ? `; stopped by ${shown.stoppedBy}` : ''}</dt></div>` : nothing}</dl>
        ${shown.line ? html`<p class="soft">${set(shown.line)}</p>` : html`<p class="soft">Choose a package to see what the pump must do.</p>`}
      </div>
      <hw-ground-map .shown=${shown} @section=${(/** @type {CustomEvent} */ event) => { this.chosen = event.detail; this.querySelector(`#section-${event.detail}`)?.scrollIntoView({ block: 'nearest' }); }}></hw-ground-map></div>
      ${shown.drawing ? html`<div class="way-profile">${stroke(shown.drawing, shown.drawingSays)}</div>` : nothing}
      ${this.table()}${this.reaches()}
      ${shown.tapped.length ? html`<h3>Marked on the way</h3><ul class="plain">${shown.tapped.map((/** @type {any} */ mark) => html`<li><b>${mark.mark}</b> at ${mark.along}${mark.note ? `: ${mark.note}` : ''}</li>`)}</ul>` : nothing}
      ${shown.cautions.map((/** @type {string} */ caution) => html`<p class="caution">${set(caution)}</p>`)}
      ${shown.assumed.length ? html`<details><summary>What this assumes</summary><ul class="plain">${shown.assumed.map((/** @type {string} */ line) => html`<li>${set(line)}</li>`)}</ul></details>` : nothing}`;
  }

  table() {
    const laid = this.shown.marks.some((/** @type {any} */ mark) => mark.pump);
    const ordered = this.shown.marks.some((/** @type {any} */ mark) => mark.ordered);
    return html`<div class="wide" tabindex="0" role="region" aria-label="Every section's end"><table class=${laid ? `sections figures-${ordered ? 6 : 5}` : 'sections'}>
      <thead><tr><th scope="col">section</th><th scope="col">hose</th><th scope="col">ground</th>${laid ? html`<th scope="col">pump</th>${ordered ? html`<th scope="col">ordered</th>` : nothing}<th scope="col">flow</th><th scope="col" class="words">first limit</th>` : nothing}</tr></thead>
      <tbody>${this.shown.marks.map((/** @type {any} */ mark) => html`<tr id="section-${mark.section}" class=${mark.section === this.chosen ? 'chosen' : ''}><th scope="row">${mark.section}</th><td>${mark.hose}</td><td>${mark.height}</td>
        ${laid ? mark.pump ? html`<td>${mark.pump}</td>${ordered ? html`<td><b>${mark.ordered ?? 'none'}</b></td>` : nothing}<td>${mark.safe ? mark.flow : html`<span class="wrong">not safe</span>`}</td><td class="words">${mark.limit ? `${mark.limit}, ${mark.used} %` : 'no limit is known'}</td>` : html`<td></td>${ordered ? html`<td></td>` : nothing}<td></td><td class="words">within the package's other hose</td>` : nothing}</tr>`)}</tbody></table></div>`;
  }

  /** Along the way, never as the crow flies. */
  reaches() {
    const reaches = this.shown.reaches ?? [];
    if (reaches.length === 0) return nothing;
    return html`<h3>What each package reaches along this way</h3><p class="small soft">Rings on the map. Hose follows the way; a straight line on a map is no length of hose.</p>
      <ul class="plain">${reaches.map((/** @type {any} */ one) => html`<li><b>${one.package}</b>: ${one.at ? `safe to ${one.safe} of hose` : 'no section of it is safe on this way'}</li>`)}</ul>`;
  }
}
customElements.define('hw-way', Way);

