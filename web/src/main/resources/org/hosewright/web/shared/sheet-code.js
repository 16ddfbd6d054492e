/** Looks up the square code of a printed sheet, by its text or by a photograph of it. */
import { html } from 'lit';
import { check } from './api.js';
import { done, failed } from './notes.js';

/** @param {string} path where the code is looked up */
export function codeFields(path) {
  return html`<form class="row" @submit=${(/** @type {Event} */ event) => byText(path, event)}><label class="inline">Text of the code <input name="text" maxlength="300" required></label><button>Look it up</button></form>
    <p class="row"><label class="inline">Photograph <input type="file" accept="image/png,image/jpeg" @change=${(/** @type {Event} */ event) => byPhotograph(path, event)}></label></p>`;
}

/** @param {string} path @param {Event} event */
async function byText(path, event) {
  event.preventDefault();
  const form = /** @type {HTMLFormElement} */ (event.target);
  await ask(path, { text: String(new FormData(form).get('text') ?? '') });
}

/** @param {string} path @param {Event} event */
async function byPhotograph(path, event) {
  const field = /** @type {HTMLInputElement} */ (event.target);
  const file = field.files?.[0];
  if (!file) return;
  const reader = new FileReader();
  reader.onload = () => { ask(path, { photograph: String(reader.result).replace(/^.*?,/, '') }); };
  reader.readAsDataURL(file);
  field.value = '';
}

/** @param {string} path @param {Record<string, string>} what */
async function ask(path, what) {
  try {
    done((await check(path, what)).says);
  } catch (error) {
    failed(error);
  }
}
