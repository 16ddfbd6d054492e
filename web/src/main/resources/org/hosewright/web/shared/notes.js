/** The messages at the foot of a page: what was done, with its undo; what went wrong, until it is read. */
import { html, render, nothing } from 'lit';

/** @typedef {{ says: string, undo?: () => void, key: number, bad: boolean }} Note */

/** @type {Note[]} */
let notes = [];
let key = 0;
const SECONDS = 12;

const place = document.createElement('div');
place.className = 'notes';
place.setAttribute('role', 'status');
place.setAttribute('aria-live', 'polite');
document.body.append(place);

function draw() {
  render(
    notes.map(
      (note) => html`<div class="note">
        <p>${note.says}</p>
        ${note.undo ? html`<button @click=${() => { take(note); note.undo?.(); }}>Undo</button>` : nothing}
        <button @click=${() => take(note)}>Close</button>
      </div>`,
    ),
    place,
  );
}

/** @param {Note} note */
function take(note) {
  notes = notes.filter((other) => other !== note);
  draw();
}

/**
 * Says what was done.
 * @param {string} says
 * @param {() => void} [undo] takes it back
 */
export function done(says, undo) {
  const note = { says, undo, key: key++, bad: false };
  notes = [...notes.filter((other) => other.bad), note];
  draw();
  setTimeout(() => take(note), SECONDS * 1000);
}

/**
 * Says what went wrong; stays until closed.
 * @param {unknown} error
 */
export function failed(error) {
  const says = error instanceof Error ? error.message : String(error);
  notes = [...notes.filter((other) => other.says !== says), { says, key: key++, bad: true }];
  draw();
}
