/** Is a neighbour's sheet of the file that is held? By the text of its square code, or a photograph of it. */
import { html } from 'lit';
import { codeFields } from '../shared/sheet-code.js';

export function sheetCheck() {
  return html`<section><h2>Is a neighbour's sheet the one that is held?</h2>
    <p>Read the square code at the foot of the sheet with a phone and paste its text, or choose a photograph of it.</p>
    ${codeFields('/exchange/sheet-codes')}</section>`;
}
