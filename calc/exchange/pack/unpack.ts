import { ABSENT, BAR, BEFORE, LIST, LOOSE, MOMENTS, type Plain, ROWS, SAME, SHAPED } from './codes.ts';
import { unpackMoments } from './moments.ts';
import { SHAPES } from './shapes.ts';

/** Most values a packed text may unfold into: one of its codes repeats a value as often as it says. */
const MOST_VALUES = 500_000;
const MOST_DEEP = 40;

/** What came packed does not follow the codes. */
export class NotPacked extends Error {}

function refuse(what: string): never {
  throw new NotPacked(what);
}

class Unpacker {
  private left = MOST_VALUES;

  value(packed: unknown, depth: number): Plain {
    this.left -= 1;
    if (this.left < 0 || depth > MOST_DEEP) refuse('too much');
    if (packed === null || ['string', 'number', 'boolean'].includes(typeof packed)) return packed as Plain;
    if (!Array.isArray(packed)) refuse('no code');
    const [code, ...rest] = packed as unknown[];
    if (typeof code !== 'number') refuse('no code');
    if (code === LIST) return rest.map((part) => this.value(part, depth + 1));
    if (code === ROWS) return this.rows(rest, depth + 1);
    if (code === LOOSE) return this.loose(rest, depth + 1);
    return this.object(this.shape(code - SHAPED), rest, depth + 1);
  }

  private shape(place: unknown): readonly string[] {
    const keys = typeof place === 'number' ? SHAPES[place] : undefined;
    return keys ?? refuse('no such shape');
  }

  private object(keys: readonly string[], values: readonly unknown[], depth: number): Plain {
    if (values.length !== keys.length) refuse('values missing');
    return Object.fromEntries(keys.map((key, index) => [key, this.value(values[index], depth)]));
  }

  private loose([shape, values, keys, ...more]: unknown[], depth: number): Plain {
    const known = shape === -1 ? [] : this.shape(shape);
    if (!Array.isArray(values) || !Array.isArray(keys) || values.length !== known.length)
      refuse('values missing');
    const isAbsent = (part: unknown) => Array.isArray(part) && part.length === 1 && part[0] === ABSENT;
    const pairs: [string, Plain][] = [];
    for (const [index, key] of known.entries())
      if (!isAbsent(values[index])) pairs.push([key, this.value(values[index], depth)]);
    for (const [index, key] of keys.entries()) {
      if (typeof key !== 'string' || index >= more.length) refuse('values missing');
      pairs.push([key, this.value(more[index], depth)]);
    }
    return Object.fromEntries(pairs);
  }

  private rows([count, shape, ...columns]: unknown[], depth: number): Plain[] {
    const keys = this.shape(shape);
    if (typeof count !== 'number' || !Number.isInteger(count) || count < 1 || count > MOST_VALUES)
      refuse('no count');
    if (columns.length !== keys.length) refuse('columns missing');
    let before: readonly Plain[] = [];
    const unfolded = columns.map((column) => {
      before = this.column(column, count, before, depth + 1);
      return before;
    });
    return Array.from({ length: count }, (_, row) =>
      Object.fromEntries(keys.map((key, index) => [key, unfolded[index]?.[row] ?? null])),
    );
  }

  private column(packed: unknown, count: number, before: readonly Plain[], depth: number): readonly Plain[] {
    this.left -= count;
    if (this.left < 0 || depth > MOST_DEEP) refuse('too much');
    if (typeof packed === 'string') return this.counted(packed.split(BAR), count);
    if (!Array.isArray(packed)) refuse('no column');
    const [code, ...rest] = packed as unknown[];
    if (code === SAME) return Array.from({ length: count }, () => this.value(rest[0], depth));
    if (code === BEFORE) return this.counted(before, count);
    if (code === MOMENTS) {
      const [first, steps] = rest;
      if (typeof first !== 'string' || typeof steps !== 'string') refuse('no moments');
      return this.counted(unpackMoments(first, steps), count);
    }
    const values = this.value(packed, depth);
    return Array.isArray(values) ? this.counted(values, count) : refuse('no column');
  }

  private counted(values: readonly Plain[], count: number): readonly Plain[] {
    return values.length === count ? values : refuse('column too short or too long');
  }
}

/**
 * Unfolds packed data.
 *
 * @param packed parsed JSON of unknown origin
 * @throws NotPacked when it does not follow the codes, or would unfold into more than any record holds
 */
export function unpack(packed: unknown): Plain {
  return new Unpacker().value(packed, 0);
}
