import { SOURCES } from '../../sources/index.ts';
import type { CureRuleSet } from './limit.ts';
import { SHARED_ROWS } from './shared-rows.ts';

const OUNCES_PER_HUNDREDWEIGHT = 1600;
const MG_PER_KG = 1e6;

/** 9 CFR 424.21(c): chopped meat, poultry and by-products. The law counts on their green weight. */
export const US_FEDERAL: CureRuleSet = {
  id: 'us-federal',
  title: 'Nitrite in comminuted meat products',
  jurisdiction: 'United States, federal inspection',
  ingoingBasis: 'meat-block',
  edition: SOURCES['us-9-cfr-424-21-c'].edition,
  reviewed: SOURCES['us-9-cfr-424-21-c'].reviewed,
  sources: ['us-9-cfr-424-21-c', 'us-fsis-7620-3'],
  mark: 'confirmed',
  limits: [
    {
      id: 'us-nitrite-comminuted',
      substance: 'nitrite',
      kind: 'ingoing',
      role: 'ceiling',
      heating: 'any',
      valuePpm: (0.25 / OUNCES_PER_HUNDREDWEIGHT) * MG_PER_KG,
      printed: '156',
      expressedAs: 'sodium-nitrite',
      basis: 'meat-block',
      source: 'us-9-cfr-424-21-c',
      mark: 'confirmed',
      asWritten: '¼ oz to 100 lb of meat, meat by-product or poultry',
    },
    { ...SHARED_ROWS.usLeft, id: 'us-nitrite-finished', heating: 'any' },
    {
      id: 'us-accelerator',
      substance: 'accelerator',
      kind: 'ingoing',
      role: 'ceiling',
      heating: 'any',
      valuePpm: (0.875 / OUNCES_PER_HUNDREDWEIGHT) * MG_PER_KG,
      printed: '547',
      expressedAs: 'sodium-ascorbate-or-erythorbate',
      basis: 'meat-block',
      source: 'us-9-cfr-424-21-c',
      mark: 'confirmed',
      asWritten: '⅞ oz to 100 lb',
    },
    { ...SHARED_ROWS.usKeepRefrigerated, id: 'us-nitrite-keep-refrigerated', heating: 'any' },
  ],
};
