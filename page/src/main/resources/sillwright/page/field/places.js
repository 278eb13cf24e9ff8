// Who walks, which building, which side; and how to begin a building or a side that nobody described yet.

import {h, button, choices} from './dom.js';
import * as keep from './keep.js';
import {lengthMm, said} from './measure.js';
import {legend} from './hatch.js';

const BEARINGS = {north: 0, 'north-east': 45, east: 90, 'south-east': 135, south: 180, 'south-west': 225, west: 270, 'north-west': 315};
const SURFACES = [['paving', 'paving'], ['soil', 'soil'], ['gravel', 'gravel'], ['grass', 'grass'], ['mulch', 'mulch']];

/** A line to write in; what is wrong with it stands beside it. */
function field(app, key, label, more = {}) {
  const wrong = app.now.wrong?.field === key ? app.now.wrong.what : '';
  return h('p', {class: 'field'}, h('label', {for: key}, label),
    h('input', {id: key, 'data-key': key, value: app.now.form?.[key] ?? '', autocomplete: 'off', 'aria-invalid': wrong ? 'true' : null, 'aria-describedby': wrong ? key + '-wrong' : null,
      oninput: event => app.set({form: {...app.now.form, [key]: event.target.value}}), ...more}),
    wrong ? h('span', {class: 'wrong', id: key + '-wrong'}, wrong) : null);
}

const slug = text => text.normalize('NFKD').replace(/\p{M}/gu, '').replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-|-$/g, '').toLowerCase().slice(0, 60);

/** A length that is more than nothing, as it was written; else what is wrong is shown. */
function written(app, key, example) {
  const text = (app.now.form?.[key] ?? '').trim();
  try {
    if (lengthMm(text) > 0) return text;
    app.go({wrong: {field: key, what: `write a length such as ${example}`}});
  } catch (thrown) {
    app.go({wrong: {field: key, what: `${thrown.message}; write it such as ${example}`}});
  }
  return null;
}

function setup(app) {
  return {title: 'Before you begin', body: [
    h('p', {}, 'This page keeps what you find on this phone, with or without signal, and sends it when the office answers.'),
    field(app, 'author', 'Who walks? (goes with each entry; may stay empty)', {autocomplete: 'name', maxlength: 80}),
    h('p', {class: 'label'}, 'Your tape'),
    choices('units', 'Your tape', [['us', 'inches'], ['si', 'millimetres']], app.units, units => app.change({units, reachMm: null})),
    h('p', {class: 'caution'}, 'No climbing with a phone in the hand. Scraping old paint can set lead free: probe through it, do not sand. Keep off wet ladders and away from wires.')],
  foot: [button('begin', 'Begin', async () => {
    await app.change({author: (app.now.form?.author ?? app.self.author).trim()});
    await app.go({screen: 'buildings', trail: []});
  }, {class: 'first wide'})]};
}

function buildings(app) {
  app.known ??= refresh(app);
  const all = new Map((app.shelves ?? []).map(shelf => [shelf.id, {...shelf}]));
  for (const id of app.here ?? []) all.set(id, {...all.get(id), id, here: true});
  const list = [...all.values()];
  return {title: 'Buildings', body: [
    list.length ? h('ul', {class: 'list'}, list.map(one => h('li', {}, button('building-' + one.id, [h('b', {}, one.name || one.id),
      h('small', {}, one.here ? 'on this phone' : `${one.entries} entries at the server`)], () => enter(app, one), {class: 'row'}))))
      : h('p', {}, app.sync.state === 'away' ? 'No building is on this phone, and no server answers. Begin one below.' : 'No building yet. Begin one below.')],
  foot: [h('div', {class: 'pair'}, button('new-building', '+ Building', () => app.go({screen: 'newBuilding', form: {}})), button('setup', 'Who and tape', () => app.go({screen: 'setup'})))]};
}

async function refresh(app) {
  app.here = await keep.buildings();
  app.shelves = await keep.get('shelves') ?? [];
  app.draw();
}

async function enter(app, one) {
  app.known = null;
  if (!one.here) {
    try {
      await app.sync.bring(one.id);
    } catch {
      // Said on the screen: the building lies at a server that does not answer now.
      return app.go({wrong: {field: 'building', what: 'The server does not answer: this building cannot be fetched now.'}});
    }
  }
  await app.open(one.id);
  await app.go({screen: 'building', building: one.id, side: null, member: null, form: {}});
  app.sync.soon();
}

function newBuilding(app) {
  return {title: 'A new building', body: [field(app, 'name', 'Its name, as people say it'), field(app, 'year', 'Year it was built, as near as you know', {inputmode: 'numeric'})],
    foot: [button('keep', 'Keep it', async () => {
      const {name = '', year = ''} = app.now.form ?? {}, id = slug(name), built = Number(year.trim());
      if (!id) return app.go({wrong: {field: 'name', what: 'write a name, such as House on Pond Lane'}});
      if (!(Number.isInteger(built) && built >= 1500 && built <= 2100)) return app.go({wrong: {field: 'year', what: 'write a year, such as 1888'}});
      app.known = null;
      app.entries = (await keep.entriesOf(id)).map(row => row.entry);
      await app.record([['building', {id, name: name.trim(), note: '', yearBuilt: built}]], {building: id, screen: 'building', form: {}, side: null, trail: ['buildings']}, `${name.trim()} is kept.`);
    }, {class: 'first wide'})]};
}

function building(app) {
  const {survey} = app, sides = [...survey.sides.values()];
  const count = side => `${[...survey.members.values()].filter(member => member.side === side.id).length} members, ${survey.probes.filter(probe => survey.members.get(probe.member).side === side.id).length} probed places`;
  return {title: survey.building?.name ?? app.now.building, body: [
    app.now.wrong ? h('p', {class: 'wrong', role: 'alert'}, app.now.wrong.what) : null,
    h('ul', {class: 'list'}, sides.map(side => h('li', {}, button('side-' + side.id, [h('b', {}, side.title || side.id), h('small', {}, count(side))],
      () => app.go({screen: 'side', side: side.id, member: null, zoom: 1, place: null}), {class: 'row'})))),
    sides.length ? legend() : h('p', {}, 'No side is described yet. Begin with the one before you.')],
  foot: [h('div', {class: 'pair'}, button('new-side', '+ Side', () => app.go({screen: 'newSide', form: {}})), button('round', 'Round', () => app.go({screen: 'round'})),
    button('book', 'Book', () => app.go({screen: 'book'})))]};
}

function newSide(app) {
  const form = app.now.form ?? {}, example = app.units === 'us' ? "24' 6\"" : '7.5 m', free = Object.keys(BEARINGS);
  return {title: 'A new side', body: [
    h('p', {class: 'label'}, 'It looks to the'),
    choices('to', 'It looks to the', free.map(to => [to, to]), form.to, to => app.go({form: {...form, to}}), {class: 'four'}),
    app.now.wrong?.field === 'to' ? h('p', {class: 'wrong'}, app.now.wrong.what) : null,
    field(app, 'length', `How long is it? (such as ${example})`), field(app, 'height', `How high is its eave above the ground? (such as ${app.units === 'us' ? "12'" : '3.6 m'})`),
    h('p', {class: 'label'}, 'At its foot lies'), choices('ground', 'At its foot lies', SURFACES, form.ground ?? 'grass', ground => app.go({form: {...form, ground}}), {class: 'three'})],
  foot: [button('keep', 'Keep it', async () => {
    const now = app.now.form ?? {};
    if (!now.to) return app.go({wrong: {field: 'to', what: 'tap the direction it looks to'}});
    const length = written(app, 'length', example), height = length && written(app, 'height', example);
    if (!height) return;
    let id = now.to;
    for (let n = 2; app.survey.sides.has(id); n++) id = `${now.to}-${n}`;
    const zero = app.units === 'us' ? '0 in' : '0 mm', title = now.to[0].toUpperCase() + now.to.slice(1) + ' side';
    await app.record([['side', {id, title, bearing: BEARINGS[now.to] + 'deg', length, edges: [{id: 'main', kind: 'eave', left: zero, length, height, overhang: said(app.units === 'us' ? 304.8 : 300, app.units)}],
      ground: {surface: now.ground ?? 'grass'}, openings: []}]], {screen: 'side', side: id, member: null, zoom: 1, place: null, form: {}, trail: ['buildings', 'building']}, `${title} is kept.`);
  }, {class: 'first wide'})]};
}

export const places = {setup, buildings, newBuilding, building, newSide};
