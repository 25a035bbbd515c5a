import type { CheckedReading, Doubt } from '@larderwright/calc/probe-log';
import type { ProbeLog } from '@larderwright/calc/process';
import { fixedText } from '@larderwright/calc/quantities';
import { durationWords, wallOf } from '../../parts/clock-text.ts';
import type { Filled, LogBlock, SheetReading } from '../sheet-model.ts';
import { decisive } from './decisive.ts';
import { filled } from './filled.ts';

/** Late readings and left-out readings named one by one up to this many; beyond it they are counted. */
const NAMED = 4;

const clock = (iso: string) => wallOf(iso)?.clock ?? '?';

const DOUBT_WORD: Readonly<Record<Doubt, string>> = {
  'too-hot': 'cannot be',
  'too-cold': 'cannot be',
  'above-medium': 'cannot be',
  jump: 'cannot be',
  dip: 'cannot be',
  spike: 'cannot be',
  'clock-back': 'clock?',
};

/** What a reading prints beside its figure. */
function remark(reading: CheckedReading): string | null {
  if (reading.state === 'excluded') return 'out';
  if (reading.state === 'unreadable') return '?';
  return reading.doubt ? DOUBT_WORD[reading.doubt] : null;
}

/** The figure judged by: offset taken off, to the tenth. What cannot be read prints as typed. */
function shown(reading: CheckedReading): SheetReading {
  return {
    clock: clock(reading.at),
    temperature: reading.tempC === null ? reading.shown : fixedText(reading.tempC, 1),
    remark: remark(reading),
  };
}

/** What comes from the check of a thermometer was worked out, not typed here. */
function asChecked({ thermometerId, offset }: ProbeLog, printed: Filled | null): Filled | null {
  if (!thermometerId || printed === null || offset.text === '') return printed;
  return { text: printed.text, flag: 'W' };
}

/**
 * One probe's log as a strip.
 *
 * @param most readings it may print; left out: one row of boxes
 */
export function buildLog(
  log: ProbeLog,
  readings: readonly CheckedReading[],
  moments: readonly number[],
  most?: number,
): LogBlock {
  return {
    name: log.name.trim() || 'Log',
    probe: log.probeName.trim(),
    offset: asChecked(log, filled('temperature-difference', log.offset, 'dC')),
    error: asChecked(log, filled('temperature-difference', log.error, 'dC')),
    count: readings.length,
    readings: decisive(readings, moments, most).map(shown),
  };
}

function few(items: readonly string[]): string {
  if (items.length <= NAMED) return items.join('; ');
  return `${items.slice(0, NAMED).join('; ')}; and ${items.length - NAMED} more in the record`;
}

/** Readings typed in late, with both times; readings a person left out, with reason and initials. */
export function logRemarks(log: ProbeLog, readings: readonly CheckedReading[]): string[] {
  const name = log.name.trim() || 'Log';
  const late = readings.filter((reading) => reading.enteredLateMin !== null);
  const out = readings.filter((reading) => reading.state === 'excluded');
  const remarks: string[] = [];
  if (late.length > 0) {
    const times = late.map(
      (reading) =>
        `read ${clock(reading.at)}, typed ${durationWords(reading.enteredLateMin ?? 0, 'up')} later`,
    );
    remarks.push(`${name}, entered late: ${few(times)}.`);
  }
  if (out.length > 0) {
    const each = out.map(
      (reading) =>
        `${clock(reading.at)} ${reading.shown} (${reading.exclusion?.reason ?? ''}, ${reading.exclusion?.initials ?? ''})`,
    );
    remarks.push(`${name}, left out by a person: ${few(each)}.`);
  }
  return remarks;
}
