/** Writes a lay as YAML of the open format, each note with the entry that it stands at. */
import { END, hasNotes, noteAt } from './notes.js';

/** Text that stands plain in YAML, within braces too. */
const PLAIN = /^[A-Za-z0-9.-][A-Za-z0-9 ./%@+-]*$/;

/** @param {any} value */
function scalar(value) {
  const text = String(value);
  return PLAIN.test(text) && !text.endsWith(' ') ? text : JSON.stringify(text);
}

/** @param {any} value */
function isMap(value) {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** True where a map fits on one line: nothing below it branches, and no note stands in it. @param {any} map */
function isFlat(map) {
  return Object.values(map).every((value) => typeof value !== 'object' || value === null) && !hasNotes(map);
}

/** @param {Record<string, any>} map */
function flat(map) {
  const entries = Object.entries(map).map(([key, value]) => `${key}: ${scalar(value)}`);
  return entries.length ? `{ ${entries.join(', ')} }` : '{}';
}

/** @param {any} map @param {string} key */
function after(map, key) {
  const note = noteAt(map, key).after;
  return note ? ` ${note}` : '';
}

/** @param {Record<string, any>} map @param {string} indent @returns {string[]} lines */
function entries(map, indent) {
  return Object.entries(map).flatMap(([key, value]) => {
    const head = `${indent}${key}:`;
    const behind = after(map, key);
    const before = noteAt(map, key).before.map((note) => indent + note);
    if (Array.isArray(value)) return [...before, head + behind, ...value.flatMap((item) => listed(item, indent))];
    if (!isMap(value)) return [...before, `${head} ${scalar(value)}${behind}`];
    return isFlat(value) ? [...before, `${head} ${flat(value)}${behind}`] : [...before, head + behind, ...entries(value, `${indent}  `)];
  });
}

/** An item of a list: its notes first, then its entries behind a dash. @param {any} item @param {string} indent @returns {string[]} lines */
function listed(item, indent) {
  const lines = entries(item, `${indent}    `);
  const first = lines.findIndex((line) => !line.trimStart().startsWith('#'));
  const own = [...noteAt(item, '').before, ...(noteAt(item, '').after ? [noteAt(item, '').after] : [])].map((note) => `${indent}  ${note}`);
  const before = lines.slice(0, first).map((line) => `${indent}  ${line.trimStart()}`);
  return [...own, ...before, `${indent}  - ${lines[first].trimStart()}`, ...lines.slice(first + 1)];
}

/** @param {Record<string, any>} lay */
export function write(lay) {
  const end = noteAt(lay, END).before;
  const lines = [...noteAt(lay, '').before, ...entries(lay, ''), ...end];
  return `${lines.join('\n')}\n`;
}
