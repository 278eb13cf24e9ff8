// Between this phone and the server: sends what is unsent, fetches what others wrote. May stop anywhere and be begun again:
// the server knows an entry by its id and a picture by its digest, so that nothing is lost or doubled.

import * as keep from './keep.js';

/** Screens that tell of the sending itself; others are left alone where nothing new came. */
const FOLLOWS = ['send', 'buildings', 'round'];

/** What is wrong with what was sent, and would be the next time too. */
const WHOLE = [400, 413, 415, 422];

const SELDOM_MS = 600_000;

/** Entries to a request: few enough that fifty phones that come into signal at once wait for one another less than a quarter of a second (bench/load.sh). */
const BATCH = 10, LARGEST_WAIT_MS = 300_000;

class Refused extends Error {
  constructor(status, error) {
    super([error?.where, error?.what].filter(Boolean).join(': ') + (error?.mend ? '; ' + error.mend : '') || `the server answered ${status}`);
    this.status = status;
  }
}

async function ask(path, options = {}) {
  const answer = await fetch(path, {...options, cache: 'no-store', signal: AbortSignal.timeout(60_000)});
  if (answer.ok) return answer.json();
  throw new Refused(answer.status, (await answer.json().catch(() => ({}))).error);
}

const post = (path, value) => ask(path, {method: 'POST', headers: {'Content-Type': 'application/json'}, body: JSON.stringify(value)});

export class Sync {
  constructor(app) {
    this.app = app;
    this.failures = 0;
    this.state = 'not tried';
  }

  begin() {
    addEventListener('online', () => this.soon());
    document.addEventListener('visibilitychange', () => document.visibilityState === 'visible' && this.soon());
    this.soon();
  }

  /** Tries now; whoever asks while it runs has it run once more. */
  soon() {
    clearTimeout(this.timer);
    this.again = true;
    return this.running ??= this.run().finally(() => {
      this.running = null;
      // Asked for while the screen was drawn anew, behind the last look at `again`.
      if (this.again) this.soon();
    });
  }

  async run() {
    let brought = false;
    while (this.again) {
      this.again = false;
      try {
        // One tab of this phone at a time.
        await navigator.locks.request('sync', async () => { brought = await this.once() || brought; });
        this.failures = 0;
        this.state = 'sent';
        this.why = '';
        this.at = Date.now();
      } catch (thrown) {
        this.failures++;
        this.state = thrown instanceof Refused ? 'refused' : 'away';
        this.why = thrown instanceof Refused ? thrown.message : '';
        this.status = thrown.status;
      }
    }
    await (brought ? this.app.reload() : this.app.count().then(() => this.app.draw(false, !FOLLOWS.includes(this.app.now.screen))));
    this.wait();
  }

  /** Each failure doubles the wait, up to five minutes; a third of it by chance, so that phones do not knock together. */
  wait() {
    const ms = this.failures ? Math.min(LARGEST_WAIT_MS, 2_000 * 2 ** this.failures) : 60_000;
    this.timer = setTimeout(() => this.soon(), ms * (0.83 + Math.random() / 3));
  }

  async once() {
    await this.sendEntries();
    await this.sendPhotos();
    if (!this.listed || this.app.now.screen === 'buildings') await this.list();
    let brought = false;
    for (const id of await keep.buildings()) brought = await this.fetch(id) || brought;
    if (this.app.now.building) await this.fetchRounds(this.app.now.building);
    return brought;
  }

  /** What there is at the server: asked once, and while somebody looks at the list. */
  async list() {
    const shelves = (await ask('/api/buildings')).buildings;
    await keep.put('shelves', shelves);
    this.app.shelves = shelves;
    this.listed = true;
  }

  async sendEntries() {
    const all = await keep.waiting();
    for (const building of new Set(all.map(row => row.building))) {
      const rows = all.filter(row => row.building === building);
      for (let i = 0; i < rows.length; i += BATCH) await this.send(building, rows.slice(i, i + BATCH));
    }
  }

  async send(building, rows) {
    let receipts;
    try {
      receipts = (await post(`/api/buildings/${encodeURIComponent(building)}/entries`, rows.map(row => row.entry))).receipts;
    } catch (thrown) {
      // What is refused as a whole for one that is wrong in it is sent again in halves, so that the one holds up no other.
      if (!(thrown instanceof Refused) || !WHOLE.includes(thrown.status)) throw thrown;
      if (rows.length > 1) {
        await this.send(building, rows.slice(0, rows.length / 2));
        await this.send(building, rows.slice(rows.length / 2));
      } else await keep.acknowledge(rows, new Map([[rows[0].id, {sent: 2, why: thrown.message}]]));
      return;
    }
    await keep.acknowledge(rows, new Map(receipts.map(one => [one.id, one.fate === 'refused'
      ? {sent: 2, why: one.faults.map(fault => [fault.field, fault.what, fault.mend].filter(Boolean).join(', ')).join('; ')} : {sent: 1}])));
    await this.app.count();
  }

  async sendPhotos() {
    for (const {sha256, media, blob} of await keep.photosWaiting()) {
      try {
        await ask('/api/photos/' + sha256, {method: 'PUT', headers: {'Content-Type': media}, body: blob});
        await keep.photoSent(sha256, 1);
      } catch (thrown) {
        // One that is no picture to the server holds up nothing else; it stays here, with the reason.
        if (!(thrown instanceof Refused) || !WHOLE.includes(thrown.status)) throw thrown;
        await keep.photoSent(sha256, 2, thrown.message);
      }
    }
  }

  async fetch(building) {
    let brought = false, more = true;
    while (more) {
      const mark = await keep.get('mark ' + building) ?? '';
      const given = await ask(`/api/buildings/${encodeURIComponent(building)}/entries?limit=1000${mark ? '&since=' + encodeURIComponent(mark) : ''}`);
      if (given.again) await this.offerAgain(building);
      if (given.entries.length) await keep.received(building, given.entries, given.mark, this.app.clockAfter(given.entries));
      brought ||= given.entries.length > 0;
      more = given.more;
    }
    return brought;
  }

  async offerAgain(building) {
    await keep.offerAgain(building);
    this.again = true;
  }

  /**
   * The rounds of the watch, for a walk without signal; a server that has none to give is no failure. Working them takes the
   * server a while, so that they are asked for seldom but where somebody looks at them.
   */
  async fetchRounds(building) {
    if (this.app.now.screen !== 'round' && Date.now() - (this.roundsAt ?? 0) < SELDOM_MS) return;
    this.roundsAt = Date.now();
    try {
      const given = await ask(`/api/buildings/${encodeURIComponent(building)}/rounds?units=${this.app.units}`);
      if (given.rounds.length) await keep.put('rounds ' + building, given.rounds);
      if (given.rounds.length) this.app.roundsOf = null;
    } catch (thrown) {
      if (!(thrown instanceof Refused) || thrown.status === 401) throw thrown;
    }
  }

  /** Fetches a building for the first time. */
  async bring(building) {
    await this.fetch(building);
    await this.app.open(building);
  }
}
