// One member: where on which face, how deep the probe goes, how wet it is, what is seen on it, and a photo with a pin.

import {h, button, choices} from './dom.js';
import {said, onTape, lengthMm} from './measure.js';
import {faces, acrossMm, throughMm} from './fold.js';
import {faceDrawing, ends, lies, stretchOf} from './face.js';
import {byRule, byServer} from './next.js';
import {depthPanel} from './depth.js';
import {moisturePanel, keepMoisture} from './moisture.js';
import {signRows, feelButtons} from './signs.js';
import {takePhoto, photosOf} from './photo.js';

const MODES = [['probe', 'Probe'], ['moisture', 'Wet'], ['signs', 'Signs'], ['photo', 'Photo']];

const faceNow = app => app.now.face ?? faces(app.member)[0];

/** The probe's reach where nobody said: common practice, no source. */
export const reachOf = app => app.self.reachMm ?? (app.units === 'us' ? 101.6 : 100);

/** The place on the member as an entry writes it. */
export function spotSays(app) {
  const {spot} = app.now, face = faceNow(app), {units} = app, member = app.member;
  // Rounding to the tape must not carry the place over the edge.
  const within = (mm, most) => said(Math.min(mm, Math.floor(most / (units === 'si' ? 1 : 25.4 / 16) + 1e-6) * (units === 'si' ? 1 : 25.4 / 16)), units);
  return {member: member.id, face, along: within(spot.alongMm, member.lengthMm), across: within(spot.acrossMm, acrossMm(member, face))};
}

export function spotWords(app, spot = app.now.spot) {
  if (!spot) return 'tap the face: where?';
  const member = app.member, from = member.run === 'upright' ? 'up' : `from the ${ends(member)[0]}`;
  return `${said(spot.alongMm, app.units)} ${from}, ${said(spot.acrossMm, app.units)} across`;
}

function where(app) {
  const {member, now, units} = app, face = faceNow(app), step = units === 'us' ? 25.4 : 20, fine = units === 'us' ? 6.35 : 5;
  const move = (along, across) => {
    const spot = now.spot ?? {alongMm: Math.min(50, member.lengthMm / 2), acrossMm: acrossMm(member, face) / 2};
    app.go({touched: true, spot: {alongMm: Math.min(member.lengthMm, Math.max(0, onTape(spot.alongMm + along, units))),
      acrossMm: Math.min(acrossMm(member, face), Math.max(0, onTape(spot.acrossMm + across, units)))}});
  };
  const [low, high] = lies(member) ? ['←', '→'] : ['↓', '↑'], [near, far] = lies(member) ? ['↓', '↑'] : ['←', '→'], small = said(step, units), nice = said(fine, units);
  const drawing = faceDrawing(app.survey, member, face, {units, stretch: now.stretch}, now.spot, spot => app.go({touched: true,
    spot: {alongMm: coarse(spot.alongMm, units, member.lengthMm), acrossMm: coarse(spot.acrossMm, units, acrossMm(member, face))}}));
  const steps = h('div', {class: 'steps'}, button('along-less', low, () => move(-step, 0), {'aria-label': `along, ${small} back`}), button('along-more', high, () => move(step, 0), {'aria-label': `along, ${small} on`}),
    button('across-less', near, () => move(0, -fine), {'aria-label': `across, ${nice} back`}), button('across-more', far, () => move(0, fine), {'aria-label': `across, ${nice} on`}),
    member.lengthMm > 900 ? button('stretch', shownWords(member, now.stretch), () => app.go({stretch: SHOWN[(SHOWN.indexOf(now.stretch ?? 'whole') + 1) % SHOWN.length]}),
      {'aria-label': `Shown: ${shownWords(member, now.stretch)}; tap for another part`}) : null);
  return [choices('face', 'Face', faces(member).map(one => [one, one]), face, one => app.go({face: one, spot: null, hint: null, touched: true}), {class: 'four'}),
    h('div', {class: lies(member) ? 'where level' : 'where'}, h('div', {class: 'drawn'}, drawing), h('div', {class: 'beside'},
      h('p', {class: 'at', 'aria-live': 'polite'}, spotWords(app)), steps))];
}

const SHOWN = ['whole', 'start', 'far'];

const shownWords = (member, stretch) => stretch === 'start' ? ends(member)[0] : stretch === 'far' ? ends(member)[1] : 'whole';

/** A finger is no finer than half an inch, or 10 mm; the buttons are. */
function coarse(mm, units, most) {
  const grain = units === 'us' ? 12.7 : 10;
  return Math.min(most, Math.round(mm / grain) * grain);
}

const hint = app => app.now.hint ? h('p', {class: 'hint', role: 'status'}, h('b', {}, 'Where next: '), app.now.hint + (/[?.]$/.test(app.now.hint) ? '' : '.')) : null;

async function keepProbe(app) {
  const {now, member, units} = app, reach = reachOf(app), depth = now.ranOut ? reach : now.depthMm, face = faceNow(app);
  const through = throughMm(member, face);
  if (depth > through + 1e-6)
    return app.go({wrong: {field: 'depth', what: `${said(depth, units)} is deeper than the member, which is ${said(through, units)} through here: read it again${now.ranOut ? `, or tap its depth where it came through` : ''}, or mend the member’s size`}});
  const says = {...spotSays(app), depth: said(depth, units), reach: said(reach, units)};
  // As the office writes it: said only where the depth alone would not tell.
  if (now.ranOut !== lengthMm(says.depth) >= lengthMm(says.reach) - 1e-6) says.ranOut = Boolean(now.ranOut);
  const words = now.ranOut ? `Went right in (${said(reach, units)} or more)` : depth < 0.5 ? 'Hard' : `${said(depth, units)} deep`;
  const [made] = await app.record([['probe', says]], {depthMm: null, ranOut: false, typed: null, spot: null, hint: null, wrong: null, touched: false, felt: {...spotSays(app)}},
    `${words}: ${face}, ${spotWords(app)}.`);
  const rule = byRule(app.survey, member, face);
  await app.go(rule ? {face: rule.face, spot: {alongMm: onTape(rule.alongMm, units), acrossMm: onTape(rule.acrossMm, units)}, hint: rule.why}
    : {hint: 'nothing more by the simple rule: take the next member, or tap a place that looks wrong'});
  askServer(app, member, made.id);
}

/** What the core says, once it knows of this reading; never against a finger that has moved on. */
async function askServer(app, member, entry) {
  await app.sync.running;
  if (app.sync.state !== 'sent') return;
  const next = await byServer(app.now.building, member);
  const {now} = app;
  if (!next || now.member !== member.id || now.mode !== 'probe' || now.touched || now.depthMm !== null || now.ranOut || now.last?.ids[0] !== entry) return;
  await app.go({...next, spot: {alongMm: onTape(next.spot.alongMm, app.units), acrossMm: onTape(next.spot.acrossMm, app.units)}, stretch: inStretch(app.member, now.stretch, next.spot.alongMm)});
}

function inStretch(member, stretch, alongMm) {
  const [from, to] = stretchOf(member, stretch);
  return alongMm >= from && alongMm <= to ? stretch : 'whole';
}

function member(app) {
  const {now} = app, mode = now.mode ?? 'probe', one = app.member, ready = now.spot && (now.depthMm !== null || now.ranOut);
  const body = {
    probe: () => [where(app), hint(app), depthPanel(app), feelButtons(app)],
    moisture: () => [where(app), moisturePanel(app)],
    signs: () => [signRows(app, one.id)],
    photo: () => [where(app), takePhoto(app, one), photosOf(app, one)],
  }[mode]();
  const keep = {
    probe: () => button('keep', ready ? 'Keep, and on' : now.spot ? 'How deep?' : 'Where?', () => ready && keepProbe(app), {class: 'first wide', 'aria-disabled': ready ? null : 'true'}),
    moisture: () => keepMoisture(app), signs: () => null, photo: () => null,
  }[mode]();
  return {title: one.title || one.id, body: [body, button('mend', 'Mend this member’s size or wood', () => app.go({screen: 'mend', form: {width: one.width, depth: one.depth, length: one.length, title: one.title, species: one.species}}), {class: 'wide quiet'})],
    foot: [keep, h('nav', {class: 'modes', 'aria-label': 'What to note'}, MODES.map(([value, words]) => button('mode-' + value, words,
      () => app.go({mode: value, wrong: null, typed: null, top: true}), {'aria-pressed': String(value === mode)})))]};
}

function mend(app) {
  const form = app.now.form ?? {}, one = app.member;
  const line = (key, label) => h('p', {class: 'field'}, h('label', {for: key}, label), h('input', {id: key, 'data-key': key, value: form[key] ?? '', autocomplete: 'off', list: key === 'species' ? 'woods' : null,
    oninput: event => app.set({form: {...app.now.form, [key]: event.target.value}})}));
  return {title: `Mend ${one.title || one.id}`, body: [line('title', 'How people point at it'), line('width', 'Width, as seen'), line('depth', 'Depth, away from the eye'), line('length', 'Length along the grain'),
    line('species', 'Wood'), h('datalist', {id: 'woods'}, app.words.species.map(name => h('option', {value: name}))), app.now.wrong ? h('p', {class: 'wrong', role: 'alert'}, app.now.wrong.what) : null],
  foot: [button('keep', 'Keep it', async () => {
    const now = app.now.form;
    for (const key of ['width', 'depth', 'length']) {
      try {
        if (!(lengthMm(now[key]) > 0)) return app.go({wrong: {field: key, what: `${key}: measure it again, it must be more than nothing`}});
      } catch (thrown) {
        return app.go({wrong: {field: key, what: `${key}: ${thrown.message}`}});
      }
    }
    const first = app.survey.entries.find(entry => entry.kind === 'member' && entry.says.id === one.id && !app.survey.struck.has(entry.id));
    const {widthMm, depthMm, lengthMm: _, leftMm, aboveMm, slantDeg, ...says} = one;
    await app.record([['amend', {entry: first.id, kind: 'member', says: {...says, title: now.title.trim(), width: now.width.trim(), depth: now.depth.trim(), length: now.length.trim(),
      species: now.species.trim() || one.species}}]], {screen: 'member', trail: app.now.trail.slice(0, -1), form: {}, wrong: null}, 'Mended.');
  }, {class: 'first wide'})]};
}

export const memberScreens = {member, mend};
