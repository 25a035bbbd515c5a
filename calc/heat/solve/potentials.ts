import type { EnthalpyTable } from '../properties/index.ts';

/** Kirchhoff potentials, W/m, of `count` enthalpies that begin at `offset` of a state. */
export function potentials(
  table: EnthalpyTable,
  state: Float64Array,
  into: Float64Array,
  offset: number,
  count: number,
): void {
  const { first, density, last, kirchhoff } = table;
  for (let i = 0; i < count; i++) {
    const place = ((state[offset + i] as number) - first) * density;
    const index = place < 0 ? 0 : place > last ? last : place | 0;
    const low = kirchhoff[index] as number;
    into[i] = low + (place - index) * ((kirchhoff[index + 1] as number) - low);
  }
}
