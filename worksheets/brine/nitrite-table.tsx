import type { BrineValues } from '@larderwright/calc/brine';
import { fixedText } from '@larderwright/calc/quantities';
import { Computed } from '../parts/computed.tsx';
import { FigureTable } from '../parts/figure-table.tsx';
import { gramsText, percentText } from '../parts/number-text.ts';
import { Worked } from '../parts/worked.tsx';
import { useShared } from '../state/use-shared.ts';
import { $brine } from './computed.ts';

const ppmText = (ppm: number | null) => (ppm === null ? 'cannot tell' : `${fixedText(ppm, 1)} mg/kg`);

/** Nitrite of one vat by each counting, side by side; they are never mixed. */
export function NitriteTable() {
  return (
    <Computed of={useShared($brine)}>
      {({ values, slice }) =>
        slice.method === null ? (
          <p class="not-yet">CANNOT TELL: choose the way of the brine</p>
        ) : (
          <>
            <p class="say">
              {values.inUse.isCureWeighed
                ? 'By the weight off the scale.'
                : 'By the plan: the curing salt is not weighed yet.'}
            </p>
            <FigureTable
              caption="Nitrite put in, as sodium nitrite"
              columns={['Counted', 'Comes to', 'Worked as']}
              rows={rows(values)}
            />
            <Worked>
              <p>
                Pickle is all of the brine, with everything in it:{' '}
                {values.pickleG === null ? 'not known' : gramsText(values.pickleG)}. Nitrite in it:{' '}
                {values.nitriteG === null ? 'not known' : `${fixedText(values.nitriteG * 1000, 0)} mg`}, grams
                of curing salt × its strength.
              </p>
              <p>
                Both countings are those of FSIS Directive 7620.3 (rev. 1995), immersion, methods 1 and 2; a
                pump is counted as a pick-up is. The worst case is derived: all of it ends in the meat.
              </p>
            </Worked>
          </>
        )
      }
    </Computed>
  );
}

function rows(values: BrineValues) {
  const { pumpedPpm, immersion, nitritePpmAll, nitritePpmMeatAndWater, pumpFraction, pickUpFraction } =
    values;
  const row = (key: string, head: string, ppm: number | null, how: string) => ({
    key,
    head,
    cells: [ppmText(ppm), how],
  });
  const share = (fraction: number | null) => (fraction === null ? 'not weighed' : percentText(fraction, 1));
  const soak =
    immersion === null
      ? []
      : [
          row(
            'pick-up',
            'By pick-up, federal method 1',
            immersion.pickUpPpm,
            `nitrite × pick-up (${share(pickUpFraction)}) ÷ pickle`,
          ),
          row(
            'equilibrium',
            'At equilibrium, federal method 2',
            immersion.equilibriumPpm,
            'nitrite ÷ (meat + pickle)',
          ),
          row('worst', 'If the meat took up all of it', immersion.worstPpm, 'nitrite ÷ meat'),
        ];
  const pumped =
    pumpedPpm === null
      ? []
      : [row('pumped', 'By the pump', pumpedPpm, `nitrite × pump (${share(pumpFraction)}) ÷ pickle`)];
  return [
    ...pumped,
    ...soak,
    row('water', 'On meat and water', nitritePpmMeatAndWater, 'nitrite ÷ (meat + water)'),
    row('all', 'On everything in the vat', nitritePpmAll, 'nitrite ÷ (meat + pickle)'),
  ];
}
