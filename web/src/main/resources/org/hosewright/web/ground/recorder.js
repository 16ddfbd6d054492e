/** Records where the phone is, and keeps every fix in the browser, so that a closed page or a dead signal loses none. */

/** @typedef {import('./track.js').Fix} Fix */
/** @typedef {import('./track.js').Mark} Mark */

const ROOT = 'hosewright.walk';
/** Fixes in one entry of the browser's store: the whole is never written anew for one more. */
const CHUNK = 50;

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
    this.take();
  }

  get running() {
    return this.watching !== null;
  }

  get last() {
    return this.fixes[this.fixes.length - 1];
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
    this.changed();
  }

  /** @param {GeolocationPosition} position */
  add({ coords, timestamp }) {
    const at = new Date(timestamp).toISOString();
    if (this.last && this.last.at >= at) return;
    this.trouble = '';
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
    localStorage.setItem(`${ROOT}.marks`, JSON.stringify(this.marks));
    this.changed();
  }

  unmark() {
    this.marks.pop();
    localStorage.setItem(`${ROOT}.marks`, JSON.stringify(this.marks));
    this.changed();
  }

  keep() {
    const chunk = Math.floor((this.fixes.length - 1) / CHUNK);
    localStorage.setItem(`${ROOT}.${chunk}`, JSON.stringify(this.fixes.slice(chunk * CHUNK)));
  }

  /** Takes up what an earlier visit left. */
  take() {
    for (let chunk = 0; ; chunk++) {
      const text = localStorage.getItem(`${ROOT}.${chunk}`);
      if (!text) break;
      this.fixes.push(...JSON.parse(text));
    }
    this.marks = JSON.parse(localStorage.getItem(`${ROOT}.marks`) ?? '[]');
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
}
