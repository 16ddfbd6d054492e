/** Is a neighbour's sheet of the file that is held? By the text of its square code. */
import { html } from 'lit';
import { check } from '../shared/api.js';
import { done, failed } from '../shared/notes.js';

export function sheetCheck() {
  return html`<section><h2>Is a neighbour's sheet the one that is held?</h2>
    <p>Read the square code at the foot of the sheet with a phone and paste its text.</p>
    <form class="row" @submit=${look}><label class="inline">Text of the code <input name="text" maxlength="300" required></label><button>Look it up</button></form></section>`;
}

/** @param {SubmitEvent} event */
async function look(event) {
  event.preventDefault();
  const text = String(new FormData(/** @type {HTMLFormElement} */ (event.target)).get('text') ?? '');
  try {
    done((await check('/exchange/sheet-codes', { text })).says);
  } catch (error) {
    failed(error);
  }
}
