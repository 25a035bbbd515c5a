import { SHARED_ROWS } from '../../cure/index.ts';
import { SOURCES } from '../../sources/index.ts';
import type { WholeMuscleLimit, WholeMuscleRuleSet } from './limit.ts';

const OUNCES_PER_HUNDREDWEIGHT = 1600;
const MG_PER_KG = 1e6;
/** The law's pickle: 10 lb to the US gallon, 10 % pumped, 100 gallons. */
const POUNDS_OF_PICKLE = 1000;
const PUMPED = 0.1;

const onMeat = {
  substance: 'nitrite',
  kind: 'ingoing',
  role: 'ceiling',
  heating: 'any',
  expressedAs: 'sodium-nitrite',
  basis: 'meat-block',
  mark: 'confirmed',
} as const satisfies Partial<WholeMuscleLimit>;

/** 9 CFR 424.21(c) and, for bacon, 424.22(b): green weight, skin-free for bellies. */
export const US_FEDERAL: WholeMuscleRuleSet = {
  id: 'us-federal',
  title: 'Nitrite in cured whole muscle and bacon',
  jurisdiction: 'United States, federal inspection',
  ingoingBasis: 'meat-block',
  edition: SOURCES['us-9-cfr-424-21-c'].edition,
  reviewed: SOURCES['us-9-cfr-424-21-c'].reviewed,
  sources: ['us-9-cfr-424-21-c', 'us-9-cfr-424-22-b', 'us-fsis-7620-3'],
  mark: 'confirmed',
  limits: [
    {
      ...onMeat,
      id: 'us-nitrite-dry-cured',
      products: ['ham', 'other'],
      routes: ['dry'],
      valuePpm: (1 / OUNCES_PER_HUNDREDWEIGHT) * MG_PER_KG,
      printed: '625',
      source: 'us-9-cfr-424-21-c',
      asWritten: '1 oz to 100 lb',
    },
    {
      ...onMeat,
      id: 'us-nitrite-pickle',
      products: ['ham', 'other'],
      routes: ['immersion', 'pumped'],
      valuePpm: ((2 * PUMPED) / POUNDS_OF_PICKLE) * MG_PER_KG,
      printed: '200',
      source: 'us-9-cfr-424-21-c',
      asWritten: '2 lb to 100 gallons of pickle at a 10 % pump',
    },
    {
      ...onMeat,
      id: 'us-bacon-dry-cured',
      products: ['bacon'],
      routes: ['dry'],
      valuePpm: 200,
      printed: '200',
      source: 'us-9-cfr-424-22-b',
    },
    {
      ...onMeat,
      id: 'us-bacon-immersion',
      products: ['bacon'],
      routes: ['immersion'],
      valuePpm: 120,
      printed: '120',
      source: 'us-9-cfr-424-22-b',
    },
    {
      ...onMeat,
      id: 'us-bacon-pumped',
      products: ['bacon'],
      routes: ['pumped'],
      valuePpm: 120,
      printed: '120',
      source: 'us-9-cfr-424-22-b',
      asWritten: 'a level, not a ceiling only: 120, with 550 of ascorbate or erythorbate',
    },
    { ...SHARED_ROWS.usLeft, id: 'us-nitrite-finished', heating: 'any', products: ['ham', 'other'] },
    {
      ...SHARED_ROWS.usKeepRefrigerated,
      id: 'us-nitrite-keep-refrigerated',
      heating: 'any',
      products: ['ham', 'other'],
      finishes: ['cooked'],
    },
  ],
};
