/*
 * FNV-1a, 64 bit, as its authors publish it (Fowler, Noll, Vo): no secret, no defence against a forger; it tells
 * that a text is not the one it was.
 */
const OFFSET_BASIS = 0xcbf29ce484222325n;
const PRIME = 0x100000001b3n;

/** Bytes of a text in UTF-8. Half a surrogate pair counts as U+FFFD. */
function utf8(text: string): number[] {
  const bytes: number[] = [];
  for (const sign of text.toWellFormed()) {
    const code = sign.codePointAt(0) ?? 0;
    const tail = (shift: number) => 0x80 | ((code >> shift) & 0x3f);
    if (code < 0x80) bytes.push(code);
    else if (code < 0x800) bytes.push(0xc0 | (code >> 6), tail(0));
    else if (code < 0x10000) bytes.push(0xe0 | (code >> 12), tail(6), tail(0));
    else bytes.push(0xf0 | (code >> 18), tail(12), tail(6), tail(0));
  }
  return bytes;
}

/**
 * Checksum of a text: 16 hexadecimal digits.
 *
 * @example checksum('a') // 'af63dc4c8601ec8c'
 */
export function checksum(text: string): string {
  let sum = OFFSET_BASIS;
  for (const byte of utf8(text)) sum = BigInt.asUintN(64, (sum ^ BigInt(byte)) * PRIME);
  return sum.toString(16).padStart(16, '0');
}
