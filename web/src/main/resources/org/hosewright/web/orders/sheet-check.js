/** Is this sheet still the order? By the text of its square code, or a photograph of it. */
import { html } from 'lit';
import { codeFields } from '../shared/sheet-code.js';

export function sheetCheck() {
  return html`<section><h2>Is this sheet still the order?</h2>
    <p>Read the square code at the foot of a sheet with a phone and paste its text, or choose a photograph of it.</p>
    ${codeFields('/sheet-codes')}</section>`;
}
