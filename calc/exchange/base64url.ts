/** The alphabet of RFC 4648 section 5, which stands in an address as it is. */
const ALPHABET = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
const VALUES = new Map(Array.from(ALPHABET, (letter, value) => [letter, value] as const));

/** Bytes as base64url text without padding. */
export function toBase64Url(bytes: Uint8Array): string {
  let text = '';
  let bits = 0;
  let held = 0;
  for (const byte of bytes) {
    held = ((held << 8) | byte) & 0xffff;
    bits += 8;
    while (bits >= 6) {
      bits -= 6;
      text += ALPHABET.charAt((held >> bits) & 63);
    }
  }
  return bits > 0 ? text + ALPHABET.charAt((held << (6 - bits)) & 63) : text;
}

/** The bytes of a base64url text, or null for any other text, spare bits that are not zero included. */
export function fromBase64Url(text: string): Uint8Array | null {
  const bytes = new Uint8Array(Math.floor((text.length * 6) / 8));
  let bits = 0;
  let held = 0;
  let at = 0;
  for (const letter of text) {
    const value = VALUES.get(letter);
    if (value === undefined) return null;
    held = ((held << 6) | value) & 0xffff;
    bits += 6;
    if (bits < 8) continue;
    bits -= 8;
    bytes[at] = (held >> bits) & 0xff;
    at += 1;
  }
  return bits >= 6 || (held & ((1 << bits) - 1)) !== 0 ? null : bytes;
}
