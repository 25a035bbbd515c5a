import type { Mark, SourceId } from '../sources/index.ts';
import { COOKED_HAM_NAMES, COOKED_SAUSAGE } from './us-standards.ts';

/** What a standard of composition bounds. Ice is water and ice as they go in; pff is protein on a fat-free basis. */
export type StandardQuality = 'fat' | 'added-water' | 'fat-and-added-water' | 'ice' | 'liver' | 'pff';

export interface StandardLimit {
  readonly quality: StandardQuality;
  readonly side: 'most' | 'least';
  readonly fraction: number;
  /** Of the finished product, or of everything that goes in. */
  readonly of: 'finished' | 'ingredients';
  /** Where the law says so. */
  readonly section: string;
}

/** What a product must keep to if it is sold under a name. */
export interface NamedStandard {
  readonly id: string;
  readonly name: string;
  /** Sold cooked: what is lost in the cook moves what is told of the finished product. */
  readonly cooked: boolean;
  readonly limits: readonly StandardLimit[];
  readonly source: SourceId;
  readonly mark: Mark;
}

const PART_319 = { source: 'us-9-cfr-319', mark: 'confirmed' } as const;
const PFF = { source: 'us-9-cfr-319-104', mark: 'confirmed' } as const;
/** Most added water of cooked sausages that have no standard of their own: 9 CFR 319.140. */
const TENTH_WATER: StandardLimit = {
  quality: 'added-water',
  side: 'most',
  fraction: 0.1,
  of: 'finished',
  section: '9 CFR 319.140',
};
/** Most water and ice of sausages that are not cooked: 9 CFR 319.140. */
const RAW_WATER: StandardLimit = {
  quality: 'ice',
  side: 'most',
  fraction: 0.03,
  of: 'ingredients',
  section: '9 CFR 319.140',
};

function leastLiver(section: string): StandardLimit {
  return { quality: 'liver', side: 'least', fraction: 0.3, of: 'ingredients', section };
}

/** Standards of composition of the United States by the name a product is sold under. Other countries have their own. */
export const NAMED_STANDARDS: readonly NamedStandard[] = [
  {
    ...PART_319,
    id: 'us-raw-sausage',
    name: 'Sausage, not cooked',
    cooked: false,
    limits: [RAW_WATER],
  },
  {
    ...PART_319,
    id: 'us-fresh-pork-sausage',
    name: 'Fresh pork sausage',
    cooked: false,
    limits: [
      { quality: 'fat', side: 'most', fraction: 0.5, of: 'finished', section: '9 CFR 319.141' },
      { ...RAW_WATER, section: '9 CFR 319.141' },
    ],
  },
  {
    ...PART_319,
    id: 'us-cooked-sausage',
    name: 'Cooked sausage of Polish or cotto kind',
    cooked: true,
    limits: [TENTH_WATER],
  },
  {
    ...PART_319,
    id: 'us-frankfurter',
    name: 'Frankfurter, bologna and kin',
    cooked: true,
    limits: [
      {
        quality: 'fat',
        side: 'most',
        fraction: COOKED_SAUSAGE.fatFraction,
        of: 'finished',
        section: '9 CFR 319.180(a)',
      },
      {
        quality: 'fat-and-added-water',
        side: 'most',
        fraction: COOKED_SAUSAGE.fatAndWaterFraction,
        of: 'finished',
        section: '9 CFR 319.180(a)',
      },
    ],
  },
  {
    ...PART_319,
    id: 'us-liver-sausage',
    name: 'Liver sausage, liverwurst, braunschweiger',
    cooked: true,
    limits: [leastLiver('9 CFR 319.182'), TENTH_WATER],
  },
  {
    ...PART_319,
    id: 'us-liver-paste',
    name: 'Liver loaf, cheese, spread, mush, paste or pudding',
    cooked: true,
    limits: [leastLiver('9 CFR 319.881')],
  },
  ...COOKED_HAM_NAMES.map(
    ({ name, leastPffPercent }): NamedStandard => ({
      ...PFF,
      id: `us-${name.replaceAll(/\W+/g, '-')}`,
      name: `Cooked ${name}`,
      cooked: true,
      limits: [
        {
          quality: 'pff',
          side: 'least',
          fraction: leastPffPercent / 100,
          of: 'finished',
          section: '9 CFR 319.104(a)',
        },
      ],
    }),
  ),
];

/** A standard by its id. */
export function namedStandardOf(id: string | null): NamedStandard | undefined {
  return NAMED_STANDARDS.find((standard) => standard.id === id);
}
