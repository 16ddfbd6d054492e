/** The fields of an account: hats to tick, a password typed twice. */
import { html } from 'lit';

/** What a person may act as, and what that is for. */
export const HATS = ['recorder', 'analyst', 'approver', 'apparatus officer', 'operator', 'owner'];

const FOR = /** @type {Record<string, string>} */ ({
  recorder: 'writes down readings and walks',
  analyst: 'rules on readings, changes the kit, proposes orders',
  approver: 'signs orders',
  'apparatus officer': 'confirms what hangs on the rig',
  operator: 'acknowledges orders, keeps the bed record, reports',
  owner: 'says who may do what',
});

/** @param {string[]} given hats ticked at first @param {string[]} fixed those that stay ticked */
export function hatBoxes(given, fixed) {
  return html`<fieldset class="hats"><legend>Hats</legend>${HATS.map((hat) => html`<label title=${FOR[hat]}>
    <input type="checkbox" name="hat" value=${hat} ?checked=${given.includes(hat)} ?disabled=${fixed.includes(hat)}> ${hat}</label>`)}</fieldset>
    <p class="soft small">${HATS.map((hat) => `${hat}: ${FOR[hat]}`).join('; ')}.</p>`;
}

/** @param {HTMLFormElement} form @param {string[]} fixed */
export function ticked(form, fixed) {
  const boxes = /** @type {NodeListOf<HTMLInputElement>} */ (form.querySelectorAll('input[name=hat]'));
  return [...boxes].filter((box) => box.checked || fixed.includes(box.value)).map((box) => box.value);
}

/** A password, typed twice. */
export function passwordFields() {
  return html`<div class="fields"><label>Password <input name="password" type="password" autocomplete="new-password" minlength="12" maxlength="128" required></label>
    <label>The same again <input name="again" type="password" autocomplete="new-password" maxlength="128" required></label></div>
    <p class="soft small">At least 12 characters; four words that do not belong together will do.</p>`;
}

/** The password of a form. @param {HTMLFormElement} form @throws {Error} it was typed in two ways */
export function takePassword(form) {
  const [first, again] = ['password', 'again'].map((name) => /** @type {HTMLInputElement} */ (form.elements.namedItem(name)).value);
  if (first !== again) throw new Error('The two passwords differ; type the same one twice.');
  return first;
}
