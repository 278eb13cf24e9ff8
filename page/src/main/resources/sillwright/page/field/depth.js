// How deep the probe went: a slider for a thumb, large marks for the usual depths, or a keypad; in the reader's own marks.

import {h, button} from './dom.js';
import {said, step} from './measure.js';
import {reachOf} from './member.js';

const US = [[0, '0'], [1 / 8, '1/8'], [1 / 4, '1/4'], [1 / 2, '1/2'], [1, '1'], [2, '2']].map(([inches, words]) => [inches * 25.4, words]);
const SI = [0, 3, 5, 10, 25, 50].map(mm => [mm, String(mm)]);
const REACHES = {us: [3, 4, 6, 8].map(inches => inches * 25.4), si: [75, 100, 150, 200]};

const words = app => app.now.ranOut ? 'right in: ' + said(reachOf(app), app.units) + ' or more' : app.now.depthMm === null || app.now.depthMm === undefined ? 'how deep?'
  : app.now.depthMm < 0.5 ? '0: hard' : said(app.now.depthMm, app.units);

export function depthPanel(app) {
  const {now, units} = app, reach = reachOf(app), most = Math.floor(reach / step(units) + 1e-6), held = now.ranOut ? most : Math.round((now.depthMm ?? 0) / step(units));
  const choose = depthMm => app.go({depthMm, ranOut: false, typed: null, wrong: null});
  const readout = h('output', {class: 'deep', 'data-key': 'deep', for: 'slider', 'aria-live': 'polite'}, words(app));
  const slider = h('input', {type: 'range', id: 'slider', 'data-key': 'slider', min: 0, max: most, step: 1, value: held, 'aria-label': 'Depth of the probe', 'aria-valuetext': words(app),
    oninput: event => {
      app.set({depthMm: Number(event.target.value) * step(units), ranOut: false, typed: null, wrong: null});
      readout.textContent = words(app);
      event.target.setAttribute('aria-valuetext', words(app));
    },
    onchange: () => app.draw()});
  return h('section', {class: 'panel', 'aria-label': 'How deep'}, h('div', {class: 'readout'}, readout, button('pad', now.pad ? 'Slider' : 'Keypad', () => app.go({pad: !now.pad, typed: null}))),
    now.wrong?.field === 'depth' ? h('p', {class: 'wrong', role: 'alert'}, now.wrong.what) : null,
    now.pad ? keypad(app, choose) : slider,
    now.pad ? null : h('div', {class: 'six', role: 'group', 'aria-label': 'Usual depths'}, (units === 'us' ? US : SI).map(([mm, label]) => button('depth-' + label, label, () => choose(mm),
      {'aria-pressed': String(!now.ranOut && now.depthMm !== null && Math.abs((now.depthMm ?? -1) - mm) < 0.1), 'aria-label': mm === 0 ? 'nothing: hard' : said(mm, units)}))),
    h('div', {class: 'pair'}, button('ran-out', 'It went right in', () => app.go({ranOut: true, depthMm: null, typed: null, wrong: null}), {'aria-pressed': String(Boolean(now.ranOut))}),
      button('reach', 'reach ' + said(reach, units), () => {
        const all = REACHES[units], next = all[(all.findIndex(mm => Math.abs(mm - reach) < 1) + 1) % all.length];
        app.change({reachMm: next});
      }, {'aria-label': `The probe’s reach is ${said(reach, units)}; tap for the next`})));
}

/** Whole inches by digits and the rest by its fraction; or millimetres. What was tapped is kept as it is tapped. */
function keypad(app, choose) {
  const {units} = app, typed = app.now.typed ?? {whole: '', part: 0};
  const take = next => {
    const mm = units === 'us' ? (Number(next.whole || 0) + next.part / 8) * 25.4 : Number(next.whole || 0);
    const reach = reachOf(app);
    if (mm > reach + 1e-6) return app.go({wrong: {field: 'depth', what: `${said(mm, units)} is beyond the probe’s reach of ${said(reach, units)}: tap reach for a longer one`}});
    app.go({typed: next, depthMm: mm, ranOut: false, wrong: null});
  };
  const part = n => units === 'us' ? button('part-' + n, said(n * 25.4 / 8, 'us').replace(' in', ''), () => take({...typed, part: typed.part === n ? 0 : n}), {'aria-pressed': String(typed.part === n)}) : null;
  const digit = d => button('key-' + d, d, () => take({...typed, whole: (typed.whole + d).replace(/^0+(?=\d)/, '').slice(-3)}));
  return h('div', {class: units === 'us' ? 'keys parts' : 'keys', role: 'group', 'aria-label': 'Keypad'}, [...'123'].map(digit), part(1), part(2), [...'456'].map(digit), part(3), part(4),
    [...'789'].map(digit), part(5), part(6), button('key-back', '⌫', () => take({...typed, whole: typed.whole.slice(0, -1)}), {'aria-label': 'take the last digit away'}), digit('0'),
    button('key-clear', 'C', () => app.go({typed: null, depthMm: null}), {'aria-label': 'begin the number again'}), part(7));
}
