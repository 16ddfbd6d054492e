/** Who changed what, when, why? The record, newest first; nothing in it is ever changed. */
import { html, nothing } from 'lit';
import { get } from '../shared/api.js';
import { Part, busy, company } from '../shared/page.js';
import { capital, moment } from '../shared/text.js';

class History extends Part {
  /** @override */
  static properties = { entries: { state: true }, trouble: { state: true } };

  constructor() {
    super();
    /** @type {any[] | null} */
    this.entries = null;
    this.trouble = '';
  }

  /** @override */
  async connectedCallback() {
    super.connectedCallback();
    try {
      this.zone = (await company)?.zone;
      this.entries = (await get('/history')).entries;
    } catch (error) {
      this.trouble = error instanceof Error ? error.message : String(error);
    }
  }

  /** @override */
  render() {
    if (this.trouble) return html`<p class="wrong">${this.trouble}</p>`;
    if (!this.entries) return busy('Opening the record');
    if (this.entries.length === 0) return html`<div class="empty"><p>Nothing has been recorded yet. Every change to the kit and to a night stands here, with who made it and why.</p></div>`;
    const last = this.entries[0];
    return html`<p class="sub">Last: ${last.who}, ${this.when(last.at)}: ${last.what}.</p>
      <div class="wide" tabindex="0" role="region" aria-label="The record"><table class="record">
        <thead><tr><th scope="col">no.</th><th scope="col" class="words">when</th><th scope="col" class="words">who</th><th scope="col" class="words">what</th><th scope="col" class="words">why</th></tr></thead>
        <tbody>${this.entries.map((entry) => html`<tr><th scope="row">${entry.number}</th><td class="words">${this.when(entry.at)}</td><td class="words">${entry.who}</td>
          <td class="words">${this.what(entry)}</td><td class="words">${entry.why || nothing}</td></tr>`)}</tbody></table></div>`;
  }

  /** @param {any} entry */
  what(entry) {
    const says = capital(entry.what);
    return entry.subject === 'drill' ? html`<a href="/drill?night=${entry.subjectId}">${says}</a>` : html`<a href="/kit">${says}</a>`;
  }

  /** The company's own time. @param {string} at */
  when(at) {
    return moment(at, this.zone);
  }
}
customElements.define('hw-history', History);
