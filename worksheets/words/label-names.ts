import {
  ALCOHOL_KEPT,
  type Audience,
  type Hurdle,
  type LossKind,
  type Market,
  type PackKind,
} from '@larderwright/calc/label';

export const MARKET_NAMES: Readonly<Record<Market, string>> = {
  us: 'United States',
  eu: 'European Union',
  gb: 'United Kingdom',
};

export const LOSS_NAMES: Readonly<Record<LossKind, string>> = {
  nothing: 'Nothing: sold as it was mixed',
  water: 'Water and vapour only',
  'fat-weighed': 'Fat too, poured off and weighed',
  juices: 'Fat and juices, not weighed',
};

export const PACK_NAMES: Readonly<Record<PackKind, string>> = {
  open: 'Open, from the counter',
  wrapped: 'Wrapped, with air',
  vacuum: 'Vacuum',
  'modified-air': 'Modified atmosphere',
  jar: 'Closed jar, or under fat',
};

export const HURDLE_NAMES: Readonly<Record<Hurdle, string>> = {
  'heat-90-10': 'Heated to 90 °C (194 °F) for 10 minutes in the pack',
  'salt-3-5': 'At least 3.5 % salt on water throughout',
  'aw-0-97': 'Water activity 0.97 or less, measured',
  'ph-5': 'pH 5 or less, measured',
  'approved-plan': 'A plan accepted by the authority',
};

export const AUDIENCE_NAMES: Readonly<Record<Audience, string>> = {
  general: 'Anyone',
  susceptible: 'Hospital, care home, others at high risk',
  'under-threes': 'Children under three',
};

export const ALCOHOL_CHOICES = ALCOHOL_KEPT.map(({ id, what, fraction }) => ({
  value: id,
  label: `${what}: ${Math.round(fraction * 100)} % stays`,
}));

/** Names as a list to choose from. */
export function choicesOf(names: Readonly<Record<string, string>>): { value: string; label: string }[] {
  return Object.entries(names).map(([value, label]) => ({ value, label }));
}
