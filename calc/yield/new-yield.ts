import { blankEntry } from '../quantities/index.ts';
import type { TrimPart, TrimRole, YieldSlice, YieldTest, YieldTrial } from './slice.ts';

/** No trial yet. */
export function newYieldSlice(): YieldSlice {
  return { tests: [] };
}

/** The piles most cuts part into. */
const USUAL_PARTS: readonly (readonly [id: string, name: string, role: TrimRole])[] = [
  ['lean', 'Trimmed lean', 'usable'],
  ['fat', 'Usable fat', 'by-product'],
  ['garnish', 'Garnish pieces', 'usable'],
  ['skin-bone', 'Skin and bone', 'by-product'],
  ['waste', 'Sinew, glands and waste', 'waste'],
];

/** A test with the usual piles and one trial, nothing weighed. */
export function newYieldTest(id: string, trialId: string): YieldTest {
  const parts = USUAL_PARTS.map(([partId, name, role]) => newTrimPart(partId, name, role));
  return {
    id,
    name: '',
    price: blankEntry('money'),
    priceBasis: 'kg',
    parts,
    trials: [newYieldTrial(trialId, parts)],
    needed: blankEntry('kg'),
    usualLow: blankEntry('%'),
    usualHigh: blankEntry('%'),
  };
}

/** A pile of its own. */
export function newTrimPart(id: string, name: string, role: TrimRole): TrimPart {
  return { id, name, role, value: blankEntry('money') };
}

/** A trial of a test's piles, nothing weighed. */
export function newYieldTrial(id: string, parts: readonly TrimPart[]): YieldTrial {
  return {
    id,
    on: '',
    by: '',
    purchased: blankEntry('kg'),
    parts: Object.fromEntries(parts.map((part) => [part.id, blankEntry('g')])),
  };
}
