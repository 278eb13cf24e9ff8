// Lengths, temperatures, shares and slopes: read as people write them, said as the reader's tape says them.
// The rules are those of sillwright.measure.Quantity and Words, which a test holds these to.

const LENGTH = [[25.4, ['in', 'inch', 'inches', '"', "''", 'in.']], [304.8, ['ft', 'foot', 'feet', "'", 'ft.']], [914.4, ['yd', 'yard', 'yards']], [1, ['mm']],
  [10, ['cm']], [1000, ['m', 'metre', 'metres', 'meter', 'meters']]];
const FEET = LENGTH[1], INCHES = LENGTH[0];
const VULGAR = '½¼¾⅛⅜⅝⅞⅓⅔⅕⅖⅗⅘⅙⅚';
const FRACTIONS = ['1/2', '1/4', '3/4', '1/8', '3/8', '5/8', '7/8', '1/3', '2/3', '1/5', '2/5', '3/5', '4/5', '1/6', '5/6'];

/** What somebody wrote cannot be used; the message says why, and what would do. */
export class Unreadable extends Error {}

const MARKS = {'′': "'", '’': "'", '‘': "'", 'ʹ': "'", '″': '"', '”': '"', '“': '"', 'ʺ': '"', '−': '-', '–': '-', '—': '-', '‑': '-',
  '\u00a0': ' ', '\u202f': ' ', '\u2009': ' ', '\u2007': ' ', '\t': ' ', '⁄': '/', '∕': '/', 'º': '°', '˚': '°', '℉': '°F', '℃': '°C'};

function plain(text) {
  let out = '';
  for (const c of text) {
    const vulgar = VULGAR.indexOf(c);
    if (vulgar >= 0) out += (/\d$/.test(out) ? '-' : '') + FRACTIONS[vulgar];
    else out += MARKS[c] ?? c;
  }
  return out.trim().replaceAll(' / ', '/');
}

const NUMBER = /^ *([+-]?)(\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d+)?(?:\/(\d+(?:\.\d*)?)|[- ](\d+)\/(\d+))?/;

/** A number at the start of the text, and what is left behind it. */
function number(text, whole) {
  const found = NUMBER.exec(text);
  if (!found) throw new Unreadable(`“${whole}” has no number where one is wanted`);
  const [all, sign, first, below, above2, below2] = found;
  const exponent = /^[eE][+-]?\d+/.exec(all.trimStart().slice(sign.length + first.length));
  let value = Number(first + (exponent ? exponent[0] : ''));
  if (below !== undefined) value /= Number(below);
  else if (below2 !== undefined) value += Number(above2) / Number(below2);
  if (!Number.isFinite(value)) throw new Unreadable(`“${whole}” divides by nothing`);
  return [sign === '-' ? -value : value, text.slice(all.length)];
}

function unit(letters, units) {
  for (const one of units) if (one[1].includes(letters)) return one;
  for (const one of units) if (one[1].some(name => name.length > 1 && name.toLowerCase() === letters.toLowerCase())) return one;
  return null;
}

/** Millimetres of `3/8 in`, `4' 6-1/2"`, `114 mm`. */
export function lengthMm(written) {
  let rest = plain(written), total = 0, last = null, negative = false;
  if (!rest) throw new Unreadable('nothing is written');
  do {
    let value;
    const whole = rest;
    [value, rest] = number(rest, written);
    const letters = /^ *([^\d]*?)(?= +[\d-]|$|(?<=')\d|(?<=[a-z.])(?=\d))/i.exec(rest);
    const found = letters && unit(letters[1].trim(), LENGTH);
    if (!found) throw new Unreadable(`“${written}” has no unit that is known here: write 3/8 in, 4 ft 6-1/2 in or 114 mm`);
    rest = rest.slice(letters[0].length).trimStart();
    if (last === null) negative = value < 0 || whole.startsWith('-');
    else if (!(last === FEET && found === INCHES && value >= 0 && value < 12)) throw new Unreadable(`“${written}” puts two values together that do not make one`);
    const part = value * found[0];
    total = last !== null && negative ? total - part : total + part;
    last = found;
  } while (rest);
  return total;
}

function single(written, units) {
  const text = plain(written);
  const [value, rest] = number(text, written);
  const found = unit(rest.trim(), units);
  if (!found) throw new Unreadable(`“${written}” has no unit that is known here`);
  return value * found[0] + (found[2] ?? 0);
}

/** A fraction of `18%`. */
export const share = written => single(written, [[0.01, ['%', 'pct', 'percent']], [1, ['']]]);

export const celsius = written => single(written, [[5 / 9, ['F', '°F', 'degF', 'deg F', 'f'], -32 * 5 / 9], [1, ['C', '°C', 'degC', 'deg C', 'c']], [1, ['K'], -273.15]]);

export const degrees = written => single(written, [[1, ['deg', '°', 'degrees']]]);

/** Rise over run of a roof: `9/12`, `8:12`, `5 in 12`. For a drawing only: nothing where it is written otherwise. */
export function pitch(written) {
  const found = /^ *([\d.]+) *(?:\/|:| in ) *([\d.]+) *$/.exec(plain(written ?? ''));
  return found && Number(found[2]) > 0 ? Number(found[1]) / Number(found[2]) : 0;
}

/** A number with so many decimals at most, no trailing zeros. */
export function decimals(value, most) {
  const text = value.toFixed(most);
  const short = text.includes('.') ? text.replace(/\.?0+$/, '') : text;
  return short === '-0' ? '0' : short;
}

function inches(sixteenths) {
  const whole = Math.floor(sixteenths / 16);
  let part = sixteenths % 16, of = 16;
  while (part > 0 && part % 2 === 0) { part /= 2; of /= 2; }
  return part === 0 ? String(whole) : (whole === 0 ? '' : whole + '-') + part + '/' + of;
}

/** A length on the reader's tape: to the nearest sixteenth of an inch, or millimetres. */
export function said(mm, units) {
  if (units === 'si') return decimals(mm, Math.abs(mm) < 4.95 ? 1 : 0) + ' mm';
  const sixteenths = Math.round(Math.abs(mm) / 25.4 * 16), feet = sixteenths >= 36 * 16 ? Math.floor(sixteenths / 192) : 0, rest = sixteenths - feet * 192;
  const sign = mm < 0 && sixteenths > 0 ? '-' : '';
  if (feet === 0) return sign + inches(rest) + ' in';
  return sign + feet + ' ft' + (rest === 0 ? '' : ' ' + inches(rest) + ' in');
}

/** The smallest step of the reader's tape, mm. */
export const step = units => units === 'si' ? 1 : 25.4 / 16;

/** The nearest mark of the tape, mm. */
export const onTape = (mm, units) => Math.round(mm / step(units)) * step(units);
