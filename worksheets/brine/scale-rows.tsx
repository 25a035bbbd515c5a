import {
  type BrineScale,
  brineFreezesC,
  brineStrength,
  SALOMETER_SCALES,
  salometerDegrees,
} from '@larderwright/calc/brine';
import { fixedText } from '@larderwright/calc/quantities';
import { type FigureRow, FigureTable } from '../parts/figure-table.tsx';
import { Worked } from '../parts/worked.tsx';
import { BRINE_SCALES } from '../words/brine-names.ts';

const DECIMALS: Readonly<Record<BrineScale, number>> = {
  fraction: 2,
  salometer: 1,
  baume: 1,
  'specific-gravity': 4,
  'g-per-litre-brine': 1,
  'g-per-kg-water': 1,
  'lb-per-gallon-brine': 3,
  'lb-per-gallon-water': 3,
};

/** One brine in every scale; nothing beyond what water dissolves. */
export function ScaleRows({ saltFraction, caption }: { saltFraction: number; caption: string }) {
  const strength = brineStrength(saltFraction);
  if (strength === null) return <p class="not-yet">No water holds that much salt.</p>;
  const scales = Object.keys(BRINE_SCALES) as BrineScale[];
  const freezesC = brineFreezesC(saltFraction);
  const rows: FigureRow[] = scales.map((scale) => {
    const { label, unit } = BRINE_SCALES[scale];
    const value = scale === 'fraction' ? strength.fraction * 100 : strength[scale];
    return { key: scale, head: label, cells: [`${fixedText(value, DECIMALS[scale])} ${unit}`.trim()] };
  });
  if (freezesC !== null) {
    rows.push({ key: 'freezes', head: 'Freezes at', cells: [`${fixedText(freezesC, 1)} °C`] });
  }
  return (
    <>
      <FigureTable caption={caption} columns={['Scale, at 60 °F (15.6 °C)', 'Reads']} rows={rows} />
      <Worked>
        <p>
          Degrees salometer: 100 × salt ÷ 26.395 %, saturated brine at 60 °F (The salometer and how to use
          it). Degrees Baumé: 145 − 145 ÷ specific gravity. Specific gravity between the rows of the brine
          table. Freezing point between the points of the CRC Handbook. Sugar makes a hydrometer read higher.
        </p>
        <p>
          Salometers differ in what they call 100 degrees. This brine reads{' '}
          {SALOMETER_SCALES.map(
            ({ id, saltAt100Fraction }) =>
              `${fixedText(salometerDegrees(saltFraction, id) ?? 0, 1)} where 100 is ${fixedText(saltAt100Fraction * 100, 2)} %`,
          ).join(', ')}
          .
        </p>
      </Worked>
    </>
  );
}
