/** Records where the phone is, and keeps every fix in the browser, so that a closed page or a dead signal loses none. */

/** @typedef {import('./track.js').Fix} Fix */
/** @typedef {import('./track.js').Mark} Mark */

const ROOT = 'hosewright.walk';
/** Fixes in one entry of the browser's store: the whole is never written anew for one more. */
const CHUNK = 50;
/** A position older than this says where the phone was, not where it is [ms]. */
const FRESH_ms = 10_000;

export class Recorder {
  /** @param {() => void} changed called after every fix, mark and change of state */
  constructor(changed) {
    this.changed = changed;
    /** @type {Fix[]} */
    this.fixes = [];
    /** @type {Mark[]} */
    this.marks = [];
    /** @type {number | null} */
    this.watching = null;
    this.trouble = '';
    /** when the last position came in, by this page's own clock; 0 before the first since it was started */
    this.heard = 0;
    /** @type {any} keeps the screen on while recording, where the browser can */
    this.awake = null;
    document.addEventListener('visibilitychange', () => { if (this.running && document.visibilityState === 'visible') this.keepAwake(); });
    this.take();
  }

  /** A browser lets the screen sleep again once the page was out of sight: asked anew whenever it comes back. */
  keepAwake() {
    /** @type {any} */ (navigator).wakeLock?.request('screen').then((/** @type {any} */ lock) => { this.awake = lock; }, () => undefined);
  }

  get running() {
    return this.watching !== null;
  }

  get last() {
    return this.fixes[this.fixes.length - 1];
  }

  /** True where the last position says where the phone is now: only then may something be marked. */
  get fresh() {
    return this.running && this.heard > 0 && performance.now() - this.heard < FRESH_ms;
  }

  /** Why positions cannot be had here, before anybody is asked; empty where they can. */
  static barred() {
    if (!('geolocation' in navigator)) return 'This browser gives no positions.';
    if (!window.isSecureContext) {
      return 'A browser gives positions only to a secure page. On the machine that runs Hosewright this page is one; over the station\'s network it must be served with TLS.';
    }
    return '';
  }

  start() {
    this.trouble = '';
    this.heard = 0;
    this.keepAwake();
    this.watching = navigator.geolocation.watchPosition(
      (position) => this.add(position),
      (error) => this.fail(error),
      { enableHighAccuracy: true, maximumAge: 0, timeout: 30_000 },
    );
    this.changed();
  }

  stop() {
    if (this.watching !== null) navigator.geolocation.clearWatch(this.watching);
    this.watching = null;
    this.awake?.release();
    this.awake = null;
    this.changed();
  }

  /** @param {GeolocationPosition} position */
  add({ coords, timestamp }) {
    const at = new Date(timestamp).toISOString();
    if (this.last && this.last.at >= at) return;
    this.trouble = '';
    this.heard = performance.now();
    this.fixes.push({ at, latitude: coords.latitude, longitude: coords.longitude, accuracy: coords.accuracy, height: coords.altitude });
    this.keep();
    this.changed();
  }

  /** @param {GeolocationPositionError} error */
  fail(error) {
    if (error.code === error.PERMISSION_DENIED) {
      this.trouble = 'Positions are refused for this page. Allow them in the browser\'s settings for this site, or record with the phone\'s own recorder and take the file in below.';
      this.stop();
    } else {
      this.trouble = 'No position at the moment; what is recorded stays. Step out from under the roof and wait.';
      this.changed();
    }
  }

  /** Marks something at the present position. @param {string} kind @param {string} note */
  mark(kind, note) {
    const { latitude, longitude, at } = this.last;
    this.marks.push({ kind, at, latitude, longitude, note });
    this.write('marks', this.marks);
    this.changed();
  }

  unmark() {
    this.marks.pop();
    this.write('marks', this.marks);
    this.changed();
  }

  /** Puts a piece into the browser's store, or says that it could not. @param {string | number} key @param {unknown} piece */
  write(key, piece) {
    try {
      localStorage.setItem(`${ROOT}.${key}`, JSON.stringify(piece));
    } catch {
      this.trouble = 'This browser keeps no more: what is recorded from here on is lost if the page is closed. Stop and keep the walk now.';
    }
  }

  keep() {
    const chunk = Math.floor((this.fixes.length - 1) / CHUNK);
    this.write(chunk, this.fixes.slice(chunk * CHUNK));
  }

  /** Takes up what an earlier visit left. */
  take() {
    try {
      for (let chunk = 0; ; chunk++) {
        const text = localStorage.getItem(`${ROOT}.${chunk}`);
        if (!text) break;
        this.fixes.push(...JSON.parse(text));
      }
      this.marks = JSON.parse(localStorage.getItem(`${ROOT}.marks`) ?? '[]');
    } catch {
      this.trouble = 'What an earlier visit left in this browser can only be read in part.';
    }
  }

  /** Drops what was recorded, once it is kept at the station or no longer wanted. */
  clear() {
    this.stop();
    for (let chunk = 0; localStorage.getItem(`${ROOT}.${chunk}`) !== null; chunk++) localStorage.removeItem(`${ROOT}.${chunk}`);
    localStorage.removeItem(`${ROOT}.marks`);
    this.fixes = [];
    this.marks = [];
    this.changed();
  }

  /** Brings a dropped recording back. @param {Fix[]} fixes @param {Mark[]} marks */
  bring(fixes, marks) {
    this.fixes = fixes;
    this.marks = marks;
    for (let chunk = 0; chunk * CHUNK < fixes.length; chunk++) this.write(chunk, fixes.slice(chunk * CHUNK, (chunk + 1) * CHUNK));
    this.write('marks', marks);
    this.changed();
  }
}
