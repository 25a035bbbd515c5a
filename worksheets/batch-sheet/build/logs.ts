import type { CheckedReading, Doubt } from '@larderwright/calc/probe-log';
import type { ProbeLog } from '@larderwright/calc/process';
import { fixedText } from '@larderwright/calc/quantities';
import * as say from '#words/batch-sheet/build/logs.ts';
import { durationWords, wallOf } from '../../parts/clock-text.ts';
import type { Filled, LogBlock, SheetReading } from '../sheet-model.ts';
import { decisive } from './decisive.ts';
import { filled } from './filled.ts';

/** Late readings and left-out readings named one by one up to this many; beyond it they are counted. */
const NAMED = 4;

const clock = (iso: string) => wallOf(iso)?.clock ?? '?';

const DOUBT_WORD: Readonly<Record<Doubt, string>> = {
  'too-hot': say.cannotBe,
  'too-cold': say.cannotBe,
  'above-medium': say.cannotBe,
  jump: say.cannotBe,
  dip: say.cannotBe,
  spike: say.cannotBe,
  'clock-back': 'clock?',
};

/** What a reading prints beside its figure. */
function remark(reading: CheckedReading): string | null {
  if (reading.state === 'excluded') return say.out;
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
    name: log.name.trim() || say.log,
    probe: log.probeName.trim(),
    offset: asChecked(log, filled('temperature-difference', log.offset, 'dC')),
    error: asChecked(log, filled('temperature-difference', log.error, 'dC')),
    count: readings.length,
    readings: decisive(readings, moments, most).map(shown),
  };
}

function few(items: readonly string[]): string {
  if (items.length <= NAMED) return items.join('; ');
  return say.andMoreInTheRecord(items.slice(0, NAMED).join('; '), items.length - NAMED);
}

/** Readings typed in late, with both times; readings a person left out, with reason and initials. */
export function logRemarks(log: ProbeLog, readings: readonly CheckedReading[]): string[] {
  const name = log.name.trim() || say.log;
  const late = readings.filter((reading) => reading.enteredLateMin !== null);
  const out = readings.filter((reading) => reading.state === 'excluded');
  const remarks: string[] = [];
  if (late.length > 0) {
    const times = late.map((reading) =>
      say.readTypedLater(clock(reading.at), durationWords(reading.enteredLateMin ?? 0, 'up')),
    );
    remarks.push(say.enteredLate(name, few(times)));
  }
  if (out.length > 0) {
    const each = out.map(
      (reading) =>
        `${clock(reading.at)} ${reading.shown} (${reading.exclusion?.reason ?? ''}, ${reading.exclusion?.initials ?? ''})`,
    );
    remarks.push(say.leftOutByAPerson(name, few(each)));
  }
  return remarks;
}
