/** Photographs made small in the browser: drawn anew, so that what the camera wrote beside them stays behind. */
const LONGER_SIDE = 1600;
const QUALITY = 0.82;

/**
 * Asks for a photograph.
 * @returns {Promise<{ name: string, base64: string } | null>} null where the person took none
 */
export function pickPhoto() {
  return new Promise((give, refuse) => {
    const input = document.createElement('input');
    input.type = 'file';
    input.accept = 'image/*';
    input.addEventListener('cancel', () => give(null));
    input.addEventListener('change', () => {
      const file = input.files?.[0];
      if (file) small(file).then((base64) => give({ name: file.name.replace(/\.[^.]*$/, ''), base64 }), refuse);
      else give(null);
    });
    input.click();
  });
}

/** @param {Blob} file */
async function small(file) {
  const image = await createImageBitmap(file).catch(() => { throw new Error('This is no photograph that the browser can read; take it as JPEG or PNG.'); });
  const shrink = Math.min(1, LONGER_SIDE / Math.max(image.width, image.height));
  const sheet = document.createElement('canvas');
  sheet.width = Math.max(1, Math.round(image.width * shrink));
  sheet.height = Math.max(1, Math.round(image.height * shrink));
  /** @type {CanvasRenderingContext2D} */ (sheet.getContext('2d')).drawImage(image, 0, 0, sheet.width, sheet.height);
  return sheet.toDataURL('image/jpeg', QUALITY).split(',')[1];
}
