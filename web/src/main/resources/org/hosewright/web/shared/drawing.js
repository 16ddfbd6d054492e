/** Strokes a drawing whose geometry was worked out elsewhere: lines, areas, dots and words, each by its role. */
import { svg, html } from 'lit';
import { set } from './text.js';

/**
 * @typedef {{ kind: 'stroke' | 'area', role: string, points: number[][] }} Line
 * @typedef {{ kind: 'text', role: string, x: number, y: number, size: number, anchor: string, text: string }} Word
 * @typedef {{ kind: 'dot', role: string, x: number, y: number, radius: number, shape: string }} Dot
 * @typedef {{ left: number, right: number, top: number, bottom: number }} Plot
 * @typedef {{ width: number, height: number, plot: Plot, marks: (Line | Word | Dot)[] }} Drawing
 */

let hatches = 0;

/**
 * @param {Drawing} drawing
 * @param {string} says what it shows, for those who do not see it
 * @param {unknown} [above] further strokes on top
 */
export function stroke(drawing, says, above) {
  const hatch = `hatch-${hatches++}`;
  return html`<svg class="drawing" viewBox="0 0 ${drawing.width} ${drawing.height}" role="img" aria-label=${says}>
    <defs><pattern id=${hatch} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <line class="hatch" x1="0" y1="0" x2="0" y2="7"></line></pattern></defs>
    ${drawing.marks.map((mark) => one(mark, hatch))}${above}
  </svg>`;
}

/** @param {Line | Word | Dot} mark @param {string} hatch */
function one(mark, hatch) {
  const role = `mk-${mark.role}`;
  switch (mark.kind) {
    case 'stroke':
      return svg`<path class="mk ${role}" d="M${mark.points.map((point) => point.join(' ')).join('L')}"></path>`;
    case 'area':
      return mark.role === 'limit'
        ? svg`<path fill="url(#${hatch})" d="M${mark.points.map((point) => point.join(' ')).join('L')}Z"></path>`
        : svg`<path class="fill ${role}" d="M${mark.points.map((point) => point.join(' ')).join('L')}Z"></path>`;
    case 'text':
      return svg`<text class="word ${role}" x=${mark.x} y=${mark.y} font-size=${mark.size} text-anchor=${mark.anchor}>${set(mark.text)}</text>`;
    default:
      return dot(mark, role);
  }
}

/** @param {Dot} mark @param {string} role */
function dot({ x, y, radius, shape }, role) {
  const r = radius;
  if (shape === 'diamond') return svg`<path class="dot full ${role}" d="M${x} ${y - r * 1.4}l${r * 1.4} ${r * 1.4}l${-r * 1.4} ${r * 1.4}l${-r * 1.4} ${-r * 1.4}z"></path>`;
  if (shape === 'square') return svg`<rect class="dot full ${role}" x=${x - r} y=${y - r} width=${2 * r} height=${2 * r}></rect>`;
  return svg`<circle class="dot ${shape === 'disc' ? 'full' : 'open'} ${role}" cx=${x} cy=${y} r=${r}></circle>`;
}
