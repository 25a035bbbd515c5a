import {
  AGAR_MELTS_C,
  AGAR_SETS_C,
  AGAR_STRENGTH,
  bloomSquareRootG,
  GELATINE_MELTS_C,
  GELATINE_SETS_C,
  gPerLOfOzPerGallon,
  type JellyUse,
  SHEETS,
  STOCK_RATIOS,
  STRENGTH_BY_USE,
} from '@larderwright/calc/gelee';
import { fixedText, plainText, roundTo } from '@larderwright/calc/quantities';
import { JELLY_USE_NAMES, SHEET_GRADE_NAMES } from '../../../worksheets/words/gelee-names.ts';
import { column, numberColumn, plainCell, type TablePart } from '../../lib/table-model.ts';

/** The bloom the strengths by use are told for, and others worked out from it. */
const TOLD_BLOOM = 200;
const OTHER_BLOOMS = [160, 250] as const;

const percent = (fraction: number) => plainText(roundTo(fraction * 100, 2));
const range = (min: number, max: number) => (min === max ? percent(min) : `${percent(min)}–${percent(max)}`);
const span = (min: number, max: number, print: (value: number) => string) =>
  min === max ? print(min) : `${print(min)}–${print(max)}`;

/** The same firmness with another bloom, % of the liquid. */
function atBloom(fraction: number, bloom: number): string {
  return fixedText((bloomSquareRootG(fraction, TOLD_BLOOM, bloom) ?? 0) * 100, 1);
}

/** Strength of savoury jelly. */
export const jellyStrength: readonly TablePart[] = [
  {
    id: 'by-use',
    title: 'Gelatine by use, % of the liquid',
    notes: [
      'Told for 200 bloom; the other two are worked out for the same firmness. Stock sets by itself: test a spoonful on a cold plate first.',
    ],
    sources: ['trade-gelee-habits', 'gmia-gelatin-handbook'],
    columns: [
      column('Use'),
      numberColumn(`${TOLD_BLOOM} bloom`),
      ...OTHER_BLOOMS.map((bloom) => numberColumn(`${bloom} bloom`)),
    ],
    rows: [
      ...(Object.keys(STRENGTH_BY_USE) as JellyUse[]).map((use) => {
        const { minFraction, maxFraction } = STRENGTH_BY_USE[use];
        return {
          id: `use-${use}`,
          cells: [
            JELLY_USE_NAMES[use],
            range(minFraction, maxFraction),
            ...OTHER_BLOOMS.map((bloom) => `${atBloom(minFraction, bloom)}–${atBloom(maxFraction, bloom)}`),
          ],
          mark: 'common-practice' as const,
          words: ['gelatine', 'aspic', 'jelly strength'],
        };
      }),
      {
        id: 'use-agar',
        cells: [
          'Agar instead, any use',
          range(AGAR_STRENGTH.minFraction, AGAR_STRENGTH.maxFraction),
          '–',
          '–',
        ],
        mark: 'common-practice',
        words: ['agar'],
      },
    ],
  },
  {
    id: 'by-stock',
    title: 'Granulated gelatine in unsalted stock, as a textbook prints it',
    notes: ['For 225 to 250 bloom.'],
    sources: [STOCK_RATIOS.source],
    columns: [column('Use'), numberColumn('oz in a US gallon'), numberColumn('g in a litre')],
    rows: STOCK_RATIOS.rows.map(({ id, name, minOz, maxOz }) => ({
      id: `stock-${id}`,
      cells: [
        name,
        span(minOz, maxOz, plainText),
        span(minOz, maxOz, (oz) => fixedText(gPerLOfOzPerGallon(oz), 0)),
      ],
      mark: STOCK_RATIOS.mark,
      words: ['gelatine'],
    })),
  },
  {
    id: 'sheets',
    title: 'Sheets by grade',
    notes: ['One sheet sets about as much as another. By weight they differ, so say which you count.'],
    sources: [...new Set(SHEETS.map(({ source }) => source))],
    columns: [column('Grade'), numberColumn('Bloom'), numberColumn('A sheet, g')],
    rows: SHEETS.map(({ grade, bloomLow, bloomHigh, sheetG, mark }) => ({
      id: `sheet-${grade}`,
      cells: [SHEET_GRADE_NAMES[grade], span(bloomLow, bloomHigh, plainText), plainText(sheetG)],
      mark,
      words: ['gelatine leaf', 'gelatine sheet'],
    })),
  },
  {
    id: 'sets-and-melts',
    title: 'Where it sets and melts',
    notes: [],
    sources: ['trade-gelee-habits'],
    columns: [column('Jelly'), column('Sets'), column('Melts')],
    rows: [
      {
        id: 'sets-gelatine',
        cells: [
          'Gelatine',
          plainCell([GELATINE_SETS_C.min, GELATINE_SETS_C.max]),
          plainCell([GELATINE_MELTS_C.min, GELATINE_MELTS_C.max]),
        ],
        mark: 'common-practice',
      },
      {
        id: 'sets-agar',
        cells: ['Agar', plainCell([AGAR_SETS_C.min, AGAR_SETS_C.max]), plainCell(AGAR_MELTS_C)],
        mark: 'memory',
      },
    ],
  },
];
