/** Tables whose unit stands once, in the head. */
import { html } from 'lit';

/** Number and half-width without the unit, which stands in the head: "149 gpm ± 6" gives "149 ± 6". @param {string} text */
export function bare(text) {
  return text.replace(/^(\S+) \S+/, '$1');
}

/** A head with the unit of its column. @param {string} name @param {string} text a cell of it */
export function head(name, text) {
  return html`<th scope="col">${name} <span class="unit">${text.split(' ')[1]}</span></th>`;
}
