import { fixedText } from '@larderwright/calc/quantities';
import { timeRatio } from '@larderwright/calc/trends';
import * as say from '#words/compare/trend-kinds.ts';
import type { CompareFigures } from './figures-of.ts';

/** A figure that is followed from batch to batch. */
export interface TrendKind {
  readonly id: string;
  readonly label: string;
  readonly unit: string;
  /** In the unit of the screen; null: not recorded. */
  readonly value: (batch: CompareFigures) => number | null;
  readonly text: (value: number) => string;
  /** Small whole numbers: limits of individual values say nothing of them. */
  readonly isCount?: true;
}

const inPercent = (fraction: number | null) => (fraction === null ? null : fraction * 100);

export const TREND_KINDS: readonly TrendKind[] = [
  {
    id: 'loss',
    label: say.cookLoss,
    unit: '%',
    value: ({ cookLossFraction }) => inPercent(cookLossFraction),
    text: (value) => fixedText(value, 1),
  },
  {
    id: 'yield',
    label: say.yieldCookedAndChilledOfFilled,
    unit: '%',
    value: ({ cookLossFraction }) => inPercent(cookLossFraction === null ? null : 1 - cookLossFraction),
    text: (value) => fixedText(value, 1),
  },
  {
    id: 'ratio',
    label: say.timeToTheLimitTakenPlanned,
    unit: say.times,
    value: ({ predictedMin, cookMin }) => timeRatio({ predictedMin, actualMin: cookMin }),
    text: (value) => fixedText(value, 2),
  },
  {
    id: 'time',
    label: say.timeToTheLimitTaken,
    unit: 'min',
    value: ({ cookMin }) => cookMin,
    text: (value) => fixedText(value, 0),
  },
  {
    id: 'come-up',
    label: say.n10C50FTo54,
    unit: 'min',
    value: ({ comeUpMin }) => comeUpMin,
    text: (value) => fixedText(value, 0),
  },
  {
    id: 'salt',
    label: say.saltFromAllSources,
    unit: '%',
    value: ({ saltFraction }) => inPercent(saltFraction),
    text: (value) => fixedText(value, 2),
  },
  {
    id: 'deviations',
    label: say.deviationsWrittenDown,
    unit: '',
    value: ({ deviations }) => deviations,
    text: (value) => fixedText(value, 0),
    isCount: true,
  },
];
