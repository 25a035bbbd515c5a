import { compensatedSum } from '../quantities/index.ts';
import { COMPONENTS } from './line-composition.ts';
import { type Mix, type MixComponent, makeComponent } from './mix.ts';
import { isInBowl } from './parts.ts';
import type { ReadLine } from './read-line.ts';

/**
 * The mix with its lining: what is sliced and eaten where the lining stays on. The mix keeps its own figures beside it:
 * a lining seasons the outer centimetre and cures nothing, so salt targets, salt on water and the weight a cure is
 * dosed on stay those of the bowl.
 */
export interface LinedMix {
  /** All lining, g; null while a weight is missing. */
  readonly liningG: number | null;
  /** Bowl and lining together, g. */
  readonly totalG: number | null;
  readonly water: MixComponent;
  readonly protein: MixComponent;
  readonly fat: MixComponent;
  readonly salt: MixComponent;
  /** Salt the lining brings, g; null while it is not known. */
  readonly liningSaltG: number | null;
}

/**
 * A mix with what lines its moulds, or null where nothing does. Every lining line counts once.
 * Derived: sums of mass × fraction.
 *
 * @param mix made of the same lines in the same order
 */
export function linedMix(lines: readonly ReadLine[], mix: Mix): LinedMix | null {
  const masses = lines.map((line, index) => ({ line, massG: mix.lines[index]?.massG ?? null }));
  const lining = masses.filter(({ line, massG }) => !isInBowl(line.line.part) && massG !== 0);
  if (lining.length === 0) return null;
  const known = lining.map(({ massG }) => massG).filter((massG) => massG !== null);
  const liningG = known.length === lining.length ? compensatedSum(known) : null;
  const totalG = mix.totalG === null || liningG === null ? null : compensatedSum([mix.totalG, liningG]);
  const [water, protein, fat, salt] = COMPONENTS.map((name) => makeComponent(name, masses, totalG)) as [
    MixComponent,
    MixComponent,
    MixComponent,
    MixComponent,
  ];
  const ids = new Set(lining.map(({ line }) => line.line.id));
  const salts = salt.contributions.filter(({ lineId }) => ids.has(lineId)).map(({ grams }) => grams);
  return {
    liningG,
    totalG,
    water,
    protein,
    fat,
    salt,
    liningSaltG: salts.includes(null) ? null : compensatedSum(salts.map((grams) => grams ?? 0)),
  };
}
