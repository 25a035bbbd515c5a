import type { BrineValues } from '@larderwright/calc/brine';
import { fixedText } from '@larderwright/calc/quantities';
import * as say from '#words/brine/nitrite-table.ts';
import { Computed } from '../parts/computed.tsx';
import { FigureTable } from '../parts/figure-table.tsx';
import { gramsText, percentText } from '../parts/number-text.ts';
import { Worked } from '../parts/worked.tsx';
import { useShared } from '../state/use-shared.ts';
import { $brine } from './computed.ts';

const ppmText = (ppm: number | null) => (ppm === null ? say.cannotTell : `${fixedText(ppm, 1)} mg/kg`);

/** Nitrite of one vat by each counting, side by side; they are never mixed. */
export function NitriteTable() {
  return (
    <Computed of={useShared($brine)}>
      {({ values, slice }) =>
        slice.method === null ? (
          <p class="not-yet">{say.cannotTellChooseWayBrine}</p>
        ) : (
          <>
            <p class="say">
              {values.inUse.isCureWeighed ? say.byTheWeightOffTheScale : say.planCuringSaltNotWeighedYet}
            </p>
            <FigureTable
              caption={say.nitritePutInAsSodiumNitrite}
              columns={[say.counted, say.comesTo, say.workedAs]}
              rows={rows(values)}
            />
            <Worked>
              <p>
                {say.pickleAllBrineEverything(
                  values.pickleG === null ? say.notKnown : gramsText(values.pickleG),
                  values.nitriteG === null ? say.notKnown : `${fixedText(values.nitriteG * 1000, 0)} mg`,
                )}
              </p>
              <p>{say.bothCountingsThoseFsis}</p>
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
  const share = (fraction: number | null) => (fraction === null ? say.notWeighed : percentText(fraction, 1));
  const soak =
    immersion === null
      ? []
      : [
          row(
            'pick-up',
            say.byPickUpFederalMethod1,
            immersion.pickUpPpm,
            say.nitritePickUpPickle(share(pickUpFraction)),
          ),
          row(
            'equilibrium',
            say.atEquilibriumFederalMethod2,
            immersion.equilibriumPpm,
            say.nitriteMeatPickle,
          ),
          row('worst', say.ifTheMeatTookUpAll, immersion.worstPpm, say.nitriteMeat),
        ];
  const pumped =
    pumpedPpm === null
      ? []
      : [row('pumped', say.byThePump, pumpedPpm, say.nitritePumpPickle(share(pumpFraction)))];
  return [
    ...pumped,
    ...soak,
    row('water', say.onMeatAndWater, nitritePpmMeatAndWater, say.nitriteMeatWater),
    row('all', say.onEverythingInTheVat, nitritePpmAll, say.nitriteMeatPickle),
  ];
}
