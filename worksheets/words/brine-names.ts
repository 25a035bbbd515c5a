import type { BrineMethod, BrineScale, FederalMethod, SaltBase } from '@larderwright/calc/brine';

/** Ways of a brine. */
export const BRINE_METHODS: Readonly<Record<BrineMethod, string>> = {
  equilibrium: 'Soak until meat and brine are even',
  'inject-cover': 'Inject, then cover with the rest',
  inject: 'Inject only',
  timed: 'Strong brine, stopped by the clock',
};

/** What the salt wanted is counted on. */
export const SALT_BASES: Readonly<Record<SaltBase, string>> = {
  'meat-and-water': 'meat and water together',
  'water-phase': 'the brine inside: salt and all water',
  water: 'all the water, the meat’s own with it',
};

/** The two federal countings of an immersion. */
export const FEDERAL_METHODS: Readonly<Record<FederalMethod, string>> = {
  'pick-up': 'By pick-up: what the meat gained',
  equilibrium: 'At equilibrium: meat and brine as one',
};

/** Parts of a brine in the order they go in. */
export const BRINE_PARTS = {
  'cold-water': 'Cold water',
  phosphate: 'Phosphate, until clear',
  salt: 'Plain salt',
  sugar: 'Sugar',
  'strained-spice': 'Spice, simmered, strained, cold',
  'curing-salt': 'CURING SALT',
  accelerator: 'Ascorbate or erythorbate, just before use',
} as const;

/** Scales of a brine's strength, with their unit. */
export const BRINE_SCALES: Readonly<Record<BrineScale, { readonly label: string; readonly unit: string }>> = {
  fraction: { label: 'Salt in the brine, by weight', unit: '%' },
  salometer: { label: 'Degrees salometer', unit: '°' },
  baume: { label: 'Degrees Baumé, as used in the United States', unit: '°Bé' },
  'specific-gravity': { label: 'Specific gravity', unit: '' },
  'g-per-litre-brine': { label: 'Salt in a litre of brine', unit: 'g/L' },
  'g-per-kg-water': { label: 'Salt to a kilogram of water', unit: 'g/kg' },
  'lb-per-gallon-brine': { label: 'Salt in a US gallon of brine', unit: 'lb/gal' },
  'lb-per-gallon-water': { label: 'Salt to a US gallon of water', unit: 'lb/gal' },
};
