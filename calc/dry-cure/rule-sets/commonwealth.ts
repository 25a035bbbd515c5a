import { SHARED_ROWS } from '../../cure/index.ts';
import { SOURCES } from '../../sources/index.ts';
import type { WholeMuscleLimit, WholeMuscleRuleSet } from './limit.ts';

const heating = 'any';
const { canadaPutIn, canadaCalledCured, gbPutIn, anzLeft } = SHARED_ROWS;

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
    {
      ...canadaCalledCured,
      role: 'ceiling',
      id: 'canada-side-bacon',
      heating,
      products: ['bacon'],
      valuePpm: 120,
      printed: '120',
    },
    { ...canadaPutIn, id: 'canada-cured-muscle', heating, products: ['ham', 'other'] },
    { ...canadaCalledCured, id: 'canada-called-cured', heating },
  ],
};

const gbResidual = {
  substance: 'nitrite',
  role: 'ceiling',
  heating,
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
    { ...gbPutIn, id: 'gb-nitrite-added', heating, traditional: false },
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
  limits: [{ ...anzLeft, id: 'anz-nitrite-in-cured-meat', heating }],
};
