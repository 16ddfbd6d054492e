/** Ways as GeoJSON (RFC 7946: longitude before latitude), in the form that a recorded walk is kept in. */

/**
 * @typedef {{ at: string, latitude: number, longitude: number, accuracy: number, height: number | null }} Fix
 * @typedef {{ kind: string, at: string, latitude: number, longitude: number, note: string }} Mark
 */

/**
 * A walk as recorded: every fix with its time and accuracy, every mark as a point.
 * @param {string} name
 * @param {Fix[]} fixes
 * @param {Mark[]} marks
 */
export function recorded(name, fixes, marks) {
  const high = fixes.every((fix) => fix.height !== null);
  const line = {
    type: 'Feature',
    properties: { name, times: fixes.map((fix) => fix.at), accuracies: fixes.map((fix) => Math.max(0.1, fix.accuracy)) },
    geometry: { type: 'LineString', coordinates: fixes.map((fix) => [fix.longitude, fix.latitude, ...(high ? [fix.height] : [])]) },
  };
  const points = marks.map((mark) => ({
    type: 'Feature',
    properties: { mark: mark.kind, note: mark.note, time: mark.at },
    geometry: { type: 'Point', coordinates: [mark.longitude, mark.latitude] },
  }));
  return JSON.stringify({ type: 'FeatureCollection', features: [line, ...points] });
}

/**
 * A way drawn by hand: places alone, taken as drawn.
 * @param {string} name
 * @param {number[][]} places longitude, latitude
 */
export function drawn(name, places) {
  return JSON.stringify({ type: 'FeatureCollection', features: [{ type: 'Feature', properties: { name }, geometry: { type: 'LineString', coordinates: places } }] });
}
