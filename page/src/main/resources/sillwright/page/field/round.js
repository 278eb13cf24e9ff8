// The round of spring or autumn, as the desk last worked it out, walked without signal: each thing that is asked has the
// buttons that answer it, and each answer is an entry, which others see and which can be taken back like any other.

import {h, button, choices} from './dom.js';
import * as keep from './keep.js';
import {lengthMm} from './measure.js';

/** An answer older than this was last season's. */
const SEASON_MS = 120 * 86_400_000;
/** As the desk takes it: on one face, within 6 in. */
const SAME_PLACE_MM = 152.4;

const recent = one => Date.now() - one.atMs < SEASON_MS;

const tickWords = (round, ask) => `${round.title}, as it should be: ${ask.words}`;

/** What was answered already this season: words, or nothing. */
function answered(app, round, check, ask) {
  const {survey} = app, near = one => recent(one) && one.member === ask.spot.member && one.face === ask.spot.face && Math.abs(one.alongMm - lengthMm(ask.spot.along)) <= SAME_PLACE_MM;
  if (ask.spot && ask.kind === 'meter') return survey.moistures.filter(near).map(one => `${Math.round(one.reading * 100)} %`).at(-1) ?? '';
  if (ask.spot && ask.kind === 'probe') return survey.probes.filter(near).map(one => one.depthMm < 0.5 ? 'hard' : 'soft').at(-1) ?? '';
  if (ask.sign) {
    const noted = survey.sightings.filter(one => recent(one) && one.sign === ask.sign && one.side === check.side && (!check.member || one.member === check.member)).at(-1);
    return noted ? noted.seen ? 'seen' : 'not there' : '';
  }
  return survey.works.some(one => recent(one) && one.words === tickWords(round, ask)) ? 'done' : '';
}

/** The place alone, where one stop asks several things: `foot of porch post 3: meter, 6 in up; ...` */
const placeOf = check => /^(.+?): /.exec(check.words)?.[1] ?? '';

function answers(app, round, check, ask, key) {
  const had = answered(app, round, check, ask), name = ask.words, member = check.member && app.survey.members.has(check.member) ? check.member : null;
  const open = mode => app.go({screen: 'member', side: app.survey.members.get(ask.spot.member).side, member: ask.spot.member, mode, face: ask.spot.face, stretch: 'whole',
    spot: {alongMm: lengthMm(ask.spot.along), acrossMm: lengthMm(ask.spot.across)}, depthMm: null, ranOut: false, percent: '', hint: null, place: null});
  if (ask.spot && app.survey.members.has(ask.spot.member) && ['meter', 'probe'].includes(ask.kind))
    return button('do-' + key, had ? `✓ ${had}` : ask.kind === 'meter' ? 'Meter it' : 'Probe it', () => open(ask.kind === 'meter' ? 'moisture' : 'probe'), {'aria-pressed': String(Boolean(had)), 'aria-label': `${had || 'to do'}: ${name}`});
  if (ask.sign) {
    const note = seen => app.record([['sighting', {sign: ask.sign, seen, side: check.side, ...(member ? {member} : {})}]], {}, `${seen ? 'Seen' : 'Not there'}: ${name}.`);
    return [button('clear-' + key, '○ Not there', () => note(false), {'aria-pressed': String(had === 'not there'), 'aria-label': `Not there: ${name}`}),
      button('seen-' + key, '⚑ Seen', () => note(true), {'aria-pressed': String(had === 'seen'), 'aria-label': `Seen: ${name}`})];
  }
  const side = check.side || [...app.survey.sides.keys()][0];
  const tick = () => app.record([['work-done', {done: 'other', on: new Date().toISOString().slice(0, 10), side, ...(member ? {member} : {}), words: tickWords(round, ask)}]], {}, `As it should be: ${name}.`);
  return [button('ok-' + key, had ? '✓ As it should be' : 'As it should be', () => had || tick(), {'aria-pressed': String(Boolean(had)), 'aria-label': `As it should be: ${name}`}),
    button('look-' + key, 'Note it', () => member ? app.go({screen: 'member', side, member, mode: 'signs', face: null, spot: null, depthMm: null, hint: null, place: null})
      : app.go({screen: 'sideSigns', side, place: null}), {'aria-label': `Note what is wrong: ${name}`})];
}

function round(app) {
  const {now} = app, id = now.building;
  if (app.roundsOf !== id) {
    app.roundsOf = id;
    keep.get('rounds ' + id).then(rounds => { app.rounds = rounds ?? []; app.draw(); });
  }
  const rounds = app.rounds ?? [], held = rounds.find(one => one.id === now.round) ?? rounds[0];
  if (!held) return {title: 'Round', body: [h('p', {}, app.rounds ? 'The desk has not worked out a round yet, or no server has been in reach. It is fetched by itself with the next sending.' : 'Looking…')],
    foot: [button('ask', 'Ask again', () => app.sync.soon(), {class: 'wide'})]};
  const asksOf = check => check.asks?.length ? check.asks : [{kind: 'look', words: check.words, last: check.last, expected: check.expected}];
  const all = held.checks.flatMap(check => asksOf(check).map(ask => answered(app, held, check, ask))), done = all.filter(Boolean).length;
  return {title: held.title, body: [rounds.length > 1 ? choices('round', 'Which round', rounds.map(one => [one.id, one.title.split(',')[0]]), held.id, one => app.go({round: one})) : null,
    h('p', {class: 'small'}, held.why), h('p', {class: 'at', role: 'status'}, `${done} of ${all.length} answered`),
    h('ol', {class: 'checks'}, held.checks.map((check, i) => {
      const asks = asksOf(check), place = app.survey.sides.get(check.side)?.title ?? check.side;
      return h('li', {class: asks.every(ask => answered(app, held, check, ask)) ? 'done' : null}, h('p', {class: 'small'}, [place, asks.length > 1 ? placeOf(check) : ''].filter(Boolean).join(': ')), asks.map((ask, j) => [
        h('p', {}, h('b', {}, asks.length > 1 || !check.words ? ask.words : check.words)), ask.expected || ask.last ? h('p', {class: 'wanted'}, [ask.expected ? `Should be: ${ask.expected}.` : '', ask.last ? `Last time: ${ask.last}.` : ''].join(' ').trim()) : null,
        h('div', {class: 'pair'}, answers(app, held, check, ask, `${i}-${j}`))]));
    }))]};
}

export const roundScreens = {round};
