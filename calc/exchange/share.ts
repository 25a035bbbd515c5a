import { deflateSync, Inflate, strFromU8, strToU8 } from 'fflate';
import { type Batch, type ReadBatch, readBatch, withoutPeople } from '../batch/index.ts';
import { fromBase64Url, toBase64Url } from './base64url.ts';
import { crc32 } from './checksum.ts';
import { inspectJson } from './inspect-json.ts';
import type { Plain } from './pack/codes.ts';
import { pack } from './pack/pack.ts';
import { NotPacked, unpack } from './pack/unpack.ts';
import { SHARE_DICTIONARY_1 } from './share-dictionary.ts';

/** Version of the form of a link, before its first full stop. */
const VERSION = 1;
/** Longest part of an address that is made or read, characters. Beyond it a file is the better way. */
export const MOST_SHARE_CHARACTERS = 16_000;
/** Most a link may unfold into, bytes. */
const MOST_BYTES = 2_000_000;
/** Compressed bytes unfolded at a time, so that a bomb is noticed before it has gone off. */
const STEP_BYTES = 512;
const CRC_BYTES = 4;

const dictionary = strToU8(SHARE_DICTIONARY_1);

/**
 * A batch as the text of a share link: packed, compressed, letters that stand in an address as they are. Names of people,
 * initials and sign-offs are left out.
 *
 * @returns the text after the `#`; it is longer than `MOST_SHARE_CHARACTERS` where the batch is too large for a link
 */
export function shareText(batch: Batch): string {
  const plain = JSON.parse(JSON.stringify(withoutPeople(batch))) as Plain;
  const bytes = strToU8(JSON.stringify(pack(plain)));
  const packed = deflateSync(bytes, { level: 9, mem: 9, dictionary });
  const whole = new Uint8Array(CRC_BYTES + packed.length);
  new DataView(whole.buffer).setUint32(0, crc32(bytes));
  whole.set(packed, CRC_BYTES);
  return `${VERSION}.${toBase64Url(whole)}`;
}

/** What is wrong with a link. */
export type ShareProblem =
  | { readonly problem: 'no-link' | 'too-long' | 'cut-or-changed' | 'too-much-inside' | 'forbidden' }
  | { readonly problem: 'newer-link'; readonly version: number };

export type OpenedShare = ReadBatch | ({ readonly ok: false } & ShareProblem);

/** Unfolds step by step and stops when it becomes too much. Null: the bytes are no compressed text, or are cut. */
function inflated(bytes: Uint8Array): Uint8Array | null | 'too-much' {
  const parts: Uint8Array[] = [];
  let size = 0;
  let isWhole = false;
  const stream = new Inflate({ dictionary }, (part, final) => {
    size += part.length;
    isWhole ||= final;
    parts.push(part);
  });
  try {
    for (let at = 0; at < bytes.length; at += STEP_BYTES) {
      stream.push(bytes.subarray(at, at + STEP_BYTES), at + STEP_BYTES >= bytes.length);
      if (size > MOST_BYTES) return 'too-much';
    }
  } catch {
    return null;
  }
  if (!isWhole) return null;
  const whole = new Uint8Array(size);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/**
 * Reads the text of a share link. It is of unknown origin: nothing in it is trusted.
 *
 * @param text what stands after the `#`
 */
export function openShare(text: string): OpenedShare {
  if (text === '') return { ok: false, problem: 'no-link' };
  if (text.length > MOST_SHARE_CHARACTERS) return { ok: false, problem: 'too-long' };
  const [, version = '', payload = ''] = /^(\d{1,6})\.(.*)$/s.exec(text) ?? [];
  if (version === '') return { ok: false, problem: 'no-link' };
  if (Number(version) > VERSION) return { ok: false, problem: 'newer-link', version: Number(version) };
  const whole = fromBase64Url(payload);
  if (Number(version) !== VERSION || whole === null || whole.length <= CRC_BYTES)
    return { ok: false, problem: 'cut-or-changed' };
  const bytes = inflated(whole.subarray(CRC_BYTES));
  if (bytes === 'too-much') return { ok: false, problem: 'too-much-inside' };
  if (bytes === null || crc32(bytes) !== new DataView(whole.buffer, whole.byteOffset).getUint32(0))
    return { ok: false, problem: 'cut-or-changed' };
  try {
    const plain = unpack(JSON.parse(strFromU8(bytes)));
    return inspectJson(plain) ? { ok: false, problem: 'forbidden' } : readBatch(plain);
  } catch (error) {
    return { ok: false, problem: error instanceof NotPacked ? 'forbidden' : 'cut-or-changed' };
  }
}
