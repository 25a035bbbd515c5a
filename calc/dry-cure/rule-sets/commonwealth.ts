import { SOURCES } from '../../sources/index.ts';
import type { WholeMuscleLimit, WholeMuscleRuleSet } from './limit.ts';

const base = {
  substance: 'nitrite',
  role: 'ceiling',
  heating: 'any',
} as const satisfies Partial<WholeMuscleLimit>;

const canada = {
  ...base,
  kind: 'ingoing',
  expressedAs: 'nitrite-and-nitrate-salts',
  basis: 'total',
  source: 'ca-cured-meat',
  mark: 'confirmed',
} as const satisfies Partial<WholeMuscleLimit>;

/** Nitrite and nitrate together, each as its salt, on the whole raw batch. */
export const CANADA_FEDERAL: WholeMuscleRuleSet = {
  id: 'canada-federal',
  title: 'Nitrite and nitrate in cured whole muscle and side bacon',
  jurisdiction: 'Canada, federal',
  ingoingBasis: 'total',
  edition: SOURCES['ca-cured-meat'].edition,
  reviewed: SOURCES['ca-cured-meat'].reviewed,
  sources: ['ca-cured-meat'],
  mark: 'confirmed',
  limits: [
    { ...canada, id: 'canada-side-bacon', products: ['bacon'], valuePpm: 120, printed: '120' },
    {
      ...canada,
      id: 'canada-cured-muscle',
      products: ['ham', 'other'],
      valuePpm: 200,
      printed: '200',
      asWritten: '0.32 oz to 100 lb',
    },
    { ...canada, id: 'canada-called-cured', role: 'naming-floor', valuePpm: 100, printed: '100' },
  ],
};

const gbResidual = {
  ...base,
  kind: 'residual',
  traditional: true,
  expressedAs: 'sodium-nitrite',
  basis: 'finished',
  source: 'gb-traditional-cures',
  mark: 'confirmed',
} as const satisfies Partial<WholeMuscleLimit>;

/** 150 added; the traditional cures the law lists have a limit on what is left instead. */
export const GREAT_BRITAIN: WholeMuscleRuleSet = {
  id: 'great-britain',
  title: 'Nitrite added to meat products, and left in traditional cures',
  jurisdiction: 'Great Britain',
  ingoingBasis: 'total',
  edition: SOURCES['gb-1333-2008'].edition,
  reviewed: SOURCES['gb-1333-2008'].reviewed,
  sources: ['gb-1333-2008', 'gb-traditional-cures'],
  mark: 'confirmed',
  limits: [
    {
      ...base,
      id: 'gb-nitrite-added',
      kind: 'ingoing',
      traditional: false,
      valuePpm: 150,
      printed: '150',
      expressedAs: 'sodium-nitrite',
      basis: 'total',
      source: 'gb-1333-2008',
      mark: 'confirmed',
    },
    { ...gbResidual, id: 'gb-traditional-bacon', products: ['bacon'], valuePpm: 175, printed: '175' },
    { ...gbResidual, id: 'gb-traditional-ham', products: ['ham'], valuePpm: 100, printed: '100' },
  ],
};

/** What may be left, nitrite and nitrate together as sodium nitrite. No limit on what is put in. */
export const AUSTRALIA_NEW_ZEALAND: WholeMuscleRuleSet = {
  id: 'australia-new-zealand',
  title: 'Nitrite left in cured meat',
  jurisdiction: 'Australia and New Zealand',
  ingoingBasis: 'total',
  edition: SOURCES['anz-schedule-15'].edition,
  reviewed: SOURCES['anz-schedule-15'].reviewed,
  sources: ['anz-schedule-15'],
  mark: 'memory',
  limits: [
    {
      ...base,
      id: 'anz-nitrite-in-cured-meat',
      kind: 'residual',
      valuePpm: 125,
      printed: '125',
      expressedAs: 'nitrite-and-nitrate-as-sodium-nitrite',
      basis: 'finished',
      source: 'anz-schedule-15',
      mark: 'memory',
    },
  ],
};
