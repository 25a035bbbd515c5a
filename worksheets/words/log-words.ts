import type { Params } from '@larderwright/calc/findings';
import { fixedText, formatQuantity } from '@larderwright/calc/quantities';
import { dayWords, durationWords, wallOf } from '../parts/clock-text.ts';

/** `Front left: ` where the log has a name, so that a sentence can stand beside others. */
export function logPrefix(p: Params): string {
  return p.log ? `${p.log}: ` : '';
}

/** The clock of a moment of the record. */
export function clockOf(p: Params, key: string): string {
  return wallOf(String(p[key] ?? ''))?.clock ?? 'an unknown time';
}

/** Clock and day of a moment of the record. */
export function momentOfParam(p: Params, key: string): string {
  const wall = wallOf(String(p[key] ?? ''));
  return wall ? `${wall.clock} on ${dayWords(wall.date)}` : 'an unknown time';
}

/** A length of time given in seconds. */
export function seconds(p: Params, key: string, rounding: 'up' | 'down'): string {
  return durationWords(Number(p[key]) / 60, rounding);
}

/** A length of time given in minutes. */
export function minutes(p: Params, key: string, rounding: 'up' | 'down'): string {
  return durationWords(Number(p[key]), rounding);
}

/** A temperature given in °C, on both scales. */
export function bothScales(p: Params, key: string, rounding: 'up' | 'down'): string {
  const tempC = Number(p[key]);
  const options = { decimals: 1, rounding, withUnit: true } as const;
  return `${formatQuantity('temperature', tempC, options)} (${formatQuantity('temperature', tempC, { ...options, unit: 'F' })})`;
}

/** A temperature given in °C, on that scale alone. */
export function celsius(p: Params, key: string, rounding: 'up' | 'down'): string {
  return `${fixedText(Number(p[key]), 1, rounding)} °C`;
}

/** Why a reading cannot show the core. */
const DOUBTS: Readonly<Record<string, string>> = {
  'too-hot': 'hotter than a moist core gets. Perhaps °F was written as °C.',
  'too-cold': 'colder than anything in a kitchen.',
  'above-medium': 'hotter than the bath or oven around it.',
  jump: 'a faster change than heat moves through a core.',
  dip: 'far under the readings before and after it. Perhaps the probe was out.',
  spike: 'far over the readings before and after it.',
  'clock-back': 'written after a later reading. One of the two times is wrong.',
};

export function doubtWords(p: Params): string {
  return DOUBTS[String(p.doubt)] ?? 'it cannot be.';
}
