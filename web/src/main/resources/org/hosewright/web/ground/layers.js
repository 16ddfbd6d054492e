/** The layers of the company's own map: what there is, and a file taken in as one more or in place of one. */
import { html, nothing } from 'lit';
import { get, post } from '../shared/api.js';
import { done, failed } from '../shared/notes.js';
import { Part } from '../shared/page.js';
import { pick } from '../shared/file.js';

class Layers extends Part {
  /** @override */
  static properties = { layers: { state: true } };

  constructor() {
    super();
    /** @type {any[]} */
    this.layers = [];
  }

  /** @override */
  async connectedCallback() {
    super.connectedCallback();
    await this.list().catch(() => undefined);
  }

  async list() {
    this.layers = (await get('/layers')).layers;
  }

  /** @param {Event} event */
  async take(event) {
    event.preventDefault();
    const form = new FormData(/** @type {HTMLFormElement} */ (event.target));
    const title = String(form.get('title')).trim();
    const id = title.toLowerCase().replace(/[^a-z0-9]+/g, '-').replace(/^-|-$/g, '');
    try {
      const file = await pick('.geojson,.json');
      if (!file) return;
      const basedOn = this.layers.find((layer) => layer.id === id)?.version ?? 0;
      await post(`/layers/${id}`, { basedOn, title, attribution: String(form.get('attribution')).trim(), geojson: file.text });
      done(`The layer ${title} is kept; it is drawn when a way is next looked at.`);
      await this.list();
    } catch (error) {
      failed(error);
    }
  }

  /** @override */
  render() {
    return html`<p class="soft">Nothing is fetched from outside: the map shows what the company takes in itself. The layer named Lanes is drawn broad.</p>
      ${this.layers.length ? html`<ul class="plain">${this.layers.map((layer) => html`<li><b>${layer.title}</b>: ${layer.geojson.features.length} features; ${layer.attribution}</li>`)}</ul>` : nothing}
      <form class="way-asked" @submit=${(/** @type {Event} */ event) => this.take(event)}>
        <div class="field"><label>Name of the layer<input name="title" required maxlength="80" autocomplete="off" placeholder="Hydrants"></label></div>
        <div class="field"><label>Who made the data, as its licence wants it named<input name="attribution" required maxlength="200" autocomplete="off"></label></div>
        <button>Take in a GeoJSON file</button></form>`;
  }
}
customElements.define('hw-layers', Layers);
