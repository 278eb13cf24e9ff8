// What is written in the book, newest first, each line with the way to take it back; and what is not yet sent.

import {h, button} from './dom.js';
import * as keep from './keep.js';

const BECAUSE = ['read wrongly', 'wrong place', 'by mistake'];
const SHOWN = 60;

const when = at => new Date(at).toLocaleString(undefined, {month: 'short', day: 'numeric', hour: '2-digit', minute: '2-digit'});

const target = (app, id) => app.entries.find(entry => entry.id === id);

/** What an entry says, in one line. */
function words(app, {kind, says}) {
  const member = id => app.survey.members.get(id)?.title || id;
  switch (kind) {
    case 'probe': return `${member(says.member)}, ${says.face}: ${says.depth} deep, ${says.along} along, ${says.across} across`;
    case 'moisture': return `${member(says.member)}, ${says.face}: ${says.reading} by the meter, ${says.along} along`;
    case 'sighting': return `${says.seen === false ? 'not there' : 'seen'}: ${app.words.signs.find(one => one.id === says.sign)?.words ?? says.sign}${says.member ? ', ' + member(says.member) : ''}${says.words ? ', ' + says.words : ''}`;
    case 'photo': return `photo${says.caption ? ': ' + says.caption : ''}${says.pin ? ', ' + member(says.pin.member) : ''}`;
    case 'member': return `member ${says.title || says.id}: ${says.width} × ${says.depth}, ${says.length} long`;
    case 'side': return `side ${says.title || says.id}, ${says.length} long`;
    case 'building': return `building ${says.name}`;
    case 'work-done': return `done: ${says.done.replaceAll('-', ' ')}${says.member ? ', ' + member(says.member) : ''}${says.words ? ': ' + says.words : ''}`;
    case 'decision': return `decided, ${says.verdict}: ${says.taken.replaceAll('-', ' ')}${says.member ? ', ' + member(says.member) : `, ${says.source.replaceAll('-', ' ')}`}${says.because ? ': ' + says.because : ''}`;
    case 'checks': return `${says.count} open ${says.count === 1 ? 'check' : 'checks'}: ${member(says.member)}, ${says.face}, ${says.length} long, ${says.depth} deep`;
    case 'profile': return `outline of ${member(says.member)}${says.title ? ', ' + says.title : ''}: ${says.offsets.length} steps of the gauge`;
    case 'amend': return `mended: ${words(app, says)}`;
    case 'strike': {
      const struck = target(app, says.entry), back = struck?.kind === 'strike' ? target(app, struck.says.entry) : null, what = back ?? struck;
      return `${back ? 'brought' : 'taken'} back${what ? ': ' + words(app, what) : ''}${says.because ? ` (${says.because})` : ''}`;
    }
    default: return kind.replaceAll('-', ' ');
  }
}

function book(app) {
  const {survey, now} = app, all = [...survey.entries].reverse(), shown = all.slice(0, now.more ?? SHOWN), grave = new Set(survey.faults.filter(fault => fault.grave).map(fault => fault.entry));
  return {title: 'The book', body: [h('p', {class: 'small'}, `${all.length} entries; newest first. Nothing is ever wiped out: what is taken back stays, struck through.`),
    h('ul', {class: 'entries lines'}, shown.map(entry => {
      const struckBy = survey.struck.get(entry.id), open = now.open === entry.id;
      return h('li', {class: struckBy ? 'struck' : null}, h('p', {}, struckBy ? h('s', {}, words(app, entry)) : words(app, entry), h('small', {}, `${when(entry.at)}, ${entry.author || entry.device || ''}`),
        grave.has(entry.id) ? h('strong', {class: 'wrong'}, ' does not fit what is described, and is set aside') : null),
      struckBy ? button('bring-' + entry.id, 'Bring back', () => app.strike([struckBy], 'brought back'))
        : open ? h('div', {class: 'three', role: 'group', 'aria-label': 'Why is it taken back?'}, BECAUSE.map((why, i) => button(`why-${i}-${entry.id}`, why, () => app.strike([entry.id], why))))
          : entry.kind === 'strike' && target(app, entry.says.entry)?.kind !== 'strike' ? button('strike-' + entry.id, 'Bring back', () => app.strike([entry.id], 'brought back')) : button('strike-' + entry.id, 'Take back', () => app.go({open: entry.id})));
    })), all.length > shown.length ? button('more', 'Older', () => app.go({more: shown.length + SHOWN}), {class: 'wide'}) : null]};
}

const STATES = {'not tried': 'Not tried yet.', sent: 'The server has everything it was sent.', away: 'No server answers. It is tried again by itself; all is safe on this phone.', refused: 'The server answers, and does not take it:'};

function send(app) {
  const {counts, sync} = app, paired = sync.status === 401 || sync.status === 403;
  if (!app.refusals) Promise.all([keep.refused(), keep.photosRefused()]).then(([entries, photos]) => {
    app.refusals = [...entries.map(row => [words(app, row.entry), row.refused]), ...photos.map(photo => ['a photo', photo.refused])];
    if (app.refusals.length) app.draw();
  });
  return {title: 'To send', body: [
    h('p', {class: 'deep'}, counts.entries + counts.photos === 0 ? 'Nothing waits.' : `${counts.entries} entries and ${counts.photos} photos wait.`),
    h('p', {role: 'status'}, STATES[sync.state], sync.why ? ' ' + sync.why : ''), sync.at ? h('p', {class: 'small'}, `Last sent ${when(sync.at)}.`) : null,
    paired ? h('p', {}, h('a', {class: 'button wide', href: '/enter'}, 'Pair this phone')) : null,
    app.lasting === false ? h('p', {class: 'caution'}, 'This phone may clear what pages keep when it runs out of room: send soon, or save to a file. Installing the page helps.') : null,
    (app.refusals ?? []).length ? [h('h2', {}, 'Refused by the server'), h('ul', {class: 'entries'}, app.refusals.map(([what, why]) => h('li', {}, h('p', {}, what, h('strong', {class: 'wrong'}, ' ' + why)))))] : null],
  foot: [h('div', {class: 'pair'}, button('save', 'Save to a file', () => save(app)), button('send-now', 'Send now', async () => {
    app.refusals = null;
    await app.sync.soon();
    app.draw();
  }, {class: 'first'}))]};
}

/** This building's book as an exchange file, whatever the server does. */
function save(app) {
  const text = JSON.stringify({format: 'sillwright-survey', version: 1, note: 'from a phone', entries: app.entries});
  const url = URL.createObjectURL(new Blob([text], {type: 'application/json'})), link = h('a', {href: url, download: `${app.now.building ?? 'field'}.survey.json`});
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}

export const bookScreens = {book, send};
