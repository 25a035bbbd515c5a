import type { DegreeHourRule, DryingKind } from '@larderwright/calc/drying';

/** What is dried. */
export const DRYING_KINDS: Readonly<Record<DryingKind, string>> = {
  'fermented-sausage': 'Fermented sausage',
  'dried-muscle': 'Dried whole muscle',
};

/** Whose degree-hours. */
export const DEGREE_HOUR_RULES: Readonly<Record<DegreeHourRule, string>> = {
  'us-fahrenheit': 'Above 60 °F, as in the United States',
  'canada-celsius': 'Above 15.6 °C, as in Canada',
};

/** Names and classes tied to a moisture to protein ratio. */
export const RATIO_CLASS_NAMES: Readonly<Record<string, string>> = {
  jerky: 'Jerky',
  pepperoni: 'Pepperoni',
  'dry-sausage': 'Dry sausage',
  genoa: 'Genoa salami',
  'dry-sausage-1982': 'Dry sausage, by the industry’s words of 1982',
  'semi-dry-sausage': 'Semi-dry sausage, kept without cold',
  thuringer: 'Thuringer',
};

/** What a law or a microbe ties to a water activity. */
export const WATER_ACTIVITY_NAMES: Readonly<Record<string, string>> = {
  'no-nitrite-statement-may-go': 'No-nitrite statement on the label may go',
  'country-ham': 'Country ham',
  'botulinum-cold-growing': 'Cold-growing botulinum grows',
  salmonella: 'Salmonella grows',
  'bacillus-cereus': 'Bacillus cereus grows',
  'botulinum-proteolytic': 'Other botulinum grows',
  perfringens: 'Perfringens grows',
  listeria: 'Listeria grows',
  staphylococcus: 'Staphylococcus grows',
  'semi-dry-sausage': 'Usual in semi-dry sausage',
  'dry-sausage': 'Usual in dry sausage',
  'dried-ham-coppa-jerky': 'Usual in dried ham, coppa, jerky',
};
