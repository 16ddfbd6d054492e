/** Strokes a drawing whose geometry was worked out elsewhere: lines, areas, dots and words by role. */
import { svg, html, nothing } from 'lit';
import { set } from './text.js';
