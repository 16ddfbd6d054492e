/** The name under which changes are recorded. */
import { html } from 'lit';
import { who, setWho } from './api.js';
import { signedIn } from './session.js';

/** A field for the person's name; where somebody is signed in, that name. */
export function whoField() {
  if (signedIn()) return html`<p class="soft">Recorded under your name, ${signedIn()}.</p>`;
  return html`<div class="field"><label>Your name, for the record
    <input autocomplete="name" maxlength="80" .value=${who()}
      @change=${(/** @type {Event} */ event) => setWho(/** @type {HTMLInputElement} */ (event.target).value)}></label></div>`;
}
