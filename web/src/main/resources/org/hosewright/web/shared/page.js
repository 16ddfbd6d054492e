/** What every page shares: no shadow around it, so that one sheet of styles and one heading order serve all. */
import { LitElement, html } from 'lit';
import { get } from './api.js';

/** @typedef {{ company: string, units: 'us' | 'si', demo: boolean, zone: string, engines: string[], kitVersion: number, revision: string }} Company */

/** A page, or a part of one, drawn into the document itself. */
export class Part extends LitElement {
  /** @override */
  createRenderRoot() {
    return this;
  }
}

/**
 * The company's name and units; null where there is no kit yet.
 * @type {Promise<Company | null>}
 */
export const company = get('/company').then(
  (found) => {
    const place = document.getElementById('company');
    if (place) place.textContent = found.company + (found.demo ? ' · demo' : '');
    return found;
  },
  () => null,
);

/** @param {string} says */
export function busy(says) {
  return html`<p class="soft" role="status">${says}<span class="busy"></span></p>`;
}
