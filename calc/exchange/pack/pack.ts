import {
  ABSENT,
  BAR,
  BEFORE,
  LIST,
  LOOSE,
  MOMENTS,
  type Packed,
  type Plain,
  ROWS,
  SAME,
  SHAPED,
} from './codes.ts';
import { packMoments } from './moments.ts';
import { exactShape, nearestShape, SHAPES } from './shapes.ts';

type PlainObject = { readonly [key: string]: Plain };

const isObject = (value: Plain | undefined): value is PlainObject =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const same = (a: unknown, b: unknown) => JSON.stringify(a) === JSON.stringify(b);
const shapeOf = (value: Plain | undefined) => (isObject(value) ? exactShape(Object.keys(value)) : null);

/** Packs plain JSON data. `unpack` gives the same data back, in the key order of the shapes. */
export function pack(value: Plain): Packed {
  if (Array.isArray(value)) return packList(value);
  return isObject(value) ? packObject(value) : (value as Packed);
}

function packList(list: readonly Plain[]): Packed {
  const shape = shapeOf(list[0]);
  return shape !== null && list.length > 1 && list.every((row) => shapeOf(row) === shape)
    ? packRows(list as readonly PlainObject[], shape)
    : [LIST, ...list.map(pack)];
}

function packObject(value: PlainObject): Packed {
  const keys = Object.keys(value);
  const exact = exactShape(keys);
  const values = (shape: number | null) =>
    (shape === null ? [] : (SHAPES[shape] ?? [])).map((key): Packed => {
      const part = Object.hasOwn(value, key) ? value[key] : undefined;
      return part === undefined ? [ABSENT] : pack(part);
    });
  if (exact !== null) return [SHAPED + exact, ...values(exact)];
  const nearest = nearestShape(keys);
  const more = keys.filter((key) => nearest === null || !SHAPES[nearest]?.includes(key));
  return [LOOSE, nearest ?? -1, values(nearest), more, ...more.map((key) => pack(value[key] ?? null))];
}

function packRows(rows: readonly PlainObject[], shape: number): Packed {
  let before: readonly Plain[] | null = null;
  const columns = (SHAPES[shape] ?? []).map((key) => {
    const column = rows.map((row) => row[key] ?? null);
    const packed: Packed = before !== null && same(before, column) ? [BEFORE] : packColumn(column);
    before = column;
    return packed;
  });
  return [ROWS, rows.length, shape, ...columns];
}

function packColumn(column: readonly Plain[]): Packed {
  const [first = null] = column;
  if (column.every((value) => same(value, first))) return [SAME, pack(first)];
  const shape = shapeOf(first);
  if (shape !== null && column.every((value) => shapeOf(value) === shape))
    return packRows(column as readonly PlainObject[], shape);
  if (column.every((value): value is string => typeof value === 'string')) {
    const moments = packMoments(column);
    if (moments) return [MOMENTS, moments.first, moments.steps];
    if (!column.some((text) => text.includes(BAR))) return column.join(BAR);
  }
  return [LIST, ...column.map(pack)];
}
