// The hatch of each condition, so that a drawing is read without colour, and the marks of what was seen.

import {s} from './dom.js';

/** Depth classes, mm: own choice, the same as on the dossier's drawings. */
export function conditionOf(depthMm, throughMm) {
  if (depthMm < 3.175) return 'sound';
  if (depthMm >= 0.8 * throughMm) return 'hollow';
  return depthMm < 12.7 ? 'softened' : 'decayed';
}

const lines = (...all) => all.map(([x1, y1, x2, y2]) => s('line', {x1, y1, x2, y2, class: 'stroke'}));

const tile = (id, size, scale, ...marks) => s('pattern', {id, width: size, height: size, patternUnits: 'userSpaceOnUse', patternTransform: `scale(${scale})`},
  s('rect', {width: size, height: size, class: 'sheet'}), marks);

/** The patterns a drawing fills from; each drawing has its own, so that a large scale does not make large hatches. */
export const hatches = (name, scale = 1) => s('defs', {},
  tile(name + '-softened', 10, scale, lines([0, 10, 10, 0], [-2.5, 2.5, 2.5, -2.5], [7.5, 12.5, 12.5, 7.5])),
  tile(name + '-decayed', 6, scale, lines([0, 6, 6, 0], [0, 0, 6, 6])),
  tile(name + '-hollow', 7, scale, s('circle', {cx: 3.5, cy: 3.5, r: 1.5, class: 'dot'})));

export const fillOf = (name, condition) => condition === 'sound' ? 'none' : `url(#${name}-${condition})`;

/** Water, where a meter showed it; a flag where a sign was seen, an empty ring where it was looked for and is not there. */
export const drop = (x, y, size) => s('path', {class: 'mark', d: `M${x} ${y - size}C${x + size * 0.4} ${y - size * 0.3} ${x + size * 0.7} ${y} ${x + size * 0.7} ${y + size * 0.3}`
  + `A${size * 0.7} ${size * 0.7} 0 0 1 ${x - size * 0.7} ${y + size * 0.3}C${x - size * 0.7} ${y} ${x - size * 0.4} ${y - size * 0.3} ${x} ${y - size}Z`});
export const flag = (x, y, size) => s('path', {class: 'mark', d: `M${x} ${y}V${y - size * 2}L${x + size * 1.3} ${y - size * 1.5}L${x} ${y - size}`});
export const clear = (x, y, size) => s('circle', {class: 'clear', cx: x, cy: y, r: size * 0.6});
export const cross = (x, y, size) => s('path', {class: 'cross', d: `M${x - size} ${y}H${x + size}M${x} ${y - size}V${y + size}`});
export const camera = (x, y, size) => s('path', {class: 'mark', d: `M${x - size} ${y - size * 0.6}H${x + size}V${y + size * 0.7}H${x - size}Z`});

export const legend = () => s('svg', {viewBox: '0 0 360 92', class: 'legend', role: 'img', 'aria-label': 'Hatches: softened, decayed, hollow. Drop: wet wood, 20 % or more. Flag: seen. Ring: looked for, not there. Cross: probed.'},
  hatches('legend'), [['softened', 'soft to 1/2 in', 1, 4], ['decayed', 'decayed deeper', 160, 4], ['hollow', 'hollow', 1, 34]].map(([id, words, x, y]) => [
    s('rect', {x, y, width: 26, height: 18, class: 'edge', fill: fillOf('legend', id)}), s('text', {x: x + 32, y: y + 15}, words)]),
  s('rect', {x: 160, y: 34, width: 26, height: 18, class: 'member unknown'}), s('text', {x: 192, y: 49}, 'not probed'),
  drop(10, 78, 9), s('text', {x: 24, y: 83}, 'wet'), flag(75, 88, 9), s('text', {x: 92, y: 83}, 'seen'), clear(148, 78, 9), s('text', {x: 160, y: 83}, 'not there'),
  cross(247, 78, 6), s('text', {x: 260, y: 83}, 'probed'));
