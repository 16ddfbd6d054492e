/** Walk it: positions recorded by this phone, or a recorded file taken in; marks by one tap. */
import { html, nothing } from 'lit';
import { Part } from '../shared/page.js';
import { done, failed } from '../shared/notes.js';
import { pick } from '../shared/file.js';
import { counted } from '../shared/text.js';
import { Recorder } from './recorder.js';
import { recorded } from './track.js';

const MARKS = ['coupling', 'corner', 'stair', 'door', 'obstacle'];
const FEET = 3.28084;

class WalkIt extends Part {
  /** @override */
  static properties = { us: { type: Boolean }, name: { state: true } };

  constructor() {
    super();
    this.us = true;
    this.name = '';
    this.recorder = new Recorder(() => this.requestUpdate());
    /** looks again whether the last position is still fresh */
    this.clock = setInterval(() => { if (this.recorder.running) this.requestUpdate(); }, 1000);
  }

  /** @override */
  disconnectedCallback() {
    super.disconnectedCallback();
    clearInterval(this.clock);
    this.recorder.stop();
  }

  /** Hands a track to the page. @param {string} track @param {string} name @param {boolean} own recorded here */
  hand(track, name, own) {
    this.dispatchEvent(new CustomEvent('track', { detail: { track, name, own } }));
  }

  async take() {
    const file = await pick('.gpx,.geojson,.json').catch(failed);
    if (file) this.hand(file.text, '', false);
  }

  finish() {
    this.recorder.stop();
    this.hand(recorded(this.name, this.recorder.fixes, this.recorder.marks), this.name, true);
  }

  /** Drops the recording; it can be taken back. */
  drop() {
    const { fixes, marks } = this.recorder;
    this.recorder.clear();
    done('The recording is dropped.', () => this.recorder.bring(fixes, marks));
  }

  /** Drops the recording once it is kept. */
  clear() {
    this.recorder.clear();
  }

  /** @override */
  render() {
    const barred = Recorder.barred();
    return html`<p class="soft">Begin where the pump stands, walk as the hose would lie, stop at the tip. Stand still for ten seconds at both ends. Keep this page in sight: a browser gives no positions to a page that is put away.</p>
      ${barred ? html`<p class="caution">${barred} A track from the phone's own recorder can be taken in all the same.</p>` : this.recording()}
      <p class="row"><button @click=${() => this.take()}>Take in a recorded track</button> <span class="soft small">GPX 1.1 or GeoJSON. It stays on this company's own machine.</span></p>`;
  }

  recording() {
    const recorder = this.recorder;
    const { running, fixes, marks, last } = recorder;
    return html`<div class="recording">
      ${recorder.trouble ? html`<p class="wrong" role="alert">${recorder.trouble}</p>` : nothing}
      <p class="row big">${running ? html`<button class="go" @click=${() => recorder.stop()}>Pause</button>` : html`<button class="go" @click=${() => recorder.start()}>${fixes.length ? 'Go on recording' : 'Record the walk'}</button>`}
        ${fixes.length > 1 ? html`<button @click=${() => this.finish()}>Stop and look</button>` : nothing}</p>
      ${fixes.length ? html`<p role="status">${counted(fixes.length, 'position')}, ${counted(marks.length, 'mark')}. ${running ? recorder.fresh ? html`The receiver is good to <b>${this.radius(last.accuracy)}</b> at the moment${last.accuracy > 15 ? '; that is poor: stand clear of walls' : ''}.` : 'No position at the moment, so nothing can be marked: stand in the open and wait.' : 'Kept in this browser until it is saved or dropped.'}</p>
        <div class="field"><label>Name of the walk<input .value=${this.name} maxlength="120" placeholder="Garden Court, rear stair" @input=${(/** @type {Event} */ event) => { this.name = /** @type {HTMLInputElement} */ (event.target).value; }}></label></div>
        <p class="marks">${MARKS.map((mark) => html`<button ?disabled=${!recorder.fresh} @click=${() => recorder.mark(mark, '')}>${mark}</button>`)}</p>
        ${marks.length ? html`<p class="small">Marked: ${marks.map((mark) => mark.kind).join(', ')}. <button class="link" @click=${() => recorder.unmark()}>Take the last mark back</button></p>` : nothing}
        ${running ? nothing : html`<p><button class="link" @click=${() => this.drop()}>Drop this recording</button></p>`}` : running ? html`<p role="status">Waiting for the first position.<span class="busy"></span></p>` : nothing}</div>`;
  }

  /** @param {number} metres */
  radius(metres) {
    return this.us ? `${Math.round(metres * FEET)} ft` : `${Math.round(metres)} m`;
  }
}
customElements.define('hw-walk', WalkIt);
