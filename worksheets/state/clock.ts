const two = (n: number) => String(n).padStart(2, '0');

/** A moment as ISO 8601 with this device's offset: the wall clock and the instant both survive. */
function localIso(date: Date): string {
  const offset = -date.getTimezoneOffset();
  const sign = offset < 0 ? '-' : '+';
  const zone = `${sign}${two(Math.floor(Math.abs(offset) / 60))}:${two(Math.abs(offset) % 60)}`;
  const day = `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
  return `${day}T${two(date.getHours())}:${two(date.getMinutes())}:${two(date.getSeconds())}${zone}`;
}

/** Now, as the batch records it. */
export function nowIso(): string {
  return localIso(new Date());
}

/** The zone this device keeps, as an IANA name. */
export function zoneHere(): string {
  return Intl.DateTimeFormat().resolvedOptions().timeZone || 'UTC';
}

/** Letters that are not mistaken for one another. */
const ID_LETTERS = '23456789abcdefghijkmnpqrstuvwxyz';
const PAGE_LETTERS = 7;

/** Rows this page has made, after letters that no other page has: 35 bits of chance. */
let page = '';
let rows = 0;

/**
 * A fresh id for a row of a batch: unlike any that this or another page gives. Rows of one page begin alike, so that a
 * share link, in which every id stands, stays short.
 */
export function newId(): string {
  if (page === '') {
    const bytes = crypto.getRandomValues(new Uint8Array(PAGE_LETTERS));
    // A letter first: an id is never taken for a number.
    page = `r${Array.from(bytes, (byte) => ID_LETTERS.charAt(byte % ID_LETTERS.length)).join('')}`;
  }
  rows += 1;
  return `${page}${rows.toString(36)}`;
}

/** A fresh id for a record, unlike any on any device. */
export function newRecordId(): string {
  // randomUUID is missing on plain http in a kitchen's own network.
  if (typeof crypto.randomUUID === 'function') return crypto.randomUUID();
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}
