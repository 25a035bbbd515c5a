import type { Kitchen } from '@larderwright/calc/kitchen';
import type { KitchenTrouble } from '../state/kitchen.ts';

/** What is wrong with keeping the settings, and what to do. */
export function kitchenTroubleWords({ id, detail }: KitchenTrouble): string {
  switch (id) {
    case 'not-kept':
      return `This device does not keep the settings (${detail}). They hold while this page is open. Private windows and strict settings of the browser do that, and so does a full disk.`;
    case 'damaged':
      return `The settings kept here could not be read (at ${detail || 'their beginning'}). They were set aside whole and are not used. Bring them back from a backup, or set them again.`;
    case 'newer':
      return `The settings kept here were written by a newer version of this site (version ${detail}). Reload the page to get that version. They were not changed, and what is set here now is not kept.`;
  }
}

type Choices<Value> = readonly { value: Value & string; label: string }[];

export const TEMP_CHOICES: Choices<Kitchen['tempFirst']> = [
  { value: 'rule', label: 'As each rule states it' },
  { value: 'C', label: '°C first' },
  { value: 'F', label: '°F first' },
];
export const PAPER_CHOICES: Choices<Kitchen['paper']> = [
  { value: 'a4', label: 'A4' },
  { value: 'letter', label: 'US Letter' },
];
export const SCHEME_CHOICES: Choices<Kitchen['scheme']> = [
  { value: 'system', label: 'As the device is set' },
  { value: 'light', label: 'Light' },
  { value: 'dark', label: 'Dark' },
];

export const SETTINGS = {
  intro:
    'Set once, kept on this device only, and saved with every backup. A new batch copies what stands here and marks it as a default. A batch that was begun is never changed from here.',
  kitchen: 'The kitchen',
  name: 'Name of the kitchen',
  nameHint: 'Heads every sheet of a new batch.',
  altitude: 'Height above sea level',
  altitudeHint: 'Water boils lower up high: the thermometer check needs it.',
  ways: 'How it is written',
  tempFirst: 'Temperatures',
  tempHint: 'Where a limit is concerned the other scale always stands beside it.',
  paper: 'Paper in the printer',
  scheme: 'Colours of the page',
  schemeHint: 'The button in the head of each page does the same. Paper is always black on white.',
  rules: 'Rule sets',
  rulesAbout:
    'Whose rules a new batch begins with: those your authority enforces. Each is marked as a default on the batch, and the batch is not released until somebody has confirmed it or chosen another.',
  cure: 'Nitrite',
  cook: 'Cooking',
  cool: 'Cooling',
  noRule: 'Chosen for each batch',
  scales: 'Scales',
  scalesAbout:
    'The smallest step each scale shows. A new batch weighs its curing salt on the finest: the dose is rounded to that step, never over the ceiling.',
  scaleName: 'Scale',
  scaleNameHint: 'As it is marked.',
  scaleStep: 'Smallest step',
  scaleStepHint: 'What the last digit moves by: 0.1 or 1, say.',
  addScale: 'Add a scale',
  finest: (step: string) => `Curing salt is weighed to ${step}.`,
  noFinest: 'No step is known: a new batch asks for it.',
  thermometers: 'Thermometers',
  thermometersAbout:
    'A new batch takes them over with their last check. The check itself, in ice and in boiling water, is written on the thermometer worksheet, and from there taken to the kitchen.',
  noThermometer: 'None yet.',
  toCheck: 'Thermometer check',
  thermometerHead: ['Thermometer', 'In ice', 'Error', 'Checked on'],
  unchecked: 'not checked',
  unknown: 'unknown',
  remove: (name: string) => `Remove ${name}`,
  unnamed: (kind: string, place: number) => `${kind} ${place}`,
  kept: 'Kept',
  keptAbout:
    'The scheme of batch numbers and the backup stand on the page of batches. Saving and bringing in stand under records in and out.',
  batches: 'Batches',
  records: 'Records in and out',
  scale: 'Scale',
  thermometer: 'Thermometer',
  saveAside: 'Save the settings that could not be read',
} as const;

/** Taking a check to the settings. */
export const TO_KITCHEN = {
  button: 'Take these to the settings of the kitchen',
  nameless: 'Name the thermometer first: the settings know it by that.',
  taken: (count: number) =>
    `${count} ${count === 1 ? 'thermometer' : 'thermometers'} taken over. New batches begin with ${count === 1 ? 'it' : 'them'}, with this check.`,
  settings: 'Settings',
} as const;

/** What a thermometer showed in ice, from the field as it was typed. */
export const shownText = (text: string, unit: string): string => `${text.trim()} °${unit}`;
