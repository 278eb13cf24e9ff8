// One side as it is seen standing before it, to scale, drawn from its description and its members; and what lies under a finger.

import {s} from './dom.js';
import {pitch, lengthMm} from './measure.js';
import {conditionOf, fillOf, hatches, drop, flag, clear, cross, camera} from './hatch.js';

const WET = 0.20;

/** A point of a member as seen from the front, mm from the side's left end and from grade. */
export function seenAt(member, along, across) {
  if (member.run === 'level') return [member.leftMm + along, member.aboveMm + across];
  if (member.run === 'raking') {
    const slant = member.slantDeg * Math.PI / 180;
    return [member.leftMm + along * Math.cos(slant) - across * Math.sin(slant), member.aboveMm + along * Math.sin(slant) + across * Math.cos(slant)];
  }
  return [member.leftMm + across, member.aboveMm + along];
}

/** Of a member that runs away from the eye only its end is seen. */
export const seenLength = member => member.run === 'outward' ? member.depthMm : member.lengthMm;

const corners = (member, from, to) => [seenAt(member, from, 0), seenAt(member, to, 0), seenAt(member, to, member.widthMm), seenAt(member, from, member.widthMm)];

/** What the drawing must hold, mm: left, right, top. */
export function extent(side, members) {
  let left = 0, right = side.lengthMm, top = side.topMm;
  for (const edge of side.edges) {
    left = Math.min(left, edge.leftMm - edge.overhangMm);
    right = Math.max(right, edge.leftMm + edge.lengthMm + edge.overhangMm);
    top = Math.max(top, edge.heightMm + roofRise(edge));
  }
  for (const member of members)
    for (const [x, y] of corners(member, 0, seenLength(member))) {
      left = Math.min(left, x);
      right = Math.max(right, x);
      top = Math.max(top, y);
    }
  return {left, right, top};
}

const roofRise = edge => edge.kind === 'eave' && edge.pitch && edge.planDepth ? Math.min(1100, pitch(edge.pitch) * lengthMm(edge.planDepth)) : 0;

/**
 * @param pxPerMm how large it is on the screen, so that lines and marks keep their size
 */
export function drawing(survey, side, pxPerMm, chosen, place) {
  const members = [...survey.members.values()].filter(member => member.side === side.id), box = extent(side, members);
  const px = 1 / pxPerMm, pad = 24 * px;
  const g = s('g', {transform: `scale(${pxPerMm})`}, hatches('wall', px));
  const put = (...marks) => g.append(...marks.flat(3));
  const polygon = (points, more) => s('polygon', {points: points.map(([x, y]) => `${x},${-y}`).join(' '), ...more});
  const rect = (x, y, width, height, more) => s('rect', {x, y: -y - height, width, height, ...more});
  for (const edge of side.edges.filter(one => !one.projects)) put(roof(edge, rect));
  put(rect(0, 0, side.lengthMm, side.heightMm, {class: 'wall'}), gables(side, polygon));
  for (const opening of side.openings ?? []) put(openingOf(opening, rect));
  for (const edge of side.edges.filter(one => one.projects)) put(roof(edge, rect));
  members.sort((a, b) => b.widthMm * seenLength(b) - a.widthMm * seenLength(a));
  for (const member of members) {
    const probes = survey.probes.filter(probe => probe.member === member.id);
    put(polygon(corners(member, 0, seenLength(member)), {class: 'member' + (probes.length ? '' : ' unknown') + (member.id === chosen ? ' chosen' : ''), 'data-member': member.id}));
    put(found(member, probes, polygon));
  }
  for (const member of members) for (const probe of survey.probes.filter(one => one.member === member.id && one.face === 'front' && member.run !== 'outward')) {
    const [x, y] = seenAt(member, probe.alongMm, probe.acrossMm);
    put(cross(x, -y, 3 * px));
  }
  put(marks(survey, side, px));
  for (const edge of side.edges) put(gutter(edge, rect));
  put(s('line', {class: 'grade', x1: box.left - pad, y1: 0, x2: box.right + pad, y2: 0}));
  if (place) put(s('circle', {class: 'place', cx: place.leftMm, cy: -place.aboveMm, r: 12 * px}));
  const view = {x: (box.left * pxPerMm) - 24, y: -box.top * pxPerMm - 24, width: (box.right - box.left) * pxPerMm + 48, height: box.top * pxPerMm + 48};
  return {g, view, members};
}

/** Hatched about each reading that went in; nothing is drawn between readings that nobody took. */
function found(member, probes, polygon) {
  const about = Math.min(80, seenLength(member) / 2);
  return probes.map(probe => [probe, conditionOf(probe.ranOut ? Infinity : probe.depthMm, probe.face === 'front' || probe.face === 'back' ? member.depthMm : member.widthMm)])
    .filter(([, condition]) => condition !== 'sound').map(([probe, condition]) => {
      const at = member.run === 'outward' ? seenLength(member) / 2 : probe.alongMm;
      return polygon(corners(member, Math.max(0, at - about), Math.min(seenLength(member), at + about)), {class: 'found', fill: fillOf('wall', condition)});
    });
}

function marks(survey, side, px) {
  const all = [];
  for (const reading of survey.moistures) {
    const member = survey.members.get(reading.member);
    if (member.side !== side.id || reading.reading < WET) continue;
    const [x, y] = member.run === 'outward' ? seenAt(member, member.depthMm / 2, member.widthMm / 2) : seenAt(member, reading.alongMm, Math.min(reading.acrossMm, member.widthMm));
    all.push(drop(x, -y, 6 * px));
  }
  for (const one of survey.sightings) {
    if (one.side !== side.id || one.leftMm === null) continue;
    all.push((one.seen ? flag : clear)(one.leftMm, -(one.aboveMm ?? 0), 7 * px));
  }
  for (const one of survey.photos) {
    const member = one.pin && survey.members.get(one.pin.member);
    if (one.side !== side.id || !member) continue;
    const [x, y] = seenAt(member, member.run === 'outward' ? 0 : one.pin.alongMm, member.widthMm / 2);
    all.push(camera(x + 12 * px, -y, 5 * px));
  }
  return all;
}

function roof(edge, rect) {
  const rise = roofRise(edge), over = edge.kind === 'eave' ? edge.overhangMm : 0;
  if (edge.kind === 'rake') return [];
  const line = s('line', {class: 'eave', x1: edge.leftMm - over, x2: edge.leftMm + edge.lengthMm + over, y1: -edge.heightMm, y2: -edge.heightMm});
  if (rise <= 0) return [line];
  const courses = [];
  for (let y = 150; y < rise; y += 150)
    courses.push(s('line', {class: 'hair', x1: edge.leftMm - over, x2: edge.leftMm + edge.lengthMm + over, y1: -edge.heightMm - y, y2: -edge.heightMm - y}));
  return [rect(edge.leftMm - over, edge.heightMm, edge.lengthMm + 2 * over, rise, {class: 'roof'}), courses, line];
}

/** Two rakes that meet are the halves of one gable; a rake alone is a whole one. */
function gables(side, polygon) {
  const rakes = side.edges.filter(edge => edge.kind === 'rake' && !edge.projects && edge.peakMm !== null).sort((a, b) => a.leftMm - b.leftMm), all = [];
  for (let i = 0; i < rakes.length; i++) {
    const rake = rakes[i], next = rakes[i + 1], end = rake.leftMm + rake.lengthMm;
    const pair = next && Math.abs(next.leftMm - end) < 300;
    all.push(polygon(pair ? [[rake.leftMm, rake.heightMm], [end, Math.max(rake.peakMm, next.peakMm)], [next.leftMm + next.lengthMm, next.heightMm]]
      : [[rake.leftMm, rake.heightMm], [(rake.leftMm + end) / 2, rake.peakMm], [end, rake.heightMm]], {class: 'wall'}));
    if (pair) i++;
  }
  return all;
}

function openingOf(opening, rect) {
  const x = lengthMm(opening.left), y = lengthMm(opening.bottom), width = lengthMm(opening.width), height = lengthMm(opening.height), frame = Math.min(60, width / 8);
  const inner = rect(x + frame, y + frame, width - 2 * frame, height - 2 * frame, {class: 'hair'});
  const bars = opening.kind === 'window' ? [s('line', {class: 'hair', x1: x + frame, x2: x + width - frame, y1: -y - height / 2, y2: -y - height / 2})]
    : [];
  return [rect(x, y, width, height, {class: 'opening'}), inner, bars];
}

function gutter(edge, rect) {
  if (!edge.gutter) return [];
  const over = edge.overhangMm, size = lengthMm(edge.gutter.size), deep = edge.gutter.shape === 'half-round' ? size / 2 : edge.gutter.depth ? lengthMm(edge.gutter.depth) : size * 0.75;
  return [rect(edge.leftMm - over, edge.heightMm - deep, edge.lengthMm + 2 * over, deep, {class: 'gutter'}), (edge.gutter.downspouts ?? []).map(spout => {
    const wide = lengthMm(spout.size);
    return rect(lengthMm(spout.left) - wide / 2, 100, wide, Math.max(1, edge.heightMm - deep - 100), {class: 'gutter'});
  })];
}

/** The members within reach of a finger, nearest first. @param reachMm how far a finger's breadth goes on the wall */
export function under(members, leftMm, aboveMm, reachMm) {
  return members.map(member => {
    const points = corners(member, 0, seenLength(member)), xs = points.map(p => p[0]), ys = points.map(p => p[1]);
    const dx = Math.max(Math.min(...xs) - leftMm, 0, leftMm - Math.max(...xs)), dy = Math.max(Math.min(...ys) - aboveMm, 0, aboveMm - Math.max(...ys));
    const area = (Math.max(...xs) - Math.min(...xs)) * (Math.max(...ys) - Math.min(...ys));
    return {member, distance: Math.hypot(dx, dy), area};
  }).filter(one => one.distance <= reachMm).sort((a, b) => a.distance - b.distance || a.area - b.area).map(one => one.member);
}
