import { CURING_SALT_STRENGTHS, nitriteOfAGramPerKg } from '@larderwright/calc/cure';
import { fixedText, plainText } from '@larderwright/calc/quantities';
import { column, numberColumn, type TablePart } from '../../lib/table-model.ts';

const span = (low: number, high: number, print: (value: number) => string) =>
  low === high ? print(low) : `${print(low)}–${print(high)}`;

/** What packs of curing salt hold, and what a gram of each does. */
export const curingSalts: readonly TablePart[] = [
  {
    id: 'strengths',
    title: 'Strengths met on packs',
    notes: [
      'Read your own pack. No worksheet takes a strength from this table, and none has a default.',
      'The last figure shows what a mix-up costs: one gram of each in a kilogram of meat.',
    ],
    sources: ['trade-curing-salts'],
    columns: [
      column('Curing salt'),
      numberColumn('Sodium nitrite, %'),
      numberColumn('Sodium nitrate, %'),
      numberColumn('1 g in 1 kg gives, mg/kg'),
    ],
    rows: CURING_SALT_STRENGTHS.map(({ id, name, nitritePercent: [low, high], nitratePercent, mark }) => ({
      id,
      cells: [
        name,
        span(low, high, plainText),
        nitratePercent === 0 ? 'none' : plainText(nitratePercent),
        span(nitriteOfAGramPerKg(low), nitriteOfAGramPerKg(high), (value) => fixedText(value, 1)),
      ],
      mark,
    })),
  },
];
