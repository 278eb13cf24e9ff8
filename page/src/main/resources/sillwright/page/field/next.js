// Where to probe next. A server asks the core, which knows the decay map; with no server, a simple rule of the trade. This
// is the only place that decides, so that the core itself can take over on the phone.

import {acrossMm, faces, probesOn} from './fold.js';
import {ends} from './face.js';

const SOFT_MM = 3.175, FIRST_MM = 50, STEP_MM = 150;

/**
 * The simple rule, common practice, no source: first each face an inch or two from the end that water reaches; then, where
 * a reading went in, on along the grain both ways until sound wood answers; then the next face; then across from the deepest.
 *
 * @returns {face, alongMm, acrossMm, why} or null where it knows of nothing more
 */
export function byRule(survey, member, face) {
  const order = [face, ...faces(member).filter(other => other !== face && other !== 'back')];
  for (const one of order) {
    const soft = edge(survey, member, one);
    if (soft) return soft;
  }
  for (const one of order) if (probesOn(survey, member.id, one).length === 0) return foot(member, one);
  return null;
}

function foot(member, face) {
  const bare = member.farEnd !== 'covered' && member.startEnd === 'covered', at = Math.min(FIRST_MM, member.lengthMm / 2);
  const end = ends(member)[bare ? 1 : 0];
  return {face, alongMm: bare ? member.lengthMm - at : at, acrossMm: acrossMm(member, face) / 2, why: `nothing is known of the ${face} face yet: begin at the ${end}`};
}

/** The nearest place along the grain, beyond soft wood, that nobody has probed. */
function edge(survey, member, face) {
  const probes = probesOn(survey, member.id, face).sort((a, b) => a.alongMm - b.alongMm);
  for (let i = 0; i < probes.length; i++) {
    if (probes[i].depthMm < SOFT_MM) continue;
    for (const way of [1, -1]) {
      const next = probes[i + way], step = Math.min(STEP_MM, member.lengthMm / 4);
      if (next && next.depthMm >= SOFT_MM) continue;
      const gap = next ? Math.abs(next.alongMm - probes[i].alongMm) : Infinity;
      if (gap <= 60) continue;
      const along = probes[i].alongMm + way * (next ? gap / 2 : step);
      if (along < 0 || along > member.lengthMm) continue;
      return {face, alongMm: along, acrossMm: probes[i].acrossMm,
        why: next ? 'between soft and sound: where does it end?' : `it was soft here: go on towards the ${ends(member)[way > 0 ? 1 : 0]} until it is sound`};
    }
  }
  return null;
}

/**
 * What the server says, or nothing where there is none in reach or it has nothing to say.
 *
 * @returns {face, spot, hint}
 */
export async function byServer(building, member) {
  let next;
  try {
    const answer = await fetch(`/api/buildings/${encodeURIComponent(building)}/next?member=${encodeURIComponent(member.id)}`, {cache: 'no-store', signal: AbortSignal.timeout(8_000)});
    if (!answer.ok) return null;
    next = (await answer.json()).next;
  } catch {
    // No server in reach: the rule's answer stands.
    return null;
  }
  if (!next) return null;
  const spot = {alongMm: next.alongMm, acrossMm: next.acrossMm};
  if (!next.enough) return {face: next.face, spot, hint: `${next.why}; it tells most of ${next.decides === 'volume' ? 'how much wood is soft' : 'where sound wood begins'}`};
  const [unseen] = next.unseen;
  if (unseen) return {face: unseen, spot: {alongMm: spot.alongMm, acrossMm: acrossMm(member, unseen) / 2}, hint: `of the probed faces enough is known; nobody has tried the ${unseen} face, which the softness may have reached`};
  return {face: next.face, spot, hint: 'enough is known here: more readings would not change what is done. Take the next member'};
}
