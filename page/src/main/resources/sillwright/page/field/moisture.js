// What a pin meter showed: the number as it stands on the meter. What the wood and its temperature make of it is worked out at
// the desk, by the species of the member.

import {h, button} from './dom.js';
import {spotSays, spotWords} from './member.js';
import {decimals} from './measure.js';

const tempOf = app => app.self.tempC ?? 20;
const tempWords = app => app.units === 'us' ? Math.round(tempOf(app) * 9 / 5 + 32) + ' F' : Math.round(tempOf(app)) + ' C';
const pinsOf = app => app.self.pins ?? (app.units === 'us' ? '1/4 in' : '6 mm');
const PINS = {us: ['1/4 in', '3/8 in', '1/2 in', '1 in'], si: ['6 mm', '10 mm', '15 mm', '25 mm']};

export function keepMoisture(app) {
  const {now} = app, text = now.percent ?? '', ready = now.spot && text !== '' && Number(text) <= 150;
  const keep = async () => {
    if (!ready) return;
    const says = {...spotSays(app), reading: decimals(Number(text), 1) + '%', wood: tempWords(app), pins: pinsOf(app)};
    await app.record([['moisture', says]], {percent: '', spot: null, touched: false}, `${says.reading} by the meter: ${says.face}, ${spotWords(app)}.`);
  };
  return button('keep', ready ? 'Keep it' : now.spot ? 'What does it show?' : 'Where?', keep, {class: 'first wide', 'aria-disabled': ready ? null : 'true'});
}

export function moisturePanel(app) {
  const text = app.now.percent ?? '';
  const type = next => app.go({percent: /^\d{0,3}(\.\d?)?$/.test(next) ? next.replace(/^0+(?=\d)/, '') : text});
  const warmer = by => app.change({tempC: Math.min(60, Math.max(-20, Math.round((tempOf(app) + by) * 9) / 9))});
  return h('section', {class: 'panel', 'aria-label': 'What the meter showed'},
    h('output', {class: 'deep', 'aria-live': 'polite'}, text === '' ? 'what does it show?' : text + ' %'),
    Number(text) > 150 ? h('p', {class: 'wrong', role: 'alert'}, 'No meter shows more than 150 %: take a digit away.') : null,
    h('div', {class: 'keys', role: 'group', 'aria-label': 'Keypad'}, [...'123456789'].map(d => button('key-' + d, d, () => type(text + d))), button('key-dot', '.', () => type(text + '.'), {'aria-label': 'point'}),
      button('key-0', '0', () => type(text + '0')), button('key-back', '⌫', () => type(text.slice(0, -1)), {'aria-label': 'take the last digit away'})),
    h('div', {class: 'three', role: 'group', 'aria-label': 'Temperature of the wood'}, button('colder', '− colder', () => warmer(app.units === 'us' ? -5 / 1.8 : -2)),
      h('p', {class: 'at'}, `wood at ${tempWords(app)}`), button('warmer', 'warmer +', () => warmer(app.units === 'us' ? 5 / 1.8 : 2))),
    button('pins', `pins ${pinsOf(app)}`, () => {
      const all = PINS[app.units];
      app.change({pins: all[(all.indexOf(pinsOf(app)) + 1) % all.length]});
    }, {class: 'wide', 'aria-label': `The pins went ${pinsOf(app)} in; tap for the next`}),
    h('p', {class: 'small'}, `The meter’s own correction for wood should be off; the desk corrects it for ${app.member.species.replaceAll('-', ' ')}.`));
}
