import type { RunSignal } from '@larderwright/calc/trends';

/** Words of the page that lays batches side by side. */
export const COMPARE_WORDS = {
  notRecorded: 'not recorded',
  differs: 'differs',
  none: 'No batch is chosen.',
  looking: 'Looking at what this device keeps …',
  nothingKept: 'Nothing is kept here yet.',
  demoSeries: 'Look at an invented series',
  demoNote:
    'Invented: fourteen batches of one terrine from the Tarnwick Training Kitchen. Nothing of it is kept on this device.',
  ownAgain: 'Back to my own batches',
  mostSide: (most: number) => `At most ${most} side by side.`,
  ofFamily: (shown: number, all: number) =>
    shown === all ? `All ${all} of the family.` : `The latest ${shown} of ${all} of the family.`,
  reading: (done: number, all: number) => `Reading ${done} of ${all} …`,
  unreadable: (count: number) =>
    count === 1
      ? '1 record could not be read and is left out.'
      : `${count} records could not be read and are left out.`,
} as const;

export const CONTROL_WORDS = {
  picture: 'The figure from batch to batch',
  notSafety:
    'A control limit is no safety limit. It says what this kitchen has done so far, not what is safe: a batch inside it may fail its rule, one outside it may pass.',
  tooFew: (recorded: number, needed: number) =>
    `${recorded} of the batches have this figure: too few to draw limits. From fewer than ${needed} the mean step from batch to batch is too unsure to tell chance from a cause.`,
  none: 'No batch has this figure.',
  same: 'All batches have the same figure: there is nothing to draw limits from.',
  count: 'A small count: it is shown as it is, no limits are drawn for it.',
  trial: (recorded: number) => `Trial limits: they rest on ${recorded} batches and settle from 20 on.`,
  how: 'Mean ± 2.66 × the mean step between neighbouring batches (3/d₂ with d₂ = 1.128: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2; from memory). No step is counted across a batch that lacks the figure.',
  quiet: 'No batch stands out: what differs here may be chance.',
  jump: 'a step from the batch before that is larger than chance',
} as const;

/** Signs that a batch is more than chance. Western Electric (1956), from memory. */
export const SIGNAL_WORDS: Readonly<Record<RunSignal, string>> = {
  'beyond-3': 'beyond the control limit',
  'two-of-three': 'two of three beyond two thirds of the way to the limit, on one side',
  'four-of-five': 'four of five beyond one third of the way to the limit, on one side',
  'eight-in-a-row': 'eight in a row on one side of the mean',
};

export const OVEN_WORDS = {
  about:
    'Kept when a finished cook log taught a plan something. A plan copies the figures it uses: losing a record changes no batch.',
  empty: 'No oven record is kept on this device.',
  noBias: 'no finished cook with plan and log among the batches above',
  bias: (ratio: string, cooks: number) =>
    `actual ÷ planned time to the limit: median ${ratio} over ${cooks} ${cooks === 1 ? 'cook' : 'cooks'}`,
  shipped: 'Without an oven record',
  renamed: (from: string, to: string) =>
    `Renamed: ${from} is now ${to}. Batches that used it keep the old name.`,
  taken: 'Another record has this name.',
  nameless: 'A record needs a name.',
  deleted: (name: string) => `Deleted: ${name}.`,
  refused: 'This device did not keep the change.',
} as const;
