import type { Mark, SourceId } from '../sources/index.ts';
import type { PanadeKind } from './slice.ts';

/** One part of a panade, by mass. */
export interface PanadePart {
  readonly name: string;
  readonly ingredientId: string | null;
  readonly parts: number;
}

/** A kind of panade with usual parts. */
export interface Panade {
  readonly kind: PanadeKind;
  readonly name: string;
  readonly parts: readonly PanadePart[];
  /** Steam lost in the pan, share of the raw mass: from memory, no source. Weigh it. */
  readonly lossFraction: number;
  /** How the parts are known. */
  readonly mark: Mark;
}

export const PANADE_SOURCE: SourceId = 'trade-binder-habits';

const BREAD: PanadePart = { name: 'White bread, crusts off', ingredientId: 'kitchen-bread-white', parts: 1 };
const MILK = { name: 'Milk', ingredientId: 'kitchen-milk-whole' } as const;
const FLOUR: PanadePart = { name: 'Wheat flour', ingredientId: 'flour-wheat-white', parts: 1 };
const BUTTER = { name: 'Butter', ingredientId: 'kitchen-butter-unsalted' } as const;

/** Panades by parts: bread and flour common practice, the others from memory, no source. */
export const PANADES: readonly Panade[] = [
  { kind: 'none', name: 'None', parts: [], lossFraction: 0, mark: 'common-practice' },
  {
    kind: 'bread',
    name: 'Bread and milk',
    parts: [BREAD, { ...MILK, parts: 1.25 }],
    lossFraction: 0.05,
    mark: 'common-practice',
  },
  {
    kind: 'flour',
    name: 'Flour, boiled',
    parts: [FLOUR, { ...MILK, parts: 2 }, { ...BUTTER, parts: 0.4 }],
    lossFraction: 0.1,
    mark: 'common-practice',
  },
  {
    kind: 'choux',
    name: 'Choux type, flour with egg',
    parts: [
      FLOUR,
      { ...MILK, parts: 2 },
      { ...BUTTER, parts: 0.4 },
      { name: 'Egg', ingredientId: 'kitchen-egg', parts: 0.8 },
    ],
    lossFraction: 0.1,
    mark: 'memory',
  },
  {
    kind: 'rice',
    name: 'Rice, cooked soft',
    parts: [
      { name: 'Rice, raw', ingredientId: 'rice-white-raw', parts: 1 },
      { ...MILK, parts: 4 },
    ],
    lossFraction: 0.15,
    mark: 'memory',
  },
  {
    kind: 'potato',
    name: 'Potato, cooked and sieved',
    parts: [
      { name: 'Potato', ingredientId: 'potato', parts: 4 },
      { ...MILK, parts: 1 },
    ],
    lossFraction: 0.1,
    mark: 'memory',
  },
];

/** A panade of a kind. */
export function panadeOf(kind: PanadeKind): Panade {
  const found = PANADES.find((panade) => panade.kind === kind);
  if (!found) throw new Error(`No panade of kind ${kind}`);
  return found;
}

/** Shares of panade on the meat, cooked and cold. Common practice, no source. */
export const PANADE_SHARE = { usual: 0.1, most: 0.2 } as const;
/** Warmest a panade goes into meat, and where it does harm, °C. Common practice, no source. */
export const PANADE_C = { most: 4, harm: 7 } as const;

/**
 * Raw panade for a mass of cooked: cooked ÷ (1 − loss). Derived.
 * @returns g, or null for what is no mass or a loss of all
 * @example rawPanadeG(240, 0.1) // 266.7
 */
export function rawPanadeG(cookedG: number, lossFraction: number): number | null {
  if (!(cookedG >= 0) || !Number.isFinite(cookedG) || !(lossFraction >= 0) || !(lossFraction < 1))
    return null;
  return cookedG / (1 - lossFraction);
}
