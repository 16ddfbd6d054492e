/** The line profile: touch a point for the pressure there, drag the right end for a longer or shorter line. */
import { html, svg, nothing } from 'lit';
import { Part, busy } from './page.js';
import { get, Trouble } from './api.js';
import { set } from './text.js';
import { stroke } from './drawing.js';

/**
 * @typedef {{ x: number, y: number, text: string }} Touch
 * @typedef {{ drawing: import('./drawing.js').Drawing, says: string, touch: Touch[], length: string, shorter?: string, longer?: string,
 *   lengths: string[], step: number }} Shown
 */

const NARROW = 560;
const NEAR_END = 32;

class Profile extends Part {
  /** @override */
  static properties = { source: { attribute: false }, version: { attribute: false }, shown: { state: true }, at: { state: true }, pull: { state: true } };

  constructor() {
    super();
    /** @type {string} where the drawing comes from */
    this.source;
    this.version = 0;
    /** @type {Shown | null} */
    this.shown = null;
    /** @type {Touch | null} the point touched */
    this.at = null;
    /** @type {number | null} sections pulled out while dragging */
    this.pull = null;
    this.length = '';
    this.trouble = '';
  }

  /** @override */
  connectedCallback() {
    super.connectedCallback();
    this.watch = new ResizeObserver(() => {
      if (this.narrow !== this.clientWidth < NARROW) this.load();
    });
    this.watch.observe(this);
  }

  /** @override */
  disconnectedCallback() {
    super.disconnectedCallback();
    this.watch?.disconnect();
  }

  /** @override @param {Map<string, unknown>} changed */
  willUpdate(changed) {
    if (changed.has('source')) this.length = '';
    if ((changed.has('source') || changed.has('version')) && this.narrow !== undefined) this.load();
  }

  async load() {
    this.narrow = this.clientWidth < NARROW;
    const asked = new URLSearchParams({ sheet: this.narrow ? 'phone' : 'laptop', ...(this.length && { length: this.length }) });
    try {
      this.shown = await get(`${this.source}&${asked}`);
      this.trouble = '';
    } catch (error) {
      if (error instanceof Trouble && !error.away) this.trouble = error.message;
    }
    this.at = null;
    this.pull = null;
    this.requestUpdate();
  }

  /** @override */
  render() {
    const shown = this.shown;
    if (this.trouble) return html`<p class="soft">${this.trouble}</p>`;
    if (!shown) return busy('Drawing the line');
    return html`<div class="profile" @pointerdown=${this.down} @pointermove=${this.move} @pointerup=${this.up} @pointercancel=${this.up}>
        ${stroke(shown.drawing, shown.says, svg`${this.touched(shown)}${this.end(shown)}`)}</div>
      <div class="lengths" role="group" aria-label="Length shown">
        ${shown.lengths.map((length) => html`<button aria-pressed=${length === shown.length} @click=${() => this.show(length)}>${length}</button>`)}
        <button ?disabled=${!shown.shorter} @click=${() => this.show(shown.shorter)}>one section less</button>
        <button ?disabled=${!shown.longer} @click=${() => this.show(shown.longer)}>one section more</button>
      </div>`;
  }

  /** @param {string | undefined} length */
  show(length) {
    if (!length) return;
    this.length = length;
    this.load();
  }

  /** @param {Shown} shown */
  touched(shown) {
    const at = this.at;
    if (!at || this.pull !== null) return nothing;
    const right = at.x > (shown.drawing.plot.left + shown.drawing.plot.right) / 2;
    return svg`<line class="mk mk-touch" x1=${at.x} x2=${at.x} y1=${shown.drawing.plot.top} y2=${shown.drawing.plot.bottom}></line>
      <circle class="dot full mk-pressure" cx=${at.x} cy=${at.y} r="3.5"></circle>
      <text class="word mk-touched" x=${at.x + (right ? -8 : 8)} y=${at.y - 10} font-size="13" text-anchor=${right ? 'end' : 'start'}>${set(at.text)}</text>`;
  }

  /** @param {Shown} shown */
  end(shown) {
    if (this.pull === null) return nothing;
    const x = shown.drawing.plot.right + this.pull * shown.step;
    return svg`<line class="mk mk-pull" x1=${x} x2=${x} y1=${shown.drawing.plot.top} y2=${shown.drawing.plot.bottom}></line>
      <text class="word mk-touched" x=${x - 6} y=${shown.drawing.plot.top + 12} font-size="13" text-anchor="end">${this.pull > 0 ? '+' : '\u2212'}${Math.abs(this.pull)} sections</text>`;
  }

  /** @param {PointerEvent} event in the drawing's own unit */
  place(event) {
    const box = /** @type {SVGSVGElement} */ (this.querySelector('svg')).getBoundingClientRect();
    return ((event.clientX - box.left) / box.width) * /** @type {Shown} */ (this.shown).drawing.width;
  }

  /** @param {PointerEvent} event */
  down(event) {
    const shown = this.shown;
    if (!shown) return;
    const x = this.place(event);
    if (Math.abs(x - shown.drawing.plot.right) < NEAR_END) {
      this.from = x;
      this.pull = 0;
      /** @type {Element} */ (event.currentTarget).setPointerCapture(event.pointerId);
    } else this.touch(x);
  }

  /** @param {PointerEvent} event */
  move(event) {
    const shown = this.shown;
    if (!shown) return;
    const x = this.place(event);
    if (this.pull === null) {
      if (event.pointerType === 'mouse' || event.buttons) this.touch(x);
      return;
    }
    this.pull = Math.round((x - (this.from ?? x)) / shown.step);
  }

  up() {
    const pulled = this.pull;
    this.pull = null;
    if (pulled && this.shown) this.show(pulledLength(this.shown.length, pulled, this.shown));
  }

  /** @param {number} x */
  touch(x) {
    const near = (/** @type {Touch} */ touch) => Math.abs(touch.x - x);
    this.at = this.shown?.touch.reduce((best, touch) => (near(touch) < near(best) ? touch : best)) ?? null;
  }
}
customElements.define('hw-profile', Profile);

/** @param {string} length @param {number} sections @param {Shown} shown */
function pulledLength(length, sections, shown) {
  const [value, unit] = length.split(' ');
  const section = Math.abs(Number((shown.longer ?? shown.shorter ?? length).split(' ')[0]) - Number(value));
  return `${Math.max(section, Number(value) + sections * section)} ${unit}`;
}
