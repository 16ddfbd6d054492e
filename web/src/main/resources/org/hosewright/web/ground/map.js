/** The company's own map: its layers, a way, marks on it. Nothing is fetched from outside. */
import { html } from 'lit';
import { get } from '../shared/api.js';
import { Part } from '../shared/page.js';

/** @typedef {import('leaflet')} Leaflet */

/** Sheets are read in metres; closer than this nothing more is to be seen. */
const CLOSEST = 21;

/** More ends of sections than this are not numbered. */
const MOST_NUMBERS = 40;

/** About a metre. */
const NUDGE_deg = 1e-5;

/* The map's library asks once, with this text, whether the browser draws; no other text becomes part of a page. */
/** @type {any} */ (window).trustedTypes?.createPolicy('default', { createHTML: (/** @type {string} */ text) => (text === '<svg/>' ? text : null) });

/** @type {Promise<unknown> | null} */
let styling = null;

/** The library's style sheet, fetched once. */
function styled() {
  styling ??= new Promise((done) => {
    const style = document.createElement('link');
    style.rel = 'stylesheet';
    style.href = new URL('../lib/leaflet/leaflet.css', import.meta.url).href;
    style.addEventListener('load', done);
    document.head.append(style);
  });
  return styling;
}

/** @param {string} name a colour of the page */
const ink = (name) => getComputedStyle(document.documentElement).getPropertyValue(name).trim();

class GroundMap extends Part {
  /** @override */
  static properties = { shown: { attribute: false }, places: { attribute: false }, drawing: { type: Boolean }, layers: { state: true } };

  constructor() {
    super();
    /** @type {any} the answer whose way is drawn */
    this.shown = null;
    this.drawing = false;
    /** @type {number[][]} a way drawn before: longitude, latitude */
    this.places = [];
    /** @type {any[]} */
    this.layers = [];
    /** @type {any} */
    this.map = null;
    /** @type {any} */
    this.leaflet = null;
    /** @type {any} */
    this.way = null;
    /** @type {string[]} where a package's name stands already */
    this.named = [];
    /** @type {any[]} corners of a way drawn by hand */
    this.corners = [];
  }

  /** @override */
  async firstUpdated() {
    const [leaflet, { layers }] = await Promise.all([import('leaflet'), get('/layers'), styled()]);
    this.leaflet = leaflet;
    this.layers = layers;
    const place = /** @type {HTMLElement} */ (this.querySelector('.map'));
    this.map = leaflet.map(place, { preferCanvas: true, attributionControl: false, zoomControl: false, maxZoom: CLOSEST, zoomSnap: 0.5, fadeAnimation: false, zoomAnimation: false });
    this.map.on('click', (/** @type {any} */ event) => { if (this.drawing) this.corner(event.latlng); });
    layers.forEach((/** @type {any} */ layer) => this.lay(layer));
    this.map.setView([0, 0], 2);
    this.places.forEach(([lng, lat]) => this.knob({ lat, lng }));
    this.draw();
    this.fit();
    place.dataset.ready = 'yes';
  }

  /** @override @param {Map<string, unknown>} changed */
  updated(changed) {
    if (!this.map) return;
    if (changed.has('shown')) {
      this.draw();
      if (!this.drawing) this.fit();
    }
  }

  /** @param {any} layer */
  lay(layer) {
    const L = this.leaflet;
    L.geoJSON(layer.geojson, {
      style: () => ({ color: ink('--edge'), weight: layer.id === 'lanes' ? 5 : 1.5, fillColor: ink('--ground'), fillOpacity: 0.8, interactive: false }),
      pointToLayer: (/** @type {any} */ _, /** @type {any} */ at) => L.circleMarker(at, { radius: 6, color: ink('--ink'), weight: 2, fillColor: ink('--paper'), fillOpacity: 1, interactive: false }),
    }).addTo(this.map);
  }

  /** Draws the answer's way: raw beside smoothed, section ends, marks, how far each package reaches. */
  draw() {
    const L = this.leaflet;
    this.way?.remove();
    this.way = L.layerGroup().addTo(this.map);
    this.named = [];
    if (!this.shown) return;
    const { way, rawWay, marks, tapped, reaches } = this.shown;
    const at = (/** @type {number[]} */ place) => [place[1], place[0]];
    L.polyline(rawWay.map(at), { color: ink('--soft'), weight: 1.5, dashArray: '2 5', interactive: false, smoothFactor: 1.5 }).addTo(this.way);
    L.polyline(way.map(at), { color: ink('--ink'), weight: 4, interactive: false, smoothFactor: 1.5 }).addTo(this.way);
    for (const one of reaches ?? []) {
      if (one.at) L.circleMarker(at(one.at), { radius: 15, color: ink('--act'), weight: 2.5, fill: false, interactive: false }).addTo(this.way);
      if (one.at) this.name(at(one.at), one.package);
    }
    for (const mark of tapped) L.circleMarker(at(mark.at), { radius: 5, color: ink('--ink'), fillColor: ink('--ink'), fillOpacity: 1, interactive: false }).addTo(this.way);
    for (const mark of marks) {
      const broken = mark.safe === false;
      const dot = L.circleMarker(at(mark.at), { radius: 9, color: broken ? ink('--act') : ink('--ink'), weight: 3, fillColor: ink('--paper'), fillOpacity: 1 }).addTo(this.way);
      dot.on('click', () => this.dispatchEvent(new CustomEvent('section', { detail: mark.section, bubbles: true })));
      if (marks.length <= MOST_NUMBERS) this.number(at(mark.at), mark.section, broken);
    }
  }

  /** Writes a section's number into its end. @param {any} place @param {number} section @param {boolean} broken */
  number(place, section, broken) {
    const L = this.leaflet;
    const word = document.createElement('span');
    word.className = broken ? 'section-number broken' : 'section-number';
    word.textContent = String(section);
    L.marker(place, { interactive: false, keyboard: false, icon: L.divIcon({ html: word, className: 'knob-place', iconSize: [18, 18] }) }).addTo(this.way);
  }

  /** Writes a package's name beside its ring; names at one place stand below one another. @param {any} place @param {string} name */
  name(place, name) {
    const L = this.leaflet;
    const key = place.join();
    const above = this.named.filter((one) => one === key).length;
    this.named.push(key);
    const word = document.createElement('span');
    word.className = 'ring-name';
    word.textContent = name;
    L.marker(place, { interactive: false, keyboard: false, icon: L.divIcon({ html: word, className: 'knob-place', iconSize: [0, 0], iconAnchor: [-20, 8 - 16 * above] }) }).addTo(this.way);
  }

  /** Shows all of the way, or else of the layers. */
  fit() {
    const L = this.leaflet;
    const way = this.shown?.way.length ? this.shown.way : this.places;
    const all = way.length > 1
      ? L.latLngBounds(way.map((/** @type {number[]} */ place) => [place[1], place[0]]))
      : this.layers.length ? L.featureGroup(this.layers.map((layer) => L.geoJSON(layer.geojson))).getBounds() : null;
    if (all?.isValid()) this.map.fitBounds(all, { padding: [24, 24], maxZoom: CLOSEST });
  }

  /** Adds a corner to the way drawn by hand; it can be dragged. @param {any} at */
  corner(at) {
    this.knob(at);
    this.tell();
  }

  /** Sets a corner; by keys it goes a metre or so with each arrow. @param {any} at */
  knob(at) {
    const L = this.leaflet;
    const knob = document.createElement('span');
    knob.className = 'knob';
    const corner = L.marker(at, { draggable: true, keyboard: true, alt: 'corner of the way', icon: L.divIcon({ html: knob, className: 'knob-place', iconSize: [28, 28] }) }).addTo(this.map);
    corner.on('dragend', () => this.tell(this.corners.length > 2 && corner === this.corners.at(-1)));
    corner.getElement()?.addEventListener('keydown', (/** @type {KeyboardEvent} */ event) => this.nudge(corner, event));
    this.corners.push(corner);
  }

  /** @param {any} corner @param {KeyboardEvent} event */
  nudge(corner, event) {
    const ways = { ArrowUp: [1, 0], ArrowDown: [-1, 0], ArrowRight: [0, 1], ArrowLeft: [0, -1] };
    const way = ways[/** @type {keyof typeof ways} */ (event.key)];
    if (!way) return;
    event.preventDefault();
    event.stopPropagation();
    const { lat, lng } = corner.getLatLng();
    corner.setLatLng([lat + way[0] * NUDGE_deg, lng + way[1] * NUDGE_deg]);
    this.tell();
  }

  /** Adds a corner in the middle of the map: for those who move it by keys. */
  cornerHere() {
    this.corner(this.map.getCenter());
  }

  dropCorner() {
    this.corners.pop()?.remove();
    this.tell();
  }

  clear() {
    this.corners.forEach((corner) => corner.remove());
    this.corners = [];
  }

  /** Moves the last corner. @param {number[]} place */
  moveEnd([lng, lat]) {
    this.corners.at(-1)?.setLatLng([lat, lng]);
  }

  /** @param {boolean} [end] whether the end was dragged */
  tell(end = false) {
    const places = this.corners.map((corner) => { const { lng, lat } = corner.getLatLng(); return [Number(lng.toFixed(7)), Number(lat.toFixed(7))]; });
    this.dispatchEvent(new CustomEvent('drawn', { detail: { places, end } }));
  }

  /** @override */
  render() {
    const names = [...new Set(this.layers.map((layer) => layer.attribution))];
    return html`<div class="map-frame"><div class="map" tabindex="0" role="application" aria-label="Map of the way; arrow keys move it, plus and minus change its scale"></div>
      <span class="middle" aria-hidden="true" ?hidden=${!this.drawing}></span>
      <p class="map-keys"><button type="button" aria-label="Closer" @click=${() => this.map?.zoomIn(1)}>+</button><button type="button" aria-label="Farther" @click=${() => this.map?.zoomOut(1)}>−</button><button type="button" @click=${() => this.fit()}>All</button></p></div>
      <p class="small soft">${names.length ? `Map data: ${names.join('; ')}. ` : 'No layer of your own map is kept yet; the way stands alone. '}A map is no verified water supply.</p>`;
  }
}
customElements.define('hw-ground-map', GroundMap);
