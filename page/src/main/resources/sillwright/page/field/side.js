// One side: its drawing to tap on, its members by name, a new member in four taps, and what is seen on the side as a whole.

import {h, s, button, choices, point} from './dom.js';
import {drawing, extent, under} from './elevation.js';
import {said, onTape} from './measure.js';
import {KINDS, sizesOf} from './kinds.js';
import {signRows} from './signs.js';
import {takePhoto, photosOf} from './photo.js';

const FINGER_PX = 22;

function elevation(app, tapped) {
  const {survey, side, now} = app, members = [...survey.members.values()].filter(member => member.side === side.id);
  const box = extent(side, members), room = Math.min(innerWidth, 1100) - 16;
  const fitting = Math.min((room - 48) / (box.right - box.left), Math.max(220, innerHeight * 0.44) / box.top), k = fitting * (now.zoom ?? 1);
  const drawn = drawing(survey, side, k, now.member, now.place), {x, y, width, height} = drawn.view;
  const svg = s('svg', {class: 'elevation', viewBox: `${x} ${y} ${width} ${height}`, width, height, role: 'img', 'data-key': 'elevation',
    'aria-label': `${side.title || side.id}, seen standing before it: ${members.length} members. Each is a button in the list below.`,
    onclick: event => {
      const at = point(svg, event);
      tapped({leftMm: at.x / k, aboveMm: -at.y / k, near: under(drawn.members, at.x / k, -at.y / k, FINGER_PX / k)});
    }}, drawn.g);
  const frame = h('div', {class: 'pan', tabindex: 0, role: 'group', 'aria-label': 'The drawing; when it is enlarged, the arrow keys move it'}, svg);
  // What is in the middle stays in the middle.
  const zoom = by => app.go({centre: (now.zoom ?? 1) > 1 ? middle() : now.centre ?? [0.5, 0.75], zoom: Math.min(12, Math.max(1, (now.zoom ?? 1) * by))});
  return [frame, h('div', {class: 'zoom', role: 'group', 'aria-label': 'Size of the drawing'}, button('zoom-out', '−', () => zoom(1 / 1.8), {'aria-label': 'smaller'}),
    button('zoom-in', '+', () => zoom(1.8), {'aria-label': 'larger'}), button('zoom-whole', 'Whole', () => app.go({zoom: 1})))];
}

/** The middle of what is shown, as shares of the whole drawing. */
function middle() {
  const frame = document.querySelector('.pan'), svg = frame.firstElementChild;
  return [(frame.scrollLeft + frame.clientWidth / 2) / svg.clientWidth, (frame.scrollTop + frame.clientHeight / 2) / svg.clientHeight];
}

/** Scrolls the enlarged drawing to what was tapped last. */
const centred = app => () => {
  const frame = document.querySelector('.pan'), svg = frame?.firstElementChild;
  if (!svg || !app.now.centre) return;
  frame.scrollLeft = svg.clientWidth * app.now.centre[0] - frame.clientWidth / 2;
  frame.scrollTop = svg.clientHeight * app.now.centre[1] - frame.clientHeight / 2;
};

export const openMember = (app, member) => app.go({screen: 'member', member: member.id, mode: 'probe', face: null, stretch: 'whole', spot: null, depthMm: null, ranOut: false, hint: null, near: null, place: null});

function side(app) {
  const {survey, now} = app, here = [...survey.members.values()].filter(member => member.side === now.side).sort((a, b) => a.leftMm - b.leftMm || a.aboveMm - b.aboveMm);
  const near = (now.near ?? []).map(id => survey.members.get(id)).filter(Boolean);
  const count = member => survey.probes.filter(probe => probe.member === member.id).length;
  const row = prefix => member => h('li', {}, button(prefix + member.id, [h('b', {}, member.title || member.id), h('small', {}, count(member) ? `${count(member)} probed` : 'not probed')],
    () => openMember(app, member), {class: 'row'}));
  return {title: app.side.title || app.side.id, after: centred(app), body: [
    elevation(app, at => {
      if (at.near.length === 1) return openMember(app, at.near[0]);
      app.go({near: at.near.slice(0, 6).map(member => member.id), place: {leftMm: Math.min(app.side.lengthMm, Math.max(0, at.leftMm)), aboveMm: Math.max(0, at.aboveMm)}, centre: middle()});
    }),
    near.length ? h('section', {class: 'near', 'aria-label': 'Under your finger'}, h('h2', {}, 'Which one?'), h('ul', {class: 'list'}, near.map(row('near-')))) : null,
    h('h2', {}, 'All members'), here.length ? h('ul', {class: 'list'}, here.map(row('member-'))) : h('p', {}, 'None yet: add the first with + Member.')],
  foot: [h('div', {class: 'pair'}, button('add', '+ Member', () => app.go({screen: 'place', place: null, near: null})),
    button('signs', 'Signs', () => app.go({screen: 'sideSigns', near: null})), button('photo', 'Photo', () => app.go({screen: 'sidePhoto', near: null})))]};
}

function place(app) {
  return {title: 'Where is its foot or left end?', after: centred(app), body: [h('p', {}, 'Tap the drawing where the member begins.'),
    elevation(app, at => app.go({screen: 'kind', place: {leftMm: Math.min(app.side.lengthMm, Math.max(0, onTape(at.leftMm, app.units))), aboveMm: Math.max(0, onTape(at.aboveMm, app.units))}}))],
  foot: [button('middle', 'In the middle, at the ground', () => app.go({screen: 'kind', place: {leftMm: onTape(app.side.lengthMm / 2, app.units), aboveMm: 0}}), {class: 'wide'})]};
}

function kind(app) {
  return {title: 'What is it?', body: [h('div', {class: 'grid'}, Object.keys(KINDS).map(one => button('kind-' + one, one.replaceAll('-', ' '), () => app.go({screen: 'size', kind: one}))))]};
}

function size(app) {
  const {now, units} = app, of = KINDS[now.kind];
  const add = ([widthMm, depthMm]) => {
    const taken = [...app.survey.members.values()].filter(member => member.side === now.side && member.kind === now.kind).length;
    let n = taken + 1, id;
    do id = `${now.side}-${now.kind}-${n++}`; while (app.survey.members.has(id));
    const title = `${now.kind.replaceAll('-', ' ')} ${n - 1}`, species = [...app.survey.members.values()].at(-1)?.species ?? 'pine-eastern-white';
    const says = {id, side: now.side, kind: now.kind, title, role: of.role, species, run: of.run, width: said(widthMm, units), depth: said(depthMm, units), length: said(of.lengthMm, units),
      left: said(now.place.leftMm, units), above: said(now.place.aboveMm, units), startEnd: of.startEnd ?? 'covered', farEnd: of.farEnd ?? 'covered', coat: 'not-known', contact: 'none'};
    return app.record([['member', says]], {screen: 'member', member: id, mode: 'probe', face: null, stretch: 'whole', spot: null, depthMm: null, hint: null,
      trail: ['buildings', 'building', 'side']}, `${title} is kept, ${said(of.lengthMm, units)} long.`);
  };
  return {title: `How thick is the ${now.kind.replaceAll('-', ' ')}?`, body: [h('p', {}, `Seen width, then depth. Its length is taken as ${said(of.lengthMm, units)} until somebody measures it (Mend, on the member).`),
    h('div', {class: 'grid'}, sizesOf(now.kind, units).map(one => button(`size-${one[0]}-${one[1]}`, one.map(mm => said(mm, units)).join(' × '), () => add(one))))]};
}

const sideSigns = app => ({title: `Signs: ${app.side.title || app.side.id}`, body: signRows(app, null)});

const sidePhoto = app => ({title: 'A photo of this side', body: [takePhoto(app, null), photosOf(app, null)]});

export const sideScreens = {side, place, kind, size, sideSigns, sidePhoto};
