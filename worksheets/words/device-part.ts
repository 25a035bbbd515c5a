import type { IncomingOven } from '../records-desk/incoming-ovens.ts';

export const INCOMING_OVEN_WORDS: Readonly<Record<IncomingOven['state'], string>> = {
  new: 'Not on this device yet.',
  same: 'On this device already, the same. Taken in, it would stand there twice.',
  differs:
    'One of this name is on this device, with other figures. Taken in, both are kept, this one numbered.',
};

export const DEVICE_PART_WORDS = {
  title: 'Oven records in the file',
  take: 'Take in',
  oven: 'Oven record',
  figures: 'Gives heat, heats the pan, hotter than shown',
  against: 'Against this device',
  damaged: (count: number) =>
    `${count} ${count === 1 ? 'row' : 'rows'} beside the batches cannot be read and ${count === 1 ? 'is' : 'are'} left out.`,
  newer: 'The file holds more beside the batches than this version knows. Reload this page to take it in.',
  noRoom: (count: number) =>
    ` ${count} oven ${count === 1 ? 'record' : 'records'} found no room: a device keeps forty.`,
} as const;

/** "2 batches and 1 oven record". */
export function takenWords(batches: number, ovens: number): string {
  const words = [
    ...(batches > 0 || ovens === 0 ? [`${batches} ${batches === 1 ? 'batch' : 'batches'}`] : []),
    ...(ovens > 0 ? [`${ovens} oven ${ovens === 1 ? 'record' : 'records'}`] : []),
  ];
  return words.join(' and ');
}

/** The settings of a kitchen in a file. */
export const KITCHEN_OFFER = {
  take: 'Take over the settings of this kitchen',
  called: (name: string) => (name === '' ? 'a kitchen without a name' : `“${name}”`),
  holds: (scales: number, thermometers: number) =>
    `${scales} ${scales === 1 ? 'scale' : 'scales'}, ${thermometers} ${thermometers === 1 ? 'thermometer' : 'thermometers'}`,
  replaces:
    'What is set on this device is replaced; scales and thermometers that the file does not know stay. No batch changes.',
  damaged: (path: string) =>
    `The settings in the file are damaged (at "${path.slice(0, 80) || 'their beginning'}") and are left out.`,
  newer:
    'The settings in the file were written by a newer version of this site. Reload this page to take them over.',
  alone: 'Take over the settings',
  taken: ' The settings were taken over.',
  notKept: (detail: string) => ` This device does not keep the settings (${detail}).`,
} as const;
