import {
  type BrineScale,
  brineFreezesC,
  brineStrength,
  SALOMETER_SCALES,
  salometerDegrees,
} from '@larderwright/calc/brine';
import { fixedText } from '@larderwright/calc/quantities';
import * as say from '#words/brine/scale-rows.ts';
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
  if (strength === null) return <p class="not-yet">{say.noWaterHoldsThatMuchSalt}</p>;
  const scales = Object.keys(BRINE_SCALES) as BrineScale[];
  const freezesC = brineFreezesC(saltFraction);
  const rows: FigureRow[] = scales.map((scale) => {
    const { label, unit } = BRINE_SCALES[scale];
    const value = scale === 'fraction' ? strength.fraction * 100 : strength[scale];
    return { key: scale, head: label, cells: [`${fixedText(value, DECIMALS[scale])} ${unit}`.trim()] };
  });
  if (freezesC !== null) {
    rows.push({ key: 'freezes', head: say.freezesAt, cells: [`${fixedText(freezesC, 1)} °C`] });
  }
  return (
    <>
      <FigureTable caption={caption} columns={[say.scaleAt60F156, say.reads]} rows={rows} />
      <Worked>
        <p>{say.degreesSalometer100Salt26395}</p>
        <p>
          {say.salometersDifferWhatCall100(
            SALOMETER_SCALES.map(({ id, saltAt100Fraction }) =>
              say.where100Is(
                fixedText(salometerDegrees(saltFraction, id) ?? 0, 1),
                fixedText(saltAt100Fraction * 100, 2),
              ),
            ).join(', '),
          )}
        </p>
      </Worked>
    </>
  );
}
