/** The fields of which a lay's pieces are made. A field is set anew only where its value changed, so that an answer that arrives takes no typing away. */
import { html } from 'lit';
import { live } from 'lit/directives/live.js';

/** @param {Event} event */
const valueOf = (event) => /** @type {HTMLInputElement} */ (event.target).value.trim();

/** @param {string} label @param {string} value @param {(value: string) => void} take @param {string} [hint] */
export function text(label, value, take, hint = '') {
  return html`<div class="field"><label>${label}<input autocomplete="off" placeholder=${hint} .value=${value} @change=${(/** @type {Event} */ event) => take(valueOf(event))}></label></div>`;
}

/** @param {string} label @param {string} value @param {readonly (readonly [string, string])[]} choices @param {(value: string) => void} take */
export function choice(label, value, choices, take) {
  const known = choices.some(([id]) => id === value) ? choices : [[value, value || 'choose'], ...choices];
  return html`<div class="field"><label>${label}<select .value=${live(value)} @change=${(/** @type {Event} */ event) => take(valueOf(event))}>
    ${known.map(([id, says]) => html`<option value=${id} ?selected=${id === value}>${says}</option>`)}</select></label></div>`;
}

/** @param {Record<string, any> | undefined} things @returns {[string, string][]} */
export function ids(things) {
  return Object.keys(things ?? {}).map((id) => [id, id]);
}

/** A rise as level, up or down with a height; while the height is not typed yet it is the word alone. @param {string} label @param {string | undefined} rise @param {string} unit @param {(rise: string) => void} take */
export function rise(label, rise, unit, take) {
  const text = rise ?? '';
  const level = /^-?0+(\.0+)? ?\D*$/.test(text);
  const way = text === '' ? '' : level ? 'level' : text === 'down' || text.startsWith('-') ? 'down' : 'up';
  const height = level || isUnsaid(text) ? '' : text.replace(/^-/, '');
  const set = (/** @type {string} */ newWay, /** @type {string} */ newHeight) => {
    const tall = sized(newHeight.replace(/^-/, ''), unit);
    take(newWay === 'level' ? `0 ${unit}` : !tall ? newWay : newWay === 'down' ? `-${tall}` : tall);
  };
  return html`${choice(label, way, [['level', 'level'], ['up', 'up'], ['down', 'down']], (value) => set(value, height))}
    ${way === 'up' || way === 'down' ? html`<div class="field"><label>by<input autocomplete="off" placeholder="how far?" aria-invalid=${height ? 'false' : 'true'} .value=${height} @change=${(/** @type {Event} */ event) => set(way, valueOf(event))}></label></div>` : ''}`;
}

/** True where a rise says up or down and not yet how far. @param {string | undefined} rise */
export function isUnsaid(rise) {
  return rise === 'up' || rise === 'down';
}

/** A quantity as typed, with the company's unit where none was typed. @param {string} typed @param {string} unit */
export function sized(typed, unit) {
  return /^[0-9.]+$/.test(typed) ? `${typed} ${unit}` : typed;
}
