// What the phone keeps: IndexedDB, written so that a promise resolves only when the disk has it.
//
//   entries  by [building, id, variant]: `sent` 0 or 1, `refused` with the reason where the server set it aside
//   photos   by sha256: the picture and whether it is at the server
//   kept     the few single things: `now` (screen and half-made entry), `self` (device, author, units, reach), `clock`, marks
//
// An entry, the clock that stamped it and the half-made entry it was made of change in one transaction: a phone that dies
// has either both or neither.

import {canonical} from './fold.js';

const NAME = 'sillwright-field', VERSION = 1;
let opened;

function open() {
  opened ??= new Promise((resolve, reject) => {
    const asked = indexedDB.open(NAME, VERSION);
    asked.onupgradeneeded = () => {
      const db = asked.result;
      const entries = db.createObjectStore('entries', {keyPath: ['building', 'id', 'variant']});
      entries.createIndex('building', 'building');
      entries.createIndex('waiting', ['sent', 'building']);
      db.createObjectStore('photos', {keyPath: 'sha256'}).createIndex('sent', 'sent');
      db.createObjectStore('kept');
    };
    asked.onsuccess = () => resolve(asked.result);
    asked.onerror = () => reject(asked.error);
  });
  return opened;
}

const answer = request => new Promise((resolve, reject) => {
  request.onsuccess = () => resolve(request.result);
  request.onerror = () => reject(request.error);
});

/** One transaction; resolves with what the work returned once all of it is on the disk. */
async function write(stores, work) {
  const db = await open();
  const change = db.transaction(stores, 'readwrite', {durability: 'strict'});
  const done = new Promise((resolve, reject) => {
    change.oncomplete = resolve;
    change.onabort = () => reject(change.error ?? new Error('the phone would not keep this'));
  });
  let result;
  try {
    result = await work(change);
  } catch (thrown) {
    done.catch(() => {});
    try { change.abort(); } catch { /* it is over already; `thrown` says why */ }
    throw thrown;
  }
  await done;
  return result;
}

async function read(store, ask) {
  const db = await open();
  return answer(ask(db.transaction(store).objectStore(store)));
}

/** A short sum over what an entry says: two that share an id and differ are both kept. */
function variant(entry) {
  let a = 0xdeadbeef, b = 0x41c6ce57;
  for (const c of canonical(entry)) {
    a = Math.imul(a ^ c.codePointAt(0), 2654435761);
    b = Math.imul(b ^ c.codePointAt(0), 1597334677);
  }
  return (a >>> 0).toString(16) + (b >>> 0).toString(16);
}

const row = (building, entry, sent) => ({building, id: entry.id, variant: variant(entry), entry, sent});

export const get = key => read('kept', store => store.get(key));

export const put = (key, value) => write(['kept'], change => answer(change.objectStore('kept').put(value, key)));

/**
 * Adds entries of this phone's own, with the clock that stamped them, what is now on the screen, and photos that go along.
 *
 * @param make (last stamp) => {stamp, entries}
 */
export const record = (building, make, now, photos = []) => write(['entries', 'kept', 'photos'], async change => {
  const kept = change.objectStore('kept');
  const last = await answer(kept.get('clock')) ?? {wallMs: 0, tick: 0};
  const {stamp, entries} = make(last);
  for (const entry of entries) change.objectStore('entries').put(row(building, entry, 0));
  for (const photo of photos) change.objectStore('photos').put({...photo, sent: 0});
  kept.put(stamp, 'clock');
  kept.put(now(entries), 'now');
  return entries;
});

export const entriesOf = async building => (await read('entries', store => store.index('building').getAll(building)));

/** Every building that anything is kept of here. */
export async function buildings() {
  const db = await open();
  return new Promise((resolve, reject) => {
    const found = [], asked = db.transaction('entries').objectStore('entries').index('building').openKeyCursor(null, 'nextunique');
    asked.onerror = () => reject(asked.error);
    asked.onsuccess = () => {
      if (!asked.result) return resolve(found);
      found.push(asked.result.key);
      asked.result.continue();
    };
  });
}

/** Own entries that the server has not acknowledged, oldest first. */
export const waiting = async () => (await read('entries', store => store.index('waiting').getAll(IDBKeyRange.bound([0], [0, []])))).sort((a, b) => a.id < b.id ? -1 : 1);

/** What the server set aside, with its reason. */
export const refused = () => read('entries', store => store.index('waiting').getAll(IDBKeyRange.bound([2], [2, []])));

export const photosRefused = () => read('photos', store => store.index('sent').getAll(2));

export const photosWaiting = () => read('photos', store => store.index('sent').getAll(0));

export const photo = sha256 => read('photos', store => store.get(sha256));

export async function counts() {
  const db = await open(), ask = db.transaction(['entries', 'photos']);
  const [entries, photos, refused, not] = await Promise.all([answer(ask.objectStore('entries').index('waiting').count(IDBKeyRange.bound([0], [0, []]))),
    answer(ask.objectStore('photos').index('sent').count(0)), answer(ask.objectStore('entries').index('waiting').count(IDBKeyRange.bound([2], [2, []]))), answer(ask.objectStore('photos').index('sent').count(2))]);
  return {entries, photos, refused: refused + not};
}

/** The server has these for good. @param fates by id: 1 taken, 2 refused, with its reason */
export const acknowledge = (rows, fates) => write(['entries'], change => {
  for (const one of rows) {
    const fate = fates.get(one.id);
    if (fate) change.objectStore('entries').put({...one, sent: fate.sent, ...(fate.why ? {refused: fate.why} : {})});
  }
});

/** @param sent 1 at the server, 2 refused, with its reason */
export const photoSent = (sha256, sent, why) => write(['photos'], async change => {
  const store = change.objectStore('photos'), kept = await answer(store.get(sha256));
  if (kept) store.put({...kept, sent, ...(why ? {refused: why} : {})});
});

/** The server has lost what it had, as after a restored backup: all that is here is offered to it again. */
export const offerAgain = building => write(['entries', 'photos', 'kept'], async change => {
  const entries = change.objectStore('entries'), photos = change.objectStore('photos');
  for (const one of await answer(entries.index('building').getAll(building))) if (one.sent === 1) entries.put({...one, sent: 0});
  for (const one of await answer(photos.getAll())) if (one.sent === 1) photos.put({...one, sent: 0});
  change.objectStore('kept').delete('mark ' + building);
});

/** What others wrote, the mark behind it, and the clock that has seen it. One of our own that comes back is sent. */
export const received = (building, entries, mark, clockAfter) => write(['entries', 'kept'], async change => {
  const kept = change.objectStore('kept');
  for (const entry of entries) change.objectStore('entries').put(row(building, entry, 1));
  kept.put(mark, 'mark ' + building);
  kept.put(clockAfter(await answer(kept.get('clock')) ?? {wallMs: 0, tick: 0}), 'clock');
});
