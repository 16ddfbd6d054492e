/** A rise, always said as level, up or down with a height. */
import { html } from 'lit';
import { Part } from '../shared/page.js';

class Rise extends Part {
  /** @override */
  static properties = { us: { type: Boolean, attribute: false }, way: { state: true } };

  constructor() {
    super();
    this.us = true;
    /** @type {'level' | 'up' | 'down'} */
    this.way = 'level';
    this.height = '';
  }

  /** @override */
  render() {
    return html`<fieldset class="rise"><legend>The nozzle is</legend>
      <div class="ways">${/** @type {const} */ (['level', 'up', 'down']).map((way) => html`<label><input type="radio" name="way" value=${way} ?checked=${this.way === way}
        @change=${() => this.take(way, this.height)}> ${way === 'level' ? 'level with the pump' : way}</label>`)}</div>
      <label class=${this.way === 'level' ? 'away' : ''}>by ${this.us ? 'feet' : 'metres'}<input inputmode="decimal" autocomplete="off" ?disabled=${this.way === 'level'} placeholder=${this.us ? '20' : '6'}
        @change=${(/** @type {Event} */ event) => this.take(this.way, /** @type {HTMLInputElement} */ (event.target).value)}></label>
    </fieldset>`;
  }

  /** @param {'level' | 'up' | 'down'} way @param {string} height */
  take(way, height) {
    this.way = way;
    this.height = height.trim();
    if (way !== 'level' && !this.height) return;
    const text = /[a-z]$/i.test(this.height) ? this.height : `${this.height} ${this.us ? 'ft' : 'm'}`;
    this.dispatchEvent(new CustomEvent('rise', { detail: way === 'level' ? '' : `${way === 'down' ? '-' : ''}${text}` }));
  }
}
customElements.define('hw-rise', Rise);
