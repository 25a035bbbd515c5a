import {
  BRINE_FREEZING,
  BRINE_FREEZING_SOURCE,
  BRINE_TABLE,
  BRINE_TABLE_SOURCES,
  SALOMETER_SCALES,
  type SalometerScaleId,
} from '@larderwright/calc/brine';
import { fixedText, plainText } from '@larderwright/calc/quantities';
import { column, numberColumn, plainCell, type TablePart } from '../../lib/table-model.ts';

const SCALE_NAMES: Readonly<Record<SalometerScaleId, string>> = {
  'saturation-60F': 'Saturated brine at 60 °F is 100 (the table above)',
  'hydrometer-26-4': 'Hydrometer scale, first form',
  'hydrometer-26-5': 'Hydrometer scale, second form',
  pickling: 'Pickling scale: one degree for each quarter of a per cent',
};

/** Salt brine in every scale. */
export const brineStrength: readonly TablePart[] = [
  {
    id: 'strength',
    title: 'Salt brine in every scale',
    notes: [
      'Plain salt in water at 15.6 °C. Sugar, curing salt and phosphate make a brine read stronger than its salt.',
    ],
    sources: BRINE_TABLE_SOURCES,
    columns: [
      numberColumn('° salometer'),
      numberColumn('Salt, % of brine'),
      numberColumn('Salt, g on 1 kg water'),
      numberColumn('Salt, g in 1 L brine'),
      numberColumn('Gravity'),
      numberColumn('° Baumé'),
      numberColumn('Water activity'),
    ],
    rows: BRINE_TABLE.map((row) => ({
      id: `salometer-${row.salometer}`,
      cells: [
        `${row.salometer}°`,
        fixedText(row.saltPercent, 2),
        fixedText(row.saltGPerKgWater, 1),
        fixedText(row.saltGPerLitreBrine, 1),
        fixedText(row.specificGravity, 4),
        fixedText(row.baume, 1),
        fixedText(row.waterActivity, 3),
      ],
      mark: row.mark,
      words: [`${row.salometer} degrees salometer brine strength`],
    })),
  },
  {
    id: 'salometers',
    title: 'What 100 degrees means, by scale',
    notes: ['Ask which scale yours carries. The same brine reads several degrees apart on two of them.'],
    sources: ['salometer-manual', 'hydrometer-scales'],
    columns: [column('Scale'), numberColumn('Salt at 100°, %')],
    rows: SALOMETER_SCALES.map(({ id, saltAt100Fraction, mark }) => ({
      id: `scale-${id.toLowerCase()}`,
      cells: [SCALE_NAMES[id], fixedText(saltAt100Fraction * 100, 2)],
      mark,
    })),
  },
  {
    id: 'freezing',
    title: 'Where brine freezes',
    notes: ['The last row is the coldest a salt brine can be and still be liquid.'],
    sources: [BRINE_FREEZING_SOURCE],
    columns: [numberColumn('Salt, % of brine'), column('First ice at')],
    rows: BRINE_FREEZING.map(({ saltPercent, freezesC }) => ({
      id: `freezes-${plainText(saltPercent).replace('.', '-')}`,
      cells: [`${plainText(saltPercent)} %`, plainCell(freezesC)],
      mark: 'confirmed' as const,
    })),
  },
];
