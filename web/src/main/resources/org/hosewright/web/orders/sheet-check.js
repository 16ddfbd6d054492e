/** Is this sheet still the order? By the text of its square code, or a photograph of it. */
import { html } from 'lit';
import { check } from '../shared/api.js';
import { done, failed } from '../shared/notes.js';

export function sheetCheck() {
  return html`<section><h2>Is this sheet still the order?</h2>
    <p>Read the square code at the foot of a sheet with a phone and paste its text, or choose a photograph of it.</p>
    <form class="row" @submit=${byText}><label class="inline">Text of the code <input name="text" maxlength="300" required></label><button>Look it up</button></form>
    <p class="row"><label class="inline">Photograph <input type="file" accept="image/png,image/jpeg" @change=${byPhotograph}></label></p></section>`;
}

/** @param {Event} event */
async function byText(event) {
  event.preventDefault();
  const form = /** @type {HTMLFormElement} */ (event.target);
  await ask({ text: String(new FormData(form).get('text') ?? '') });
}

/** @param {Event} event */
async function byPhotograph(event) {
  const field = /** @type {HTMLInputElement} */ (event.target);
  const file = field.files?.[0];
  if (!file) return;
  const reader = new FileReader();
  reader.onload = () => { ask({ photograph: String(reader.result).replace(/^.*?,/, '') }); };
  reader.readAsDataURL(file);
  field.value = '';
}

/** @param {Record<string, string>} what */
async function ask(what) {
  try {
    done((await check('/sheet-codes', what)).says);
  } catch (error) {
    failed(error);
  }
}
