/** Changes the kit, and offers to take the change back. */
import { post } from '../shared/api.js';
import { done, failed } from '../shared/notes.js';

/** @typedef {{ version: number, text: string }} Kit */

/** Tells the page that another kit is in force. @param {any} kit */
function announce(kit) {
  document.dispatchEvent(new CustomEvent('hosewright-kit', { detail: kit }));
  return kit;
}

/**
 * @param {Kit} before
 * @param {import('./entry.js').Edit[]} edits
 * @param {string} says
 */
export async function edit(before, edits, says) {
  return made(before, await post('/kit/edits', { edits, basedOn: before.version }, says), says);
}

/**
 * @param {Kit | null} before
 * @param {string} text
 * @param {string} says
 * @param {string} [source] the file's name
 */
export async function replace(before, text, says, source) {
  const kit = await post('/kit', { text, basedOn: before?.version ?? 0, ...(source && { source }) }, says);
  return before ? made(before, kit, says) : announce(kit);
}

/** @param {Kit} before @param {any} kit @param {string} says */
function made(before, kit, says) {
  done(says, () => post('/kit', { text: before.text, basedOn: kit.version }, `taken back: ${says}`).then(announce, failed));
  return announce(kit);
}
