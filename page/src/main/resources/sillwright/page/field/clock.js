// Time and names of entries: a hybrid logical clock and UUIDs of version 7, as sillwright.store has them.
// Source: Kulkarni and others, Logical Physical Clocks, 2014; RFC 9562, section 5.7 (both from memory).

const MOST_AHEAD_MS = 86_400_000;

export const later = (a, b) => a.wallMs !== b.wallMs ? a.wallMs > b.wallMs : a.tick > b.tick;

/** The stamp after the last one seen: the wall's time where that is later, else one tick past it. */
export function tick(last, nowMs) {
  return nowMs > last.wallMs ? {wallMs: nowMs, tick: 0} : {wallMs: last.wallMs, tick: last.tick + 1};
}

/** The later of what we know and what another wrote; another clock more than a day ahead is not believed. */
export function follow(last, seen, nowMs) {
  return seen.wallMs <= nowMs + MOST_AHEAD_MS && later(seen, last) ? seen : last;
}

export const stampOf = entry => ({wallMs: Date.parse(entry.at), tick: entry.tick ?? 0});

/** As Java's Instant says it: no empty milliseconds. */
export const instant = ms => new Date(ms).toISOString().replace('.000Z', 'Z');

const hex = (value, digits) => value.toString(16).padStart(digits, '0');

export function uuid7(wallMs) {
  const random = crypto.getRandomValues(new Uint8Array(10));
  const tail = Array.from(random, byte => hex(byte, 2)).join('');
  const time = hex(Math.floor(wallMs), 12);
  const variant = '89ab'[random[2] & 3];
  return `${time.slice(0, 8)}-${time.slice(8)}-7${tail.slice(0, 3)}-${variant}${tail.slice(5, 8)}-${tail.slice(8, 20)}`;
}

/** An entry exactly as the exchange file has it. */
export function entryOf(stamp, device, author, kind, says) {
  const entry = {id: uuid7(stamp.wallMs), at: instant(stamp.wallMs)};
  if (stamp.tick > 0) entry.tick = stamp.tick;
  entry.device = device;
  if (author) entry.author = author;
  entry.kind = kind;
  entry.says = says;
  return entry;
}
