import { HIGHEST_BOARD_KPA, PRESS_BANDS, type PressBand, pressLoadKg } from '@larderwright/calc/press';
import { fixedText, plainText } from '@larderwright/calc/quantities';
import { column, numberColumn, plainCell, type TablePart } from '../../lib/table-model.ts';

/** Boards the loads are worked out for, inside plan of usual moulds, mm. */
const BOARDS = [
  { lengthMm: 255, widthMm: 85 },
  { lengthMm: 290, widthMm: 95 },
  { lengthMm: 320, widthMm: 110 },
] as const;

const span = (low: number, high: number, print: (value: number) => string) =>
  low === high ? print(low) : `${print(low)}–${print(high)}`;

function load({ lowKPa, highKPa, springBox }: PressBand, areaMm2: number): string {
  if (springBox) return 'rated box only';
  if (highKPa === 0) return 'none';
  return span(lowKPa, highKPa, (kPa) => fixedText(pressLoadKg(kPa, areaMm2) ?? 0, 1));
}

/** Pressure by product, and the mass that makes it. */
export const pressLoads: readonly TablePart[] = [
  {
    id: 'bands',
    title: 'How each kind is pressed',
    notes: [
      'Texture, not safety. Pressing never delays the chill.',
      `Above ${HIGHEST_BOARD_KPA} kPa use only a box or spring rated for it.`,
    ],
    sources: ['common-practice', 'cgpm-1901'],
    columns: [
      column('Product'),
      numberColumn('kPa'),
      column('Core when it goes on'),
      numberColumn('Hours'),
      ...BOARDS.map(({ lengthMm, widthMm }) => numberColumn(`kg on ${lengthMm} × ${widthMm}`)),
    ],
    rows: PRESS_BANDS.map((band) => ({
      id: `press-${band.id}`,
      cells: [
        band.name,
        band.highKPa === 0 ? '0' : span(band.lowKPa, band.highKPa, plainText),
        band.coreC === null ? '–' : plainCell(band.coreC),
        band.hours === null ? '–' : span(...band.hours, plainText),
        ...BOARDS.map(({ lengthMm, widthMm }) => load(band, lengthMm * widthMm)),
      ],
      mark: 'common-practice' as const,
    })),
  },
];
