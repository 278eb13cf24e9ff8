// What is seen, or looked for and not there: the words of the trade, both answers equally near the thumb.

import {h, button} from './dom.js';
import {said} from './measure.js';
import {seenAt} from './elevation.js';

/** What a hand feels where a probe went in. */
const FEELS = ['hollow-sound', 'cubes-across-grain', 'bleached-strings', 'looks-weathered-only'];

const wordsOf = (app, sign) => app.words.signs.find(one => one.id === sign).words;

/** Where a sighting is put: on the member's spot or middle, or where the side was tapped. */
function placeOf(app, memberId, spot) {
  const member = memberId && app.survey.members.get(memberId), {units} = app;
  if (member) {
    const outward = member.run === 'outward', along = outward ? 0 : spot?.alongMm ?? member.lengthMm / 2;
    const [x, y] = seenAt(member, along, member.widthMm / 2);
    return {member: memberId, left: said(Math.max(0, x), units), above: said(Math.max(0, y), units)};
  }
  const {place} = app.now;
  return place ? {left: said(Math.min(app.side.lengthMm, Math.max(0, place.leftMm)), units), above: said(place.aboveMm, units)} : {};
}

const note = (app, sign, seen, memberId, spot) => app.record([['sighting', {sign, seen, side: memberId ? app.survey.members.get(memberId).side : app.now.side, ...placeOf(app, memberId, spot)}]], {},
  `${seen ? 'Seen' : 'Not there'}: ${wordsOf(app, sign)}.`);

/** The list, a group at a time; each row tells what was noted here already. */
export function signRows(app, memberId) {
  const {groups, signs} = app.words, group = app.now.group ?? (memberId ? 'wood' : 'paint');
  const noted = sign => app.survey.sightings.filter(one => one.sign === sign && one.side === app.now.side && one.member === memberId).at(-1);
  return [h('div', {class: 'groups', role: 'group', 'aria-label': 'Where to look'}, groups.map(one => button('group-' + one.id, one.words, () => app.go({group: one.id}), {'aria-pressed': String(one.id === group)}))),
    h('ul', {class: 'signs'}, signs.filter(one => one.group === group).map(one => {
      const had = noted(one.id);
      return h('li', {}, h('p', {}, one.words), h('div', {class: 'pair'},
        button('clear-' + one.id, '○ Not there', () => note(app, one.id, false, memberId), {'aria-pressed': String(had?.seen === false), 'aria-label': `Not there: ${one.words}`}),
        button('seen-' + one.id, '⚑ Seen', () => note(app, one.id, true, memberId), {'aria-pressed': String(had?.seen === true), 'aria-label': `Seen: ${one.words}`})));
    }))];
}

/** After a probe reading: what it felt like, at the same place. */
export function feelButtons(app) {
  const {felt} = app.now;
  if (!felt || felt.member !== app.now.member || app.now.depthMm !== null || app.now.ranOut) return null;
  const spot = app.survey.probes.filter(probe => probe.member === felt.member).at(-1);
  return h('section', {'aria-label': 'What it felt like'}, h('p', {class: 'label'}, 'And it was'), h('div', {class: 'two'}, FEELS.map(sign => button('feel-' + sign, wordsOf(app, sign).replace(/^a /, ''),
    () => note(app, sign, true, felt.member, spot)))));
}
