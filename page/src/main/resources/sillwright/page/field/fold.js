// The fold: what stands of all that was written, by the rules of sillwright.walk.FieldBook and Standing. Depends on the
// entries alone, never on the order they arrived in. A test gives both the same histories and compares.

import {lengthMm, share, celsius, degrees, Unreadable} from './measure.js';
import {stampOf} from './clock.js';

const FACES = {
  'upright': ['front', 'left', 'right', 'back'], 'level': ['front', 'top', 'bottom', 'back'], 'raking': ['front', 'top', 'bottom', 'back'],
  'outward': ['top', 'left', 'right', 'bottom'],
};

export const faces = member => FACES[member.run];

const onWidth = (member, face) => member.run === 'outward' ? face === 'top' || face === 'bottom' : face === 'front' || face === 'back';

/** How far a face goes across the grain, mm. */
export const acrossMm = (member, face) => onWidth(member, face) ? member.widthMm : member.depthMm;

/** How much wood lies beneath a face, mm. */
export const throughMm = (member, face) => onWidth(member, face) ? member.depthMm : member.widthMm;

/** JSON with its keys in order: two ways of writing the same thing are the same text. */
export function canonical(value) {
  if (Array.isArray(value)) return '[' + value.map(canonical).join(',') + ']';
  if (value && typeof value === 'object') return '{' + Object.keys(value).sort().map(key => JSON.stringify(key) + ':' + canonical(value[key])).join(',') + '}';
  return JSON.stringify(value);
}

const compare = (a, b) => a < b ? -1 : a > b ? 1 : 0;

/** By the clock, then the id; two that share both by what they say. */
function order(a, b) {
  return a.stamp.wallMs - b.stamp.wallMs || a.stamp.tick - b.stamp.tick || compare(a.entry.id, b.entry.id) || compare(canonical(a.entry), canonical(b.entry));
}

/** In the order of the book, no id twice: of two that share one and differ, the earlier stands. */
function sorted(entries, fault) {
  const first = new Map(), kept = [];
  for (const {entry} of entries.map(one => ({entry: one, stamp: stampOf(one)})).sort(order)) {
    if (!first.has(entry.id)) {
      first.set(entry.id, entry);
      kept.push(entry);
    } else if (canonical(first.get(entry.id)) !== canonical(entry)) fault(entry, 'id', true);
  }
  return kept;
}

/** Which entries stand, and what each was last amended to say; from the last to the first. */
function standing(entries, fault) {
  const place = new Map(entries.map((entry, i) => [entry.id, i])), amendedBy = new Map(), struckBy = new Map();
  const wrongs = [];
  const earlier = (entry, here) => {
    const at = place.get(entry.says.entry);
    if (at !== undefined && at < here) return true;
    wrongs.push([entry, 'entry', true]);
    return false;
  };
  for (let i = entries.length - 1; i >= 0; i--) {
    if (struckBy.has(i)) continue;
    const entry = entries[i];
    if (entry.kind === 'strike') {
      if (earlier(entry, i)) struckBy.set(place.get(entry.says.entry), i);
    } else if (entry.kind === 'amend' && earlier(entry, i)) {
      const at = place.get(entry.says.entry), of = entries[at].kind;
      if (of !== entry.says.kind) wrongs.push([entry, of === 'amend' || of === 'strike' ? 'entry' : 'instead', true]);
      else if (!amendedBy.has(at)) amendedBy.set(at, i);
    }
  }
  const all = [];
  entries.forEach((entry, i) => {
    const amendment = amendedBy.get(i), strike = struckBy.get(i);
    if (strike === undefined) {
      const body = amendment === undefined ? entry : entries[amendment].says;
      all.push({entry, kind: body.kind, says: body.says});
    } else if (amendment !== undefined && strike < amendment) wrongs.push([entries[amendment], 'entry', false]);
  });
  wrongs.sort((a, b) => place.get(a[0].id) - place.get(b[0].id));
  for (const [entry, field, grave] of wrongs) fault(entry, field, grave);
  return {all, struck: new Map([...struckBy].map(([at, by]) => [entries[at].id, entries[by].id]))};
}

class Misplaced extends Error {}

const spot = says => ({member: says.member, face: says.face, alongMm: lengthMm(says.along), acrossMm: lengthMm(says.across)});

/** The measures of a member in mm beside what was written. */
const member = says => ({...says, title: says.title ?? '', widthMm: lengthMm(says.width), depthMm: lengthMm(says.depth), lengthMm: lengthMm(says.length),
  leftMm: lengthMm(says.left), aboveMm: lengthMm(says.above), slantDeg: says.slant ? degrees(says.slant) : 0});

function side(says) {
  const edges = (says.edges ?? []).map(edge => ({...edge, leftMm: lengthMm(edge.left), lengthMm: lengthMm(edge.length), heightMm: lengthMm(edge.height),
    overhangMm: lengthMm(edge.overhang), peakMm: edge.peak ? lengthMm(edge.peak) : null}));
  const heightMm = edges.length ? edges[0].heightMm : 2700;
  return {...says, lengthMm: lengthMm(says.length), edges, heightMm, topMm: Math.max(heightMm, ...edges.map(edge => edge.peakMm ?? edge.heightMm))};
}

function on(place, members) {
  const found = known('member', place.member, members);
  if (!faces(found).includes(place.face)) throw new Misplaced('face');
  if (place.alongMm > found.lengthMm + 1e-6) throw new Misplaced('along');
  if (place.acrossMm > acrossMm(found, place.face) + 1e-6) throw new Misplaced('across');
  return found;
}

function known(field, id, all) {
  if (!all.has(id)) throw new Misplaced(field);
  return all.get(id);
}

/** @param entries of one building, as the exchange file has them, in any order, repeats allowed */
export function fold(entries) {
  const faults = [];
  const fault = (entry, field, grave) => faults.push({entry: entry.id, field, grave});
  const kept = sorted(entries, fault);
  const {all, struck} = standing(kept, fault);
  const survey = {building: null, sides: new Map(), members: new Map(), probes: [], moistures: [], sightings: [], photos: [], works: [], faults, struck, entries: kept};
  for (const one of all) {
    if (one.kind === 'building') {
      if (survey.building) fault(one.entry, '', false);
      survey.building = one.says;
    } else if (one.kind === 'side') {
      if (survey.sides.has(one.says.id)) fault(one.entry, 'id', false);
      survey.sides.set(one.says.id, side(one.says));
    }
  }
  members(survey, all, fault);
  for (const one of all) {
    try {
      read(survey, one);
    } catch (thrown) {
      if (!(thrown instanceof Misplaced || thrown instanceof Unreadable)) throw thrown;
      fault(one.entry, thrown instanceof Misplaced ? thrown.message : '', true);
    }
  }
  coat(survey, all);
  return survey;
}

function members(survey, all, fault) {
  const by = new Map();
  for (const one of all) {
    if (one.kind !== 'member') continue;
    if (!survey.sides.has(one.says.side)) fault(one.entry, 'side', true);
    else {
      if (survey.members.has(one.says.id)) fault(one.entry, 'id', false);
      survey.members.set(one.says.id, member(one.says));
      by.set(one.says.id, one.entry);
    }
  }
  for (const [id, one] of survey.members)
    if (one.leftMm < -1e-6 || one.leftMm > survey.sides.get(one.side).lengthMm + 1e-6) fault(by.get(id), 'left', false);
}

function read(survey, {entry, kind, says}) {
  const noted = what => ({entry: entry.id, atMs: Date.parse(entry.at), device: entry.device, ...what});
  switch (kind) {
    case 'probe': {
      const place = spot(says), depthMm = lengthMm(says.depth), reachMm = lengthMm(says.reach);
      if (depthMm > throughMm(on(place, survey.members), place.face) + 1e-6) throw new Misplaced('depth');
      survey.probes.push(noted({...place, depthMm, reachMm, ranOut: says.ranOut ?? depthMm >= reachMm - 1e-6}));
      break;
    }
    case 'moisture': {
      const place = spot(says);
      on(place, survey.members);
      survey.moistures.push(noted({...place, reading: share(says.reading), woodC: says.wood ? celsius(says.wood) : null}));
      break;
    }
    case 'sighting':
      known('side', says.side, survey.sides);
      if (says.member) known('member', says.member, survey.members);
      survey.sightings.push(noted({sign: says.sign, seen: says.seen ?? true, side: says.side, member: says.member ?? null, words: says.words ?? '',
        leftMm: says.left ? lengthMm(says.left) : null, aboveMm: says.above ? lengthMm(says.above) : null}));
      break;
    case 'photo':
      known('side', says.side, survey.sides);
      if (says.pin) on(spot(says.pin), survey.members);
      survey.photos.push(noted({file: says.file, side: says.side, pin: says.pin ? spot(says.pin) : null, caption: says.caption ?? ''}));
      break;
    case 'decision':
      if (!says.member) known('side', says.side, survey.sides);
      else if (lengthMm(says.along) > known('member', says.member, survey.members).lengthMm + 1e-6) throw new Misplaced('along');
      break;
    case 'work-done':
      survey.works.push(noted(works(survey, entry, says)));
      break;
  }
}

/** Members with the coats that were put on since they were described. */
function coat(survey, all) {
  const described = new Map(all.filter(one => one.kind === 'member').map(one => [one.says.id, Date.parse(one.entry.at)]));
  const sealed = end => end === 'bare' ? 'coated' : end;
  for (const work of survey.works) {
    const one = survey.members.get(work.member);
    if (!work.coat || !one || work.atMs < described.get(one.id)) continue;
    const ends = work.coat.ends ? {startEnd: sealed(one.startEnd ?? 'covered'), farEnd: sealed(one.farEnd ?? 'covered')} : {};
    survey.members.set(one.id, {...one, ...ends, coat: ['stain', 'oil'].includes(work.coat.film) ? 'stain' : 'sound'});
  }
}

function works(survey, entry, says) {
  known('side', says.side, survey.sides);
  const fromMm = says.from ? lengthMm(says.from) : null, toMm = says.to ? lengthMm(says.to) : null;
  if (says.member) {
    const one = known('member', says.member, survey.members);
    if (one.side !== says.side) throw new Misplaced('side');
    if (fromMm !== null && fromMm > one.lengthMm + 1e-6) throw new Misplaced('from');
    if (toMm !== null && toMm > one.lengthMm + 1e-6) throw new Misplaced('to');
  }
  // A day of grace, for zones of time.
  const day = Date.parse(says.on + 'T00:00:00Z') / DAY_MS;
  if (day > Math.floor(Date.parse(entry.at) / DAY_MS) + 1) throw new Misplaced('on');
  return {done: says.done, side: says.side, member: says.member ?? null, fromMm, toMm, coat: says.coat ?? null, dayMs: (day + 1) * DAY_MS - 1, words: says.words ?? ''};
}

const DAY_MS = 86_400_000;
const ENDS_THE_DAMAGE = ['consolidate', 'dutchman', 'build-up', 'butt-splice', 'half-lap', 'scarf-splice', 'replace'];

const mendedSince = (survey, reading) => survey.works.some(work => ENDS_THE_DAMAGE.includes(work.done) && work.member === reading.member
  && reading.alongMm >= (work.fromMm ?? 0) - 1e-6 && reading.alongMm <= (work.toMm ?? Infinity) + 1e-6 && work.dayMs > reading.atMs);

/** The readings that stand on one face: the later of two at the same spot, and none in wood that was taken out or made hard since. */
export function probesOn(survey, memberId, face) {
  let stands = [];
  for (const probe of survey.probes) {
    if (probe.member !== memberId || probe.face !== face || mendedSince(survey, probe)) continue;
    stands = stands.filter(other => Math.abs(other.alongMm - probe.alongMm) >= 1 || Math.abs(other.acrossMm - probe.acrossMm) >= 1);
    stands.push(probe);
  }
  return stands;
}
