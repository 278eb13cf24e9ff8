// The office pages. All they show comes from the server as it is; this moves drawings about, sends changes, and puts the parts
// that a change touched in place of what they were.

const api = building => `/api/buildings/${encodeURIComponent(building)}`;
const building = document.body.dataset.building, stage = document.body.dataset.stage;
const told = document.getElementById('told');

const say = words => { told.textContent = words; };

async function send(address, body) {
  const answer = await fetch(address, {method: 'POST', headers: {'Content-Type': 'application/json'}, body: JSON.stringify(body)});
  const said = await answer.json();
  if (!answer.ok) throw new Error([said.error.where && `${said.error.where}: `, said.error.what, said.error.mend && `; ${said.error.mend}`].filter(Boolean).join(''));
  return said;
}

// One part out of the server's HTML, which is well formed and holds no script: the page's policy would not run one.
function element(html) {
  const holder = document.createElement('template');
  holder.innerHTML = html;
  return holder.content.firstElementChild;
}

const known = () => Object.fromEntries([...document.querySelectorAll('#parts > .part')].map(part => [part.id, part.dataset.tag]));

/** Puts a new part in the place of what it was; what was open in it stays open. */
function swap(old, fresh) {
  const open = [...old.querySelectorAll('details')].map(one => one.open);
  fresh.querySelectorAll('details').forEach((one, i) => { one.open = open[i] ?? false; });
  old.replaceWith(fresh);
  dress(fresh);
}

/** Puts new parts in their places; the focus stays where it was. What changed out of sight is asked for when it comes near. */
function place({parts, stale = [], order, version}) {
  const all = document.getElementById('parts'), focused = document.activeElement?.closest('form.reading, form.decide')?.id, field = document.activeElement?.name;
  for (const [id, html] of Object.entries(parts)) {
    const fresh = element(html), old = document.getElementById(id);
    if (old) swap(old, fresh);
    else {
      all.append(fresh);
      dress(fresh);
    }
  }
  for (const id of stale) {
    const part = document.getElementById(id);
    part.dataset.stale = '';
    near.observe(part);
  }
  let last = null;
  for (const id of order) {
    const part = document.getElementById(id), next = last ? last.nextElementSibling : all.firstElementChild;
    if (part && part !== next) all.insertBefore(part, next);
    last = part ?? last;
  }
  for (const part of [...all.children]) if (!order.includes(part.id)) part.remove();
  all.dataset.version = version;
  if (focused) document.getElementById(focused)?.querySelector(field ? `[name="${field}"]` : 'input')?.focus();
}

function touched(entry, lines, undo, whole = true) {
  const aside = document.getElementById('touched'), list = document.createElement('dl');
  for (const line of lines) {
    const what = document.createElement('dt'), how = document.createElement('dd');
    what.textContent = `${line.stage}: ${line.what}`;
    if (line.was) how.append(Object.assign(document.createElement('del'), {textContent: line.was}), ' ');
    if (line.now) how.append(Object.assign(document.createElement('ins'), {textContent: line.now}));
    list.append(what, how);
  }
  const head = document.createElement('h2'), back = document.createElement('button'), close = document.createElement('button');
  head.textContent = lines.length ? `That touches ${lines.length === 1 ? 'one thing' : `${lines.length} things`}` : 'That touches nothing that was found';
  Object.assign(back, {type: 'button', textContent: 'take it back'});
  Object.assign(close, {type: 'button', textContent: 'close'});
  back.addEventListener('click', () => change({kind: 'strike', says: {entry, because: 'taken back at the desk'}}, null, false).catch(thrown => say(thrown.message)));
  close.addEventListener('click', () => { aside.hidden = true; });
  const more = document.createElement('p');
  more.className = 'small';
  more.textContent = whole ? '' : 'The outlook, the order of work, the cost and the watch are being worked out.';
  more.hidden = whole;
  aside.dataset.entry = entry;
  aside.replaceChildren(head, list, more, ...(undo ? [back, ' '] : []), close);
  aside.hidden = false;
  say(head.textContent);
}

/** Writes an entry, shows what it touched. */
async function change(body, form, undo = true) {
  const wrong = form?.querySelector('.wrong');
  if (wrong) wrong.textContent = '';
  form?.querySelectorAll('[aria-invalid]').forEach(one => one.removeAttribute('aria-invalid'));
  const from = performance.now();
  const said = await send(`${api(building)}/say`, {...body, stage, known: known(), near: [...new Set([...sighted, ...form ? [form.closest('.part').id] : []])]});
  place(said);
  touched(said.entry, said.touched, undo, said.whole);
  const parts = document.getElementById('parts');
  parts.dataset.whole = said.whole;
  parts.dataset.took = String(Math.round(performance.now() - from));
  await painted();
  if (!said.whole) settle(said.since, said.entry, undo).catch(thrown => say(thrown.message));
}

/** Until the screen shows what was put in place: what follows would take the processor from it. */
const painted = () => document.hidden ? Promise.resolve() : new Promise(done => requestAnimationFrame(() => setTimeout(done)));

/** What rests on the whole road comes when it is walked. */
async function settle(since, entry, undo) {
  const parts = document.getElementById('parts');
  try {
    const said = await send(`${api(building)}/whole`, {since, stage, known: known(), near: [...sighted]});
    place(said);
    parts.dataset.whole = true;
    const aside = document.getElementById('touched');
    if (entry && !aside.hidden && aside.dataset.entry === entry) touched(entry, said.touched, undo);
    await painted();
  } catch (thrown) {
    parts.dataset.whole = 'unknown';
    throw thrown;
  } finally {
    fillRest().catch(thrown => say(thrown.message));
  }
}

function amended(form) {
  const {kind, says} = JSON.parse(form.dataset.body);
  for (const field of form.elements) {
    if (!field.name) continue;
    if (field.type === 'checkbox') says[field.name] = field.checked;
    else if (field.name === 'seen') says.seen = field.value === 'true';
    else says[field.name] = field.value;
  }
  return {kind: 'amend', says: {entry: form.dataset.entry, kind, says}};
}

function tell(form, thrown) {
  const wrong = form.querySelector('.wrong');
  if (wrong) wrong.textContent = thrown.message;
  say(thrown.message);
  for (const field of form.elements) if (field.name && thrown.message.startsWith(field.name)) field.setAttribute('aria-invalid', 'true');
}

document.addEventListener('submit', event => {
  const form = event.target;
  if (form.matches('form.reading')) {
    event.preventDefault();
    change(amended(form), form).catch(thrown => tell(form, thrown));
  } else if (form.matches('form[data-decide]')) {
    event.preventDefault();
    const taken = form.elements.taken.value, verdict = event.submitter?.value === 'refused' ? 'refused' : taken === form.dataset.recommended ? 'accepted' : 'overruled';
    const says = {...JSON.parse(form.dataset.decide), taken, verdict, by: form.elements.by.value, because: form.elements.because.value.trim()};
    change({kind: 'decision', says}, form).catch(thrown => tell(form, thrown));
  } else if (form.matches('form[data-enter]')) {
    event.preventDefault();
    const key = form.elements.key.value, code = /^\s*[0-9A-Za-z]{4}(-[0-9A-Za-z]{4}){2}\s*$/.test(key);
    send('/api/session', code ? {code: key} : {passphrase: key}).then(({role}) => { location.replace(code && role === 'surveyor' ? '/field/' : '/'); }).catch(thrown => tell(form, thrown));
  } else if (form.matches('form[data-pair]')) {
    event.preventDefault();
    send('/api/pairings', {name: form.elements.name.value, role: form.elements.role.value}).then(({code, address, svg}) => {
      const words = document.createElement('p'), link = document.createElement('code');
      link.textContent = address;
      words.append(`Point the phone’s camera at this within ten minutes, or type ${code} at the door: `, link);
      document.querySelector('.paired').replaceChildren(element(svg), words);
    }).catch(thrown => tell(form, thrown));
  } else if (form.matches('form[data-demo]')) {
    event.preventDefault();
    send('/api/demo', {}).then(({building: one}) => { location.href = `/b/${encodeURIComponent(one)}`; }).catch(thrown => say(thrown.message));
  }
});

document.addEventListener('click', event => {
  const shut = event.target.closest?.('[data-shut]');
  if (shut) fetch(`/api/devices/${shut.dataset.shut}`, {method: 'DELETE'}).then(() => location.reload());
  if (event.target.closest?.('[data-shut-all]')) fetch('/api/devices', {method: 'DELETE'}).then(() => location.reload());
  if (event.target.closest?.('[data-leave]')) {
    event.preventDefault();
    fetch('/api/session', {method: 'DELETE'}).finally(() => location.replace('/enter'));
  }
  const strike = event.target.closest?.('[data-strike]'), long = event.target.closest?.('[data-long]');
  if (strike) {
    const form = strike.closest('form');
    change({kind: 'strike', says: {entry: strike.dataset.strike, because: 'taken back at the desk'}}, form).catch(thrown => tell(form, thrown));
  } else if (long && !event.ctrlKey && !event.metaKey) {
    event.preventDefault();
    follow(`?of=${long.dataset.long}`, say, () => { say('ready'); location.href = long.href; });
  } else if (event.target.closest?.('[data-print]')) print();
});

/** Long work tells its steps. */
function follow(what, step, done) {
  const events = new EventSource(`${api(building)}/progress${what}`);
  events.addEventListener('step', event => step(event.data.replace(/^"|"$/g, '')));
  events.addEventListener('done', () => { events.close(); done(); });
  events.onerror = () => { events.close(); done(); };
}

// A link to a reading opens the list that it lies in.
async function reveal() {
  const id = decodeURIComponent(location.hash.slice(1));
  if (!id) return;
  const list = id.startsWith('reading-') && document.querySelector(`details[data-later][data-forms~="${CSS.escape(id.slice(8))}"]`);
  if (list) await bring(list);
  const target = document.getElementById(id);
  if (!target) return;
  for (let at = target; at; at = at.parentElement) if (at.tagName === 'DETAILS') at.open = true;
  target.scrollIntoView({block: 'center'});
  if (!target.hasAttribute('tabindex')) target.tabIndex = -1;
  target.focus({preventScroll: true});
}
addEventListener('hashchange', () => reveal().catch(thrown => say(thrown.message)));

/** Moving about on a drawing: fingers, mouse, keys and buttons change its view box. */
function pan(holder) {
  const svg = holder.querySelector('svg'), whole = svg.getAttribute('viewBox').split(' ').map(Number);
  let [x, y, w, h] = whole;
  const show = () => {
    w = Math.min(whole[2], Math.max(whole[2] / 16, w));
    h = w * whole[3] / whole[2];
    x = Math.min(whole[2] - w, Math.max(0, x));
    y = Math.min(whole[3] - h, Math.max(0, y));
    svg.setAttribute('viewBox', [x, y, w, h].map(n => n.toFixed(2)).join(' '));
  };
  const scale = (by, cx = x + w / 2, cy = y + h / 2) => {
    const wide = Math.min(whole[2], Math.max(whole[2] / 16, w * by)), k = wide / w;
    x = cx - (cx - x) * k;
    y = cy - (cy - y) * k;
    w = wide;
    show();
  };
  const move = (dx, dy) => { x += dx * w; y += dy * h; show(); };
  const ways = {closer: () => scale(0.7), wider: () => scale(1 / 0.7), left: () => move(-0.25, 0), right: () => move(0.25, 0), whole: () => { [x, y, w, h] = whole; show(); }};
  holder.querySelectorAll('[data-way]').forEach(button => button.addEventListener('click', ways[button.dataset.way]));
  const keys = {'+': ways.closer, '=': ways.closer, '-': ways.wider, 0: ways.whole, ArrowLeft: ways.left, ArrowRight: ways.right, ArrowUp: () => move(0, -0.25), ArrowDown: () => move(0, 0.25)};
  svg.addEventListener('keydown', event => {
    if (event.ctrlKey || event.metaKey || event.altKey || !keys[event.key]) return;
    event.preventDefault();
    keys[event.key]();
  });
  const at = event => {
    const box = svg.getBoundingClientRect();
    return [x + (event.clientX - box.left) / box.width * w, y + (event.clientY - box.top) / box.height * h];
  };
  svg.addEventListener('wheel', event => {
    if (!event.ctrlKey && !event.metaKey) return;
    event.preventDefault();
    scale(event.deltaY < 0 ? 0.85 : 1 / 0.85, ...at(event));
  }, {passive: false});
  const down = new Map();
  let dragged = false, apart = 0;
  svg.addEventListener('pointerdown', event => { down.set(event.pointerId, [event.clientX, event.clientY]); dragged = false; apart = 0; });
  svg.addEventListener('pointermove', event => {
    const was = down.get(event.pointerId);
    if (!was) return;
    const box = svg.getBoundingClientRect(), dx = event.clientX - was[0], dy = event.clientY - was[1];
    if (down.size === 2) {
      down.set(event.pointerId, [event.clientX, event.clientY]);
      const [[ax, ay], [bx, by]] = [...down.values()], now = Math.hypot(ax - bx, ay - by);
      if (apart) scale(apart / now);
      apart = now;
      dragged = true;
    } else if (dragged || Math.hypot(dx, dy) > 6) {
      if (w < whole[2]) { dragged = true; move(-dx / box.width, -dy / box.height); }
      down.set(event.pointerId, [event.clientX, event.clientY]);
    }
  });
  const up = event => { down.delete(event.pointerId); apart = 0; };
  svg.addEventListener('pointerup', up);
  svg.addEventListener('pointercancel', up);
  svg.addEventListener('pointerleave', up);
  svg.addEventListener('click', event => { if (dragged) { event.preventDefault(); dragged = false; } }, true);
  // A member that is reached by the keyboard comes into view.
  svg.addEventListener('focusin', event => {
    const shape = event.target.querySelector?.('polygon, circle');
    if (!shape || w === whole[2]) return;
    const box = shape.getBBox(), cx = box.x + box.width / 2, cy = box.y + box.height / 2;
    if (cx < x || cx > x + w || cy < y || cy > y + h) { x = cx - w / 2; y = cy - h / 2; show(); }
  });
}

/** A part as the server has it. */
async function asked(part, how = '') {
  const answer = await fetch(`${api(building)}/parts/${stage}/${encodeURIComponent(part.id)}${how}`);
  return answer.ok ? answer.json() : null;
}

/** The same, unless it changed meanwhile: a change brings all of its own. */
async function again(part, how) {
  const now = await asked(part, how);
  return now?.tag === part.dataset.tag ? element(now.html) : null;
}

/** The forms of a list of readings, which the page was sent without, come when it is opened. */
async function bring(list) {
  if (!('later' in list.dataset)) return;
  delete list.dataset.later;
  const whole = await again(list.closest('.part')).catch(thrown => {
    list.dataset.later = '';
    throw thrown;
  }), fresh = whole?.querySelector('details[data-forms]');
  if (fresh) list.append(...[...fresh.children].slice(1));
}
document.addEventListener('toggle', event => {
  if (event.target.open && event.target.matches('details[data-later]')) bring(event.target).catch(thrown => say(thrown.message));
}, true);

/** A drawing that the page was sent without is fetched when it comes near the window; nothing else of its part is touched. */
async function fill(part) {
  delete part.dataset.light;
  const whole = await again(part, '?without=readings'), fresh = whole?.querySelectorAll('.sheet');
  if (!whole) return;
  part.querySelectorAll('.sheet').forEach((old, i) => { if ('later' in old.dataset && fresh[i]) old.replaceWith(fresh[i]); });
}

/** A part that changed while it was out of sight. What changes it again meanwhile marks it again. */
async function renew(part) {
  while (part.isConnected && 'stale' in part.dataset) {
    delete part.dataset.stale;
    const now = await asked(part).catch(thrown => {
      part.dataset.stale = '';
      throw thrown;
    });
    if (now && part.isConnected && !('stale' in part.dataset)) swap(part, element(now.html));
  }
}

const near = new IntersectionObserver(seen => {
  for (const {target, isIntersecting} of seen) if (isIntersecting) {
    // What is stale before the whole road is walked would be so again after it: it comes with the rest.
    if ('stale' in target.dataset && !sighted.has(target.id) && document.getElementById('parts').dataset.whole === 'false') continue;
    near.unobserve(target);
    ('stale' in target.dataset ? renew(target) : fill(target)).catch(thrown => say(thrown.message));
  }
}, {rootMargin: '1200px'});

/** The parts in the window and a little about it. */
const sighted = new Set();
const sight = new IntersectionObserver(seen => {
  for (const {target, isIntersecting} of seen) isIntersecting ? sighted.add(target.id) : sighted.delete(target.id);
}, {rootMargin: '300px'});

/** The rest follow when the page is at rest, so that a print has them all. */
async function fillRest() {
  for (const part of document.querySelectorAll('.part[data-light], .part[data-stale]')) {
    await new Promise(rest => requestIdleCallback(rest));
    if ('stale' in part.dataset) await renew(part);
    else if ('light' in part.dataset) await fill(part);
  }
}

/** What needs a hand of the script's in a part that was just put on the page. */
function dress(part) {
  part.querySelectorAll('[data-pan]').forEach(pan);
  for (const one of part === document ? document.querySelectorAll('#parts > .part') : [part]) {
    sight.observe(one);
    if ('light' in one.dataset) near.observe(one);
  }
}

dress(document);
// The code behind the # of an address that a camera read: it is no part of what is sent, so that no log holds it.
const door = document.querySelector('form[data-enter]');
if (door && location.hash.length > 1) {
  door.elements.key.value = decodeURIComponent(location.hash.slice(1));
  history.replaceState(null, '', location.pathname);
  door.requestSubmit();
}
reveal().catch(thrown => say(thrown.message));
if (document.querySelector('.part[data-light]')) setTimeout(() => fillRest().catch(thrown => say(thrown.message)), 1500);
if (document.getElementById('parts')?.dataset.whole === 'false') settle('').catch(thrown => say(thrown.message));
const wait = document.querySelector('[data-await]');
if (wait) follow('', words => { document.getElementById('step').textContent = words; }, () => location.reload());
