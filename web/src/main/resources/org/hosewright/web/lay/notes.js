/** The notes (behind #) of a lay's text: each stays with the entry that it stands at while the lay is changed. */

/** @typedef {{ before: string[], after: string }} Note lines before an entry, and the note behind it on its line */

/** Notes by the map that holds the entry, then by its key; what stands at a whole item of a list has the key ''. @type {WeakMap<object, Map<string, Note>>} */
const held = new WeakMap();

/** The key of notes that stand behind the last entry. */
export const END = '#';

/** @param {any} map @param {string} key @returns {Note} */
export function noteAt(map, key) {
  return held.get(map)?.get(key) ?? { before: [], after: '' };
}

/** True where an entry of a map, or of one within it, has a note. @param {any} map @returns {boolean} */
export function hasNotes(map) {
  return typeof map === 'object' && map !== null && (held.has(map) || Object.values(map).some(hasNotes));
}

/** A copy that bears the same notes. @template T @param {T} value @returns {T} */
export function copied(value) {
  if (typeof value !== 'object' || value === null) return value;
  const copy = /** @type {any} */ (Array.isArray(value) ? value.map(copied) : Object.fromEntries(Object.entries(value).map(([key, one]) => [key, copied(one)])));
  return withNotesOf(copy, value);
}

/** Gives a map the notes of another one. @template T @param {T} map @param {any} from @returns {T} */
export function withNotesOf(map, from) {
  const notes = held.get(from);
  if (notes) held.set(/** @type {any} */ (map), notes);
  return map;
}

/** Where a line's note begins, outside quotes; -1 where it has none. @param {string} line */
function noteIn(line) {
  const bare = line.replace(/"(\\.|[^"\\])*"|'[^']*'/g, (quoted) => '_'.repeat(quoted.length));
  return /(^|\s)#/.test(bare) ? bare.search(/(^|\s)#/) : -1;
}

/** How many braces and brackets a line leaves open. @param {string} line */
function opened(line) {
  const bare = line.replace(/"(\\.|[^"\\])*"|'[^']*'/g, '');
  return (bare.match(/[{[]/g) ?? []).length - (bare.match(/[}\]]/g) ?? []).length;
}

/** Puts the notes of a text to the lay that was read from it, and lists them. @param {string} yaml @param {any} lay @returns {string[]} */
export function take(yaml, lay) {
  /** @type {string[]} */ const all = [];
  /** @type {string[]} */ let before = [];
  /** @type {{ indent: number, at: any, next: number }[]} */ let stack = [{ indent: -1, at: lay, next: 0 }];
  let open = 0;
  const put = (/** @type {any} */ map, /** @type {string} */ key, /** @type {string} */ after) => {
    if (before.length === 0 && !after) return;
    const notes = held.get(map) ?? new Map();
    notes.set(key, { before: [...noteAt(map, key).before, ...before], after: after || noteAt(map, key).after });
    held.set(map, notes);
    before = [];
  };
  for (const line of yaml.split('\n')) {
    const from = noteIn(line);
    const note = from < 0 ? '' : line.slice(from).trim();
    const text = from < 0 ? line : line.slice(0, from);
    if (note) all.push(note);
    if (text.trim() === '' || open > 0) {
      if (note) before.push(note);
      open += opened(text);
      continue;
    }
    open += opened(text);
    let indent = text.search(/\S/);
    stack = stack.filter((one) => one.indent < indent);
    let top = stack[stack.length - 1];
    let rest = text.slice(indent);
    for (let dash = /^-\s+/.exec(rest); dash; dash = /^-\s+/.exec(rest)) {
      const item = { indent, at: top.at?.[top.next++], next: 0 };
      stack.push(item);
      top = item;
      indent += dash[0].length;
      rest = rest.slice(dash[0].length);
    }
    const key = /^([A-Za-z][\w.-]*)\s*:/.exec(rest)?.[1];
    const map = typeof top.at === 'object' && top.at !== null ? top.at : lay;
    put(map, key && key in map ? key : '', note);
    if (key) stack.push({ indent, at: map[key], next: 0 });
  }
  put(lay, END, '');
  return all;
}
