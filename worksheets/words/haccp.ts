/**
 * Words of the plan sheet: steps, hazards, control. Prompts of common practice, no source, to be completed by the
 * business; limits come from the batch and are not written here.
 */
export interface StepWords {
  readonly step: string;
  /** B biological, C chemical, P physical, A allergens. */
  readonly hazard: string;
  readonly control: string;
  readonly point: 'CCP' | 'PRP' | 'PRP or CCP' | 'CCP if used';
  readonly watch: string;
  readonly correct: string;
  readonly verify: string;
}

export type StepId =
  | 'receive'
  | 'cure'
  | 'grind'
  | 'allergens'
  | 'cook'
  | 'cool'
  | 'handle'
  | 'store'
  | 'pack'
  | 'sell';

export const STEP_WORDS: Readonly<Record<StepId, StepWords>> = {
  receive: {
    step: 'Receive',
    hazard: 'B growth, parasites · C residues · A wrong goods',
    control: 'Approved supplier; game with its papers',
    point: 'PRP',
    watch: 'Probe and look, every delivery',
    correct: 'Refuse; tell the supplier',
    verify: 'Monthly · goods-in book',
  },
  cure: {
    step: 'Weigh curing salt',
    hazard: 'C too much, or none',
    control: 'Locked away; % off the pack; two people',
    point: 'CCP',
    watch: 'Scale, every batch',
    correct: 'Hold, work out again; over the limit: discard',
    verify: 'Scale daily, stock weekly · batch sheet',
  },
  grind: {
    step: 'Grind, mix, fill',
    hazard: 'B growth · P metal, bone',
    control: 'Cold meat, cold machine; parts counted',
    point: 'PRP',
    watch: 'Core after every pass',
    correct: 'Chill, wait; a part missing: hold, find it',
    verify: 'Blade log · batch sheet',
  },
  allergens: {
    step: 'Allergens',
    hazard: 'A cross-contact',
    control: 'Order of work; clean between',
    point: 'PRP or CCP',
    watch: 'Before every run',
    correct: 'Clean again, hold, label anew',
    verify: 'Test kit by plan · cleaning record',
  },
  cook: {
    step: 'Cook',
    hazard: 'B survival: Salmonella, Listeria, E. coli, parasites',
    control: 'Time and temperature at the coldest point',
    point: 'CCP',
    watch: 'Core of each mould, or the proven worst; every batch',
    correct: 'Go on until met; never met: discard. Mend the bath',
    verify: 'Logs weekly, ice and boil check, cold spot yearly · cook log',
  },
  cool: {
    step: 'Cool',
    hazard: 'B spores: C. perfringens, B. cereus, C. botulinum',
    control: 'Shallow; ice or blast; air around; a clock',
    point: 'CCP',
    watch: 'Core at least every 30 min',
    correct: 'Ice or blast now; missed: hold, decide by your plan, else discard',
    verify: 'Logs weekly, chiller service · cooling log',
  },
  handle: {
    step: 'Handle cooked food',
    hazard: 'B Listeria, Staphylococcus',
    control: 'Clean zone, clean slicer, no bare hands',
    point: 'PRP',
    watch: 'Every session',
    correct: 'Clean again; hold',
    verify: 'Swabs by plan · swab file',
  },
  store: {
    step: 'Store, display',
    hazard: 'B growth',
    control: 'Temperature and date',
    point: 'PRP or CCP',
    watch: 'Food or air, twice a day',
    correct: 'Move; count the time; discard',
    verify: 'Logger monthly · chill log',
  },
  pack: {
    step: 'Pack without air',
    hazard: 'B C. botulinum',
    control: 'Short life, or salt, acid, dryness',
    point: 'CCP if used',
    watch: 'Every pack run',
    correct: 'Shorten the life or discard',
    verify: 'Shelf-life study · pack log',
  },
  sell: {
    step: 'Label, sell',
    hazard: 'A not declared; wrong use',
    control: 'Label from the formula; second reader',
    point: 'PRP or CCP',
    watch: 'Every print run',
    correct: 'Withdraw, recall',
    verify: 'Recall drill yearly · label file',
  },
};

export const PLAN_WORDS = {
  title: 'Plan of hazards and control points',
  about:
    'Steps, hazards, limits from the rule sets of the batch, watching, correcting, checking: a draft for you to complete.',
  draft:
    'DRAFT. Not an approved plan. The business completes it and signs it; its licensed practice or authority approves it. Empty boxes are not known here.',
  noRules: 'Rule set: none chosen. Write every limit in from the rule your authority enforces.',
  columns: [
    'Step, hazard',
    'Control',
    'Critical limit',
    'Watch',
    'Who',
    'If not: process and product',
    'Check · record',
  ],
  before: ['Cleaning', 'Pests', 'Suppliers', 'Training', 'Allergens', 'Water', 'Maintenance', 'Thermometers'],
  notCovered:
    'Dry cure, fermenting and drying are not in this draft: they need a process your authority has accepted.',
  grindLimit: (limits: string) => `${limits} (common practice, no source)`,
  storeLimit: (at: string, life: string) => `≤ ${at}, ${life}, as on the label of this batch`,
  labelLimit: 'Every word matches the formula',
  allergenLimit: (list: string) => list,
  fromMemory: 'from memory: check the text',
  probeError: 'plus the error of the probe',
  cureLimit: (limits: string) => `At most ${limits}, and within 5 % of the plan`,
} as const;
