/** Takes a file from the person, as text. */
import { Trouble } from './api.js';

const MOST_BYTES = 2_000_000;

/**
 * Asks for a file.
 * @param {string} accept endings, such as ".csv"
 * @returns {Promise<{ name: string, text: string } | null>} null where the person took none
 */
export function pick(accept) {
  return new Promise((give, refuse) => {
    const input = document.createElement('input');
    input.type = 'file';
    input.accept = accept;
    input.addEventListener('cancel', () => give(null));
    input.addEventListener('change', () => {
      const file = input.files?.[0];
      if (file) read(file).then(give, refuse);
      else give(null);
    });
    input.click();
  });
}

/** @param {File} file */
export async function read(file) {
  if (file.size > MOST_BYTES) {
    throw new Trouble(`${file.name} is ${Math.round(file.size / 1e6)} MB; the most that is taken is 2 MB.`, 413, {});
  }
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(await file.arrayBuffer());
    return { name: file.name, text };
  } catch {
    throw new Trouble(`${file.name} is not UTF-8 text; save it as plain text in UTF-8.`, 400, {});
  }
}
