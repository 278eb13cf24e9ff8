// One face of one member laid before the eye: where the probe goes, and what was found on it already.

import {s, point} from './dom.js';
import {said} from './measure.js';
import {acrossMm, throughMm, probesOn} from './fold.js';
import {conditionOf, fillOf, hatches, cross, drop, camera} from './hatch.js';

const END_MM = 610;

/** How a member's ends are called, by the way it runs. */
export const ends = member => ({upright: ['foot', 'head'], level: ['left end', 'right end'], raking: ['lower end', 'upper end'], outward: ['near end', 'far end']})[member.run];

export const lies = member => member.run !== 'upright';

/** The part of the length that is shown. */
export function stretchOf(member, which) {
  if (which === 'start') return [0, Math.min(END_MM, member.lengthMm)];
  if (which === 'far') return [Math.max(0, member.lengthMm - END_MM), member.lengthMm];
  return [0, member.lengthMm];
}

/**
 * @param look      which stretch, what units
 * @param spot      {alongMm, acrossMm} chosen, or null
 * @param choose    called with the spot under a finger
 */
export function faceDrawing(survey, member, face, look, spot, choose) {
  const level = lies(member), across = acrossMm(member, face), [from, to] = stretchOf(member, look.stretch);
  const long = level ? 340 : 210, wide = Math.max(64, Math.min(level ? 96 : 150, long * across / (to - from)));
  // Beside a narrow face stands room for what is written at its edge.
  const width = level ? long : wide, height = level ? wide : long, side = level ? 28 : 72;
  const at = (alongMm, acrossMm) => {
    const a = (alongMm - from) / (to - from) * long, c = acrossMm / across * wide;
    return level ? [a, height - c] : [c, height - a];
  };
  const inside = one => one.alongMm >= from - 1 && one.alongMm <= to + 1;
  const svg = s('svg', {class: 'face', viewBox: `-14 -20 ${width + side} ${height + 42}`, width: width + side, height: height + 42, role: 'img', 'data-key': 'face',
    'aria-label': `${face} face of ${member.title}, ${said(member.lengthMm, look.units)} long, ${said(across, look.units)} across. Tap it, or use the buttons beside it, to say where.`});
  svg.append(hatches('face'), s('rect', {class: 'face-wood', x: 0, y: 0, width, height}));
  const [low, high] = ends(member), goesOn = words => '… ' + words;
  if (level) svg.append(s('text', {class: 'end', x: 0, y: height + 17}, from > 1 ? goesOn(low) : low), s('text', {class: 'end', x: width, y: height + 17, 'text-anchor': 'end'}, to < member.lengthMm - 1 ? goesOn(high) : high));
  else svg.append(s('text', {class: 'end', x: width / 2, y: -6, 'text-anchor': 'middle'}, to < member.lengthMm - 1 ? goesOn(high) : high), s('text', {class: 'end', x: width / 2, y: height + 17, 'text-anchor': 'middle'}, from > 1 ? goesOn(low) : low));
  const probes = probesOn(survey, member.id, face).filter(inside);
  for (const probe of probes) {
    const condition = conditionOf(probe.ranOut ? Infinity : probe.depthMm, throughMm(member, face)), [x, y] = at(probe.alongMm, probe.acrossMm);
    if (condition === 'sound') continue;
    const left = Math.max(0, x - 17), top = Math.max(0, y - 17);
    svg.append(s('rect', {class: 'found', fill: fillOf('face', condition), x: left, y: top, width: Math.min(width, x + 17) - left, height: Math.min(height, y + 17) - top}));
  }
  const written = [];
  // A depth stands beside its cross where nothing is covered by it; the deepest have the room first, and the crosses are all there.
  const write = (x, y, words, off) => {
    const wide = 9 * words.length;
    for (const [left, line] of [[x + off, y - 4], [x - off - wide, y - 4], [x + off, y + 14], [x - off - wide, y + 14]]) {
      const box = {left, right: left + wide, top: line - 12, bottom: line + 2};
      if (box.left < -13 || box.right > width + side - 14 || written.some(other => box.left < other.right && box.right > other.left && box.top < other.bottom && box.bottom > other.top)) continue;
      written.push(box);
      svg.append(s('text', {class: 'depth', x: left, y: line}, words));
      return;
    }
  };
  for (const probe of probes) {
    const [x, y] = at(probe.alongMm, probe.acrossMm);
    svg.append(cross(x, y, 5));
    written.push({left: x - 4, right: x + 4, top: y - 4, bottom: y + 4});
  }
  // A bare cross is sound.
  for (const probe of probes.filter(one => one.depthMm > 0 || one.ranOut).sort((a, b) => b.depthMm - a.depthMm)) {
    const [x, y] = at(probe.alongMm, probe.acrossMm);
    write(x, y, said(probe.depthMm, look.units).replace(/ (in|mm)$/, '') + (probe.ranOut ? '+' : ''), 5);
  }
  for (const reading of survey.moistures.filter(one => one.member === member.id && one.face === face && inside(one))) {
    const [x, y] = at(reading.alongMm, reading.acrossMm);
    svg.append(drop(x, y, 7));
    written.push({left: x - 6, right: x + 6, top: y - 7, bottom: y + 7});
    write(x, y, Math.round(reading.reading * 100) + '%', 8);
  }
  for (const photo of survey.photos.filter(one => one.pin?.member === member.id && one.pin.face === face && inside(one.pin))) {
    const [x, y] = at(photo.pin.alongMm, photo.pin.acrossMm);
    svg.append(camera(x, y, 7));
  }
  if (spot && inside(spot)) {
    const [x, y] = at(spot.alongMm, spot.acrossMm);
    svg.append(s('circle', {class: 'spot', cx: x, cy: y, r: 13}), cross(x, y, 13));
  }
  svg.addEventListener('click', event => {
    const {x, y} = point(svg, event), a = level ? x : height - y, c = level ? height - y : x;
    const clamp = (value, most) => Math.min(most, Math.max(0, value));
    choose({alongMm: clamp(from + a / long * (to - from), member.lengthMm), acrossMm: clamp(c / wide * across, across)});
  });
  return svg;
}
