import { fixedText } from '@larderwright/calc/quantities';
import { timeRatio } from '@larderwright/calc/trends';
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
    label: 'Cook loss',
    unit: '%',
    value: ({ cookLossFraction }) => inPercent(cookLossFraction),
    text: (value) => fixedText(value, 1),
  },
  {
    id: 'yield',
    label: 'Yield: cooked and chilled, of filled',
    unit: '%',
    value: ({ cookLossFraction }) => inPercent(cookLossFraction === null ? null : 1 - cookLossFraction),
    text: (value) => fixedText(value, 1),
  },
  {
    id: 'ratio',
    label: 'Time to the limit: taken ÷ planned',
    unit: 'times',
    value: ({ predictedMin, cookMin }) => timeRatio({ predictedMin, actualMin: cookMin }),
    text: (value) => fixedText(value, 2),
  },
  {
    id: 'time',
    label: 'Time to the limit, taken',
    unit: 'min',
    value: ({ cookMin }) => cookMin,
    text: (value) => fixedText(value, 0),
  },
  {
    id: 'come-up',
    label: '10 °C (50 °F) to 54.4 °C (130 °F)',
    unit: 'min',
    value: ({ comeUpMin }) => comeUpMin,
    text: (value) => fixedText(value, 0),
  },
  {
    id: 'salt',
    label: 'Salt from all sources',
    unit: '%',
    value: ({ saltFraction }) => inPercent(saltFraction),
    text: (value) => fixedText(value, 2),
  },
  {
    id: 'deviations',
    label: 'Deviations written down',
    unit: '',
    value: ({ deviations }) => deviations,
    text: (value) => fixedText(value, 0),
    isCount: true,
  },
];
