import {
  blankEntry,
  compensatedSum,
  defaultEntry,
  type Entry,
  plainText,
  roundTo,
} from '../../quantities/index.ts';
import type { AmountBasis, LinePart } from '../slice.ts';
import type { Band, Family } from './family.ts';

/** A line to begin a batch of a family with. Its amount is a default, marked as one. */
export interface StartLine {
  readonly part: LinePart;
  readonly amount: Entry;
  readonly basis: AmountBasis;
}

/** What a new batch of a family begins with. */
export interface FamilyStart {
  readonly lines: readonly StartLine[];
  /** Salt from all sources, of everything in the bowl; blank where the family counts its salt on something else. */
  readonly saltTarget: Entry;
}

const PER_CENT = 100;
const G_PER_KG = 1000;
/** Decimals of a share in %, and of the salt target. */
const SHARE_DECIMALS = 1;
const SALT_DECIMALS = 2;

function middle({ min, max, usual }: Band): number {
  return usual ?? (min + max) / 2;
}

function percentEntry(fraction: number, decimals: number): Entry {
  return defaultEntry(plainText(roundTo(fraction * PER_CENT, decimals)), '%');
}

/** Pepper and spices together, of everything in the bowl. */
function seasoningFraction({ pepperGPerKg, spiceGPerKg }: Family): number {
  const doses = [pepperGPerKg, spiceGPerKg].map((dose) => (dose ? (dose[0] + dose[1]) / 2 : 0));
  return roundTo(compensatedSum(doses) / G_PER_KG, 3);
}

/**
 * Shares of the parts that leave nothing over: all at the same place between their least and most. Parts the family
 * may do without come in only where the others cannot fill the bowl; where even the least of each is more than the
 * bowl holds, the garnish is left for the cook to add.
 */
function partShares(family: Family, rest: number): [LinePart, number][] {
  const all = (Object.entries(family.parts) as [LinePart, Band][]).filter(([, band]) => band.max > 0);
  const needed = all.filter(([, band]) => band.min > 0);
  const most = compensatedSum(needed.map(([, band]) => band.max));
  const wanted = most >= rest ? needed : all;
  if (wanted.length === 0) return [['lean', rest]];
  const leastOf = (parts: typeof all) => compensatedSum(parts.map(([, band]) => band.min));
  const used = leastOf(wanted) > rest ? wanted.filter(([part]) => part !== 'garnish') : wanted;
  const least = leastOf(used);
  const room = compensatedSum(used.map(([, band]) => band.max - band.min));
  const place = room === 0 ? 0 : Math.min(1, Math.max(0, (rest - least) / room));
  return used.map(([part, { min, max }]) => [part, min + place * (max - min)]);
}

/**
 * Lines and salt for a new batch of a family. Shares lie inside the family's ranges and add up to everything in the
 * bowl; the largest is a weight, so that the others follow from it. No curing salt: its strength has no default.
 * Common practice, no source, as the ranges are.
 *
 * @param totalG everything in the bowl, about
 */
export function familyStart(family: Family, totalG: number): FamilyStart {
  const ofTotal = family.saltOf === 'total';
  const salt = family.salt && (ofTotal || family.saltOf === 'meat') ? middle(family.salt) : null;
  const seasoning = seasoningFraction(family);
  const rest = 1 - seasoning - (ofTotal ? (salt ?? 0) : 0);
  // Salt counted on the meat comes on top of it: meat × (1 + salt) is what is left.
  const parts = partShares(family, ofTotal || salt === null ? rest : rest / (1 + salt));
  const [anchor] = parts.toSorted(([, a], [, b]) => b - a);
  const others = parts.filter((part) => part !== anchor);
  const rounded = others.map(([part, share]) => [part, roundTo(share, SHARE_DECIMALS + 2)] as const);
  const whole = ofTotal || salt === null ? rest : rest / (1 + salt);
  const anchorShare = whole - compensatedSum(rounded.map(([, share]) => share));
  const lines: StartLine[] = [];
  for (const [part] of parts) {
    const share = rounded.find(([other]) => other === part)?.[1];
    lines.push(
      share === undefined
        ? { part, basis: 'mass', amount: defaultEntry(plainText(roundTo(anchorShare * totalG, 0)), 'g') }
        : { part, basis: 'percent-of-total', amount: percentEntry(share, SHARE_DECIMALS) },
    );
  }
  if (seasoning > 0)
    lines.push({
      part: 'seasoning',
      basis: 'percent-of-total',
      amount: percentEntry(seasoning, SHARE_DECIMALS),
    });
  if (family.salt)
    lines.push({
      part: 'salt',
      basis: ofTotal || salt === null ? 'percent-of-total' : 'percent-of-meat',
      amount: salt === null ? blankEntry('g') : percentEntry(salt, SALT_DECIMALS),
    });
  return {
    lines: lines.map((line) => (line.amount.text === '' ? { ...line, basis: 'mass' } : line)),
    saltTarget: ofTotal && salt !== null ? percentEntry(salt, SALT_DECIMALS) : blankEntry('%'),
  };
}
