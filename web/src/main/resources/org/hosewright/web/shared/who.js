/** The name under which changes are recorded. */
import { html } from 'lit';
import { who, setWho } from './api.js';

/** A field for the person's name. */
export function whoField() {
  return html`<div class="field"><label>Your name, for the record
    <input autocomplete="name" maxlength="80" .value=${who()}
      @change=${(/** @type {Event} */ event) => setWho(/** @type {HTMLInputElement} */ (event.target).value)}></label></div>`;
}
