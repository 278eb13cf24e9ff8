// The field page. What is on the screen is one record, `now`, kept on the phone before it is shown: whoever kills the page
// finds it as it was, the half-made entry too.

import * as keep from './keep.js';
import {fold} from './fold.js';
import {tick, follow, later, stampOf, entryOf} from './clock.js';
import {h, button} from './dom.js';
import {Sync} from './sync.js';
import {places} from './places.js';
import {sideScreens} from './side.js';
import {memberScreens} from './member.js';
import {bookScreens} from './book.js';
import {roundScreens} from './round.js';

const SCREENS = {...places, ...sideScreens, ...memberScreens, ...bookScreens, ...roundScreens};

class App {
  constructor(now, self, words) {
    this.now = now;
    this.self = self;
    this.words = words;
    this.entries = [];
    this.counts = {entries: 0, photos: 0, refused: 0};
    this.fresh = null;
    this.queue = Promise.resolve();
    this.sync = new Sync(this);
  }

  get units() { return this.self.units; }

  get survey() { return this.fresh ??= fold(this.entries); }

  get side() { return this.survey.sides.get(this.now.side); }

  get member() { return this.survey.members.get(this.now.member); }

  /** One after the other, so that the record on the disk never goes back to what was before. */
  inLine(work) {
    const done = this.queue.then(work);
    this.queue = done.catch(() => {});
    return done;
  }

  /** Keeps a change of what is on the screen, without drawing it anew: for what changes under the finger. */
  async set(changes) {
    Object.assign(this.now, changes);
    this.unkept = true;
    try {
      await this.inLine(async () => {
        if (!this.unkept) return;
        this.unkept = false;
        await keep.put('now', structuredClone(this.now));
      });
      document.getElementById('trouble').textContent = '';
    } catch (thrown) {
      this.trouble(thrown);
    }
  }

  /** Keeps a change, then shows it. */
  async go(changes) {
    const moved = changes.screen && changes.screen !== this.now.screen;
    if (moved) {
      changes.trail = changes.trail ?? [...this.now.trail ?? [], this.now.screen].slice(-12);
      changes.wrong = changes.wrong ?? null;
    }
    const top = changes.top;
    delete changes.top;
    await this.set(changes);
    if (moved && changes.trail.length) history.pushState({}, '');
    this.draw(moved);
    if (top) document.querySelector('main').scrollTop = 0;
  }

  async back() {
    const trail = [...this.now.trail ?? []], screen = trail.pop() ?? 'buildings';
    await this.set({screen, trail, wrong: null});
    this.draw(true);
  }

  async change(self) {
    await keep.put('self', this.self = {...this.self, ...self});
    this.draw();
  }

  /**
   * Writes entries into the book on this phone. When this returns they are durable and the half-made entry they were made of is gone.
   *
   * @param all    [kind, says] of each
   * @param then   what the screen holds afterwards
   * @param said   what was kept, in words, for the line with the way back
   */
  async record(all, then, said, photos = []) {
    const building = then.building ?? this.now.building;
    try {
      const entries = await this.inLine(() => keep.record(building, last => this.stamped(all, last), made => {
        this.now = {...this.now, ...then, building, last: {ids: made.map(entry => entry.id), said}};
        return structuredClone(this.now);
      }, photos));
      this.entries = [...this.entries, ...entries];
      this.fresh = null;
      if (navigator.storage?.persist) navigator.storage.persist().then(kept => this.lasting = kept);
      await this.count();
      this.draw();
      this.sync.soon();
      return entries;
    } catch (thrown) {
      this.trouble(thrown);
      throw thrown;
    }
  }

  stamped(all, last) {
    let stamp = last;
    const entries = all.map(([kind, says]) => {
      // What is struck or amended is older than what strikes it, whatever the clocks showed.
      const target = kind === 'strike' || kind === 'amend' ? this.entries.find(entry => entry.id === says.entry) : null;
      if (target && later(stampOf(target), stamp)) stamp = stampOf(target);
      stamp = tick(stamp, Date.now());
      return entryOf(stamp, this.self.device, this.self.author, kind, says);
    });
    return {stamp, entries};
  }

  /** Takes entries back, each by a new entry; undoing that strikes the strike. */
  strike(ids, because) { return this.record(ids.map(entry => ['strike', {entry, because}]), {}, 'Taken back.'); }

  async open(building) {
    this.entries = (await keep.entriesOf(building)).map(row => row.entry);
    this.fresh = null;
  }

  /** After a sync brought something. */
  async reload() {
    await this.count();
    if (this.now.building) await this.open(this.now.building);
    this.draw();
  }

  async count() { this.counts = await keep.counts(); }

  clockAfter(entries) { return last => entries.reduce((clock, entry) => follow(clock, stampOf(entry), Date.now()), last); }

  trouble(thrown) {
    console.error(thrown);
    document.getElementById('trouble').textContent = `This was not kept: ${thrown.message}. Free some space on the phone, and tap again.`;
  }

  /**
   * @param headOnly where only the count of what is unsent may have changed
   */
  draw(moved = false, headOnly = false) {
    // Never under a finger that is on its way: a slider half moved, or a tap whose button is drawn anew before the finger is up, would be lost.
    if (this.held && !moved && Date.now() < this.heldTo) {
      this.later = headOnly ? this.later ?? 'head' : 'all';
      return;
    }
    const lost = ['member', 'mend'].includes(this.now.screen) && !this.member, nowhere = ['side', 'place', 'kind', 'size', 'sideSigns', 'sidePhoto'].includes(this.now.screen) && !this.side;
    // What was on the screen may have been taken back, here or by another phone.
    const screen = nowhere || lost && !this.side ? SCREENS.building : lost ? SCREENS.side : SCREENS[this.now.screen] ?? SCREENS.buildings, focus = document.activeElement?.dataset?.key, main = document.querySelector('main');
    const shown = screen(this), scroll = moved ? 0 : main.scrollTop;
    document.title = shown.title + ' · Sillwright field';
    document.querySelector('header').replaceChildren(...this.head(shown));
    if (headOnly) return this.focusAgain(focus);
    main.replaceChildren(...shown.body.flat(3).filter(Boolean));
    document.querySelector('footer').replaceChildren(...[this.lastKept(), ...(shown.foot ?? [])].flat(3).filter(Boolean));
    main.scrollTop = scroll;
    shown.after?.();
    if (moved) document.querySelector('h1').focus({preventScroll: true});
    else this.focusAgain(focus);
  }

  focusAgain(key) {
    if (key && document.activeElement?.dataset?.key !== key) document.querySelector(`[data-key="${CSS.escape(key)}"]`)?.focus({preventScroll: true});
  }

  /** Listens for a finger that holds on to something; on what is no field to move or write in for two seconds at most, should its end never be heard of. */
  hold() {
    addEventListener('pointerdown', event => {
      this.held = event.target;
      this.heldTo = event.target.matches?.('input, textarea') ? Infinity : Date.now() + 2_000;
    });
    for (const end of ['pointerup', 'pointercancel']) addEventListener(end, () => setTimeout(() => {
      this.held = null;
      const later = this.later;
      this.later = null;
      if (later) this.draw(false, later === 'head');
    }));
  }

  head(shown) {
    const waiting = this.counts.entries + this.counts.photos;
    return [this.now.trail?.length ? button('back', '‹ Back', () => history.back(), {class: 'back'}) : h('span', {class: 'name'}, 'Sillwright'),
      h('h1', {tabindex: -1}, shown.title),
      button('send', waiting ? `${waiting} to send` : this.counts.refused ? `${this.counts.refused} refused` : 'All sent', () => this.go({screen: 'send'}),
        {class: 'unsent' + (waiting || this.counts.refused ? ' some' : ''), 'aria-label': `${waiting} not yet sent`})];
  }

  /** What was kept last, with the way back. */
  lastKept() {
    const last = this.now.last;
    if (!last) return null;
    return h('p', {class: 'kept', role: 'status'}, h('span', {}, last.said), last.ids.length ? button('undo', 'Undo', () => this.strike(last.ids, 'undone at once')) : null);
  }
}

const deviceName = () => 'phone-' + Array.from(crypto.getRandomValues(new Uint8Array(5)), byte => byte.toString(36).padStart(2, '0')).join('').slice(0, 8);

async function begin() {
  const words = await (await fetch('words.json')).json();
  let self = await keep.get('self');
  if (!self) await keep.put('self', self = {device: deviceName(), author: '', units: /^en-US|^en$/.test(navigator.language) ? 'us' : 'si', reachMm: null});
  const now = await keep.get('now') ?? {screen: 'setup', trail: []};
  const app = new App(now, self, words);
  await app.count();
  if (now.building) await app.open(now.building);
  app.hold();
  addEventListener('popstate', () => app.back());
  for (let i = 0; i < (now.trail?.length ?? 0); i++) history.pushState({}, '');
  app.draw();
  app.sync.begin();
  document.documentElement.dataset.ready = 'yes';
  if ('serviceWorker' in navigator) await worker(app);
}

/** A newer version waits until it is wanted; all that is unsent lies where no version touches it. */
async function worker(app) {
  const here = await navigator.serviceWorker.register('sw.js');
  const offer = waiting => {
    if (!waiting || !navigator.serviceWorker.controller) return;
    document.getElementById('news').replaceChildren(button('renew', 'A newer page is here: use it', () => waiting.postMessage('take over')));
  };
  offer(here.waiting);
  here.addEventListener('updatefound', () => {
    const coming = here.installing;
    coming.addEventListener('statechange', () => coming.state === 'installed' && offer(coming));
  });
  let had = Boolean(navigator.serviceWorker.controller);
  navigator.serviceWorker.addEventListener('controllerchange', () => {
    if (had) app.queue.then(() => location.reload());
    had = true;
  });
  await navigator.serviceWorker.ready;
  document.documentElement.dataset.offline = 'ready';
}

begin().catch(thrown => {
  console.error(thrown);
  document.getElementById('trouble').textContent = `The field page could not begin: ${thrown.message}. Open it once with the server in reach.`;
});
