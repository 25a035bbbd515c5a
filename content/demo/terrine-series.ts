import type { Batch } from '@larderwright/calc/batch';
import { newCookPlanSlice } from '@larderwright/calc/cook-plan';
import { blankEntry, enteredEntry } from '@larderwright/calc/quantities';
import { countryTerrine } from './country-terrine.ts';

const FIRST_DAY = Date.parse('2026-01-06T00:00:00Z');
const WEEK_MS = 7 * 86_400_000;
const MIN_MS = 60_000;

/** One batch of the series: how long the core lagged behind the first one, min, and what was on the scale, g. */
interface Made {
  readonly lateMin: number;
  readonly finishedG: string;
  readonly wrong?: string;
}

/** Invented. One weight was never written down, one cook stood too long and lost too much. */
const MADE: readonly Made[] = [
  { lateMin: 0, finishedG: '3497' },
  { lateMin: 3, finishedG: '3512' },
  { lateMin: -2, finishedG: '3490' },
  { lateMin: 2, finishedG: '3505' },
  { lateMin: 5, finishedG: '3494' },
  { lateMin: 1, finishedG: '' },
  { lateMin: -1, finishedG: '3508' },
  { lateMin: 4, finishedG: '3489' },
  { lateMin: 0, finishedG: '3501' },
  { lateMin: 2, finishedG: '3496' },
  {
    lateMin: 30,
    finishedG: '3370',
    wrong: 'Bath refilled cold in the middle of the cook; half an hour longer in the heat.',
  },
  { lateMin: 3, finishedG: '3493' },
  { lateMin: -1, finishedG: '3507' },
  { lateMin: 1, finishedG: '3499' },
];

const at = (iso: string, day: string, lateMin: number): string => {
  const offset = iso.slice(19);
  const wallMs = Date.parse(`${iso.slice(0, 19)}Z`) + lateMin * MIN_MS;
  return `${day}${new Date(wallMs).toISOString().slice(10, 19)}${offset}`;
};

function made({ lateMin, finishedG, wrong }: Made, place: number): Batch {
  const day = new Date(FIRST_DAY + place * WEEK_MS).toISOString().slice(0, 10);
  const late = (iso: string | null) => (iso === null ? null : at(iso, day, lateMin));
  const { product, process, press } = countryTerrine;
  return {
    ...countryTerrine,
    id: `demo-series-${place + 1}`,
    createdAt: at(countryTerrine.createdAt, day, 0),
    updatedAt: at(countryTerrine.updatedAt, day, 0),
    product: {
      ...product,
      batchNo: `${day.replaceAll('-', '')}-A`,
      finished: finishedG === '' ? blankEntry('g') : enteredEntry(finishedG, 'g'),
      useBy: '',
    },
    process: {
      ...process,
      steps: process.steps.map((step) => ({
        ...step,
        startedAt: step.kind === 'cook' && step.startedAt ? at(step.startedAt, day, 0) : late(step.startedAt),
        endedAt: late(step.endedAt),
      })),
      logs: process.logs.map((log) => ({
        ...log,
        readings: log.readings.map((reading, index) => {
          const read = at(reading.at, day, index === 0 ? 0 : lateMin);
          return { ...reading, at: read, enteredAt: read };
        }),
      })),
    },
    press: { ...press, startedAt: late(press.startedAt) },
    cookPlan: {
      ...newCookPlanSlice(),
      method: 'poach',
      vessel: 'aluminium',
      lid: 'lid',
      start: enteredEntry('7', 'C'),
      kettle: enteredEntry('78', 'C'),
      chill: [],
      ovenRecord: { ...newCookPlanSlice().ovenRecord, name: 'Training kettle 2' },
    },
    deviations: wrong
      ? [
          {
            id: 'refilled',
            at: at(`${day}T12:00:00-04:00`, day, 0),
            what: wrong,
            decision: 'release',
            cause: 'Level of the bath not watched.',
            prevention: 'Hot water stands ready before the cook.',
            by: 'Bench 3',
          },
        ]
      : [],
    notes: '',
  };
}

/** Invented: one terrine made every week, to show what a comparison and a trend look like. */
export const terrineSeries: readonly Batch[] = MADE.map(made);
