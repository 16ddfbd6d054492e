/** Which engine? Asked where a company has so many that all at once would be no answer. */
import { html, nothing } from 'lit';

/** As many engines are shown together without a question. */
const TOGETHER = 4;

/**
 * The engine to begin with; empty for all of them.
 * @param {string[]} engines
 */
export function firstEngine(engines) {
  return engines.length > TOGETHER ? engines[0] : '';
}

/**
 * @param {string[]} engines
 * @param {string} chosen
 * @param {(engine: string) => void} choose
 */
export function engineChoice(engines, chosen, choose) {
  if (engines.length < 2) return nothing;
  return html`<label class="inline">Engine <select name="engine" @change=${(/** @type {Event} */ event) => choose(/** @type {HTMLSelectElement} */ (event.target).value)}>
    ${engines.length > TOGETHER ? nothing : html`<option value="" ?selected=${chosen === ''}>all of them</option>`}
    ${engines.map((engine) => html`<option value=${engine} ?selected=${engine === chosen}>${engine}</option>`)}</select></label>`;
}
