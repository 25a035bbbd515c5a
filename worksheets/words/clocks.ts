import type { CoolDeadline } from '@larderwright/calc/cooling';
import type { StepKind } from '@larderwright/calc/process';
import { type Clock, hasRunOut, minutesLeft, minutesRun, type Present } from '../clocks/clock.ts';
import type { Jump } from '../clocks/present.ts';
import { durationWords, offsetAt } from '../parts/clock-text.ts';
import { clockBeside } from './chill-stand.ts';
import { limitTemp } from './limit-temp.ts';

const MINUTE_MS = 60_000;

export const STAGE_NAMES: Readonly<Record<StepKind | 'press', string>> = {
  smoke: 'Smoke',
  cook: 'Cook',
  reheat: 'Reheat',
  chill: 'Chill',
  press: 'Under the press',
};

/** What has to be shown before a limit runs out. */
export function limitLabel({ leg, cooling }: CoolDeadline): string {
  const again = cooling === 1 ? '' : `, cooling ${cooling}`;
  return leg === null
    ? `Chilling has to begin${again}`
    : `Core at ${limitTemp(leg.to, 'maximum').text} or colder${again}`;
}

/** The hold of the cook. */
export const HOLD_LABEL = 'Hold at the limit';

/** Steps a person often times, offered by name. */
export const TIMER_NAMES = [
  'Soak',
  'Turn in the cure',
  'Gelatine blooms',
  'Temper before slicing',
  'Rest before the chill',
  'Next core reading',
] as const;

/** What is called, and what it says. */
export interface ClockWords {
  /** What it is about. */
  readonly title: string;
  /** How it stands, in minutes. */
  readonly state: string;
  /** The moments it goes by. */
  readonly moments: string;
}

/** A moment as a clock of the batch: down for a limit, so that it is never read as later; up for what must last. */
function moment(ms: number, { zone }: Clock, besideMs: number, side: 'down' | 'up'): string {
  const whole = (side === 'down' ? Math.floor(ms / MINUTE_MS) : Math.ceil(ms / MINUTE_MS)) * MINUTE_MS;
  return clockBeside(whole, offsetAt(whole, zone), besideMs);
}

/** A clock as it stands now. */
export function clockWords(clock: Clock, present: Present): ClockWords {
  const { kind, label, startedMs, endsMs, maybe } = clock;
  const since = moment(startedMs, clock, present.earlyMs, 'down');
  const left = minutesLeft(clock, present);
  if (endsMs === null || left === null)
    return {
      title: label,
      state: durationWords(minutesRun(clock, present), 'down'),
      moments: `since ${since}`,
    };
  const end = moment(endsMs, clock, present.earlyMs, kind === 'limit' ? 'down' : 'up');
  if (kind === 'limit') {
    const start = maybe
      ? `It may run since ${since}: no reading shows yet that the core has left.`
      : `Counted from ${since}.`;
    return hasRunOut(clock, present)
      ? { title: label, state: 'time is up', moments: `by ${end}. Only a reading shows whether it was met.` }
      : { title: label, state: `${whole(left)} left`, moments: `by ${end}. ${start}` };
  }
  const after = kind === 'hold' ? 'Take a reading then: only the log shows that it was held.' : '';
  return hasRunOut(clock, present)
    ? {
        title: label,
        state: 'time is up',
        moments: `since ${end}. ${kind === 'hold' ? 'Take a reading.' : ''}`.trim(),
      }
    : { title: label, state: `${whole(left)} more`, moments: `until ${end}. ${after}`.trim() };
}

const whole = (minutes: number) =>
  minutes < 60 ? `${Math.max(0, minutes)} min` : durationWords(minutes, 'down');

/** What is called out at a mark, so that it is understood without the page. */
export function callWords(clock: Clock, present: Present): string {
  const { title, state, moments } = clockWords(clock, present);
  const [first = ''] = moments.split('. ');
  return `${clock.batch ? `${clock.batch}: ` : ''}${title}: ${state}, ${first.replace(/\.$/, '')}.`;
}

/** A jump of the device's clock, and what it means. */
export function jumpWords({ kind, byMs }: Jump): string {
  const by = durationWords(byMs / MINUTE_MS, 'up');
  return kind === 'back'
    ? `The clock of this device was set back by ${by}. Until you have looked at it, limits are counted as if it had not been. Readings typed since then may bear a wrong time.`
    : `The clock of this device was set forward by ${by}. Look whether it is right now. Readings typed before may bear a wrong time.`;
}

export const CLOCKS = {
  title: 'Clocks',
  about:
    'A clock reminds and proves nothing: only the readings in the log do. It calls while a page of this site is open and the device is awake.',
  none: 'No clock runs.',
  running: 'Running now',
  noExample: 'An example has no clocks of its own. Copy it as a batch of your own, or begin a new one.',
  all: (count: number) => (count > 1 ? `All ${count} clocks` : 'Clocks'),
  bar: 'Clocks that run',
  trust: 'The clock is right now',
  notKept: (reason: string) =>
    `This device does not keep the clocks (${reason}). They run while this page is open.`,
  begin: (stage: string) => `${stage}: begin now`,
  end: (stage: string) => `${stage}: end now`,
  stop: (label: string) => `Stop ${label}`,
  open: 'Open',
  own: 'A step of your own',
  name: 'What for',
  nameHint: 'Soak, turn, bloom, temper: as you call it.',
  minutes: 'How long',
  minutesHint: 'Minutes, or 1:30 for an hour and a half.',
  start: 'Start the clock',
  unnamed: 'Step',
  noLength: 'Write how long it takes.',
  calls: 'How it calls',
  sound: 'A sound',
  vibration: 'A vibration',
  notification: 'A notification',
  awake: 'Keep the screen awake while a clock runs',
  tryCall: 'Try it',
  tried: 'This is how a clock calls.',
  noSound: 'This browser makes no sound here.',
  noVibration: 'This device does not vibrate.',
  noNotification: 'This browser shows no notifications.',
  refused: 'The browser does not allow notifications from this site. Its settings can.',
  noAwake: 'This browser cannot keep the screen awake. Set the device itself to stay on.',
  awakeRefused: 'The device does not keep the screen awake now, for its battery perhaps.',
  awakeOn: 'The screen stays awake.',
} as const;
