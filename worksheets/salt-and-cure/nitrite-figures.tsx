import type { CureValues } from '@larderwright/calc/cure';
import { fixedText } from '@larderwright/calc/quantities';
import { Computed } from '../parts/computed.tsx';
import { FigureTable } from '../parts/figure-table.tsx';
import { gramsText } from '../parts/number-text.ts';
import { Worked } from '../parts/worked.tsx';
import { useShared } from '../state/use-shared.ts';
import { $cure } from './computed.ts';

/** mg/kg to the tenth, as the verdicts print it; what is judged is the exact figure. */
const ppmText = (ppm: number | null) => (ppm === null ? 'cannot tell' : `${fixedText(ppm, 1)} mg/kg`);

/** Nitrite on both weights and in both forms, from every source. */
export function NitriteFigures() {
  return (
    <Computed of={useShared($cure)}>
      {({ cure }) => (
        <>
          <p class="say">
            {cure.inUse === 'as-weighed'
              ? 'By the weights off the scale; the plan stands in for lines not weighed yet.'
              : 'By the plan: nothing has been weighed yet.'}
          </p>
          <NitriteTable cure={cure} />
          <Carried cure={cure} />
          <Worked>
            <p>
              Grams of curing salt × its strength, and what cured ingredients bring by their makers, added up:{' '}
              {cure.nitriteG === null
                ? 'cannot tell'
                : `${fixedText(cure.nitriteG * 1000, 0)} mg as sodium nitrite`}
              . Divided by the kilograms it is counted on.
            </p>
            {cure.liningG === 0 ? null : (
              <p>
                The lining is dosed with nothing: it belongs to neither the meat block nor the bowl. Limits on
                the product are judged on the worse of the two, the mix alone and the mix with its lining.
              </p>
            )}
            <p>
              As ion × 0.6668: the weight of nitrite in sodium nitrite (46.0055 ÷ 68.9953, derived from atomic
              weights).
            </p>
          </Worked>
        </>
      )}
    </Computed>
  );
}

function NitriteTable({ cure }: { cure: CureValues }) {
  const open = cure.highestPpmTotal !== cure.nitritePpmTotal || cure.highestPpmMeat !== cure.nitritePpmMeat;
  const weighed = cure.inUse === 'as-weighed';
  const row = (
    head: string,
    massG: number | null,
    figures: readonly [
      salt: number | null,
      ion: number | null,
      highest: number | null,
      planned: number | null,
    ],
  ) => {
    const [salt, ion, highest, planned] = figures.map(ppmText);
    const cells = [massG === null ? 'not known' : gramsText(massG), salt, ion];
    return {
      key: head,
      head,
      cells: [...cells, ...(open ? [highest] : []), ...(weighed ? [planned] : [])],
    };
  };
  return (
    <FigureTable
      caption="Nitrite put in, from every source"
      columns={[
        'Counted on',
        'Weight',
        'As sodium nitrite',
        'As nitrite ion',
        ...(open ? ['At worst, as sodium nitrite'] : []),
        ...(weighed ? ['As planned'] : []),
      ]}
      rows={[
        row('Meat block', cure.meatBlockG, [
          cure.nitritePpmMeat,
          cure.nitriteIonPpmMeat,
          cure.highestPpmMeat,
          cure.plannedPpmMeat,
        ]),
        row('Everything in the bowl', cure.totalG, [
          cure.nitritePpmTotal,
          cure.nitriteIonPpmTotal,
          cure.highestPpmTotal,
          cure.plannedPpmTotal,
        ]),
        ...(cure.liningG === 0
          ? []
          : [
              row(
                'With the lining',
                cure.totalG === null || cure.liningG === null ? null : cure.totalG + cure.liningG,
                [cure.nitritePpmLined, cure.nitriteIonPpmLined, cure.highestPpmLined, cure.plannedPpmLined],
              ),
            ]),
      ]}
    />
  );
}

function Carried({ cure }: { cure: CureValues }) {
  if (cure.carried.length === 0) return null;
  return (
    <ul class="carried">
      {cure.carried.map(({ lineId, name, lowG, highG, isBound }) => (
        <li key={lineId}>
          {name || 'Unnamed line'}:{' '}
          {isBound
            ? `its maker’s figure is not known; counted from nothing to ${highG === null ? 'no known end' : `${fixedText(highG * 1000, 1)} mg`}`
            : `brings ${fixedText(lowG * 1000, 1)} mg by its maker`}
        </li>
      ))}
    </ul>
  );
}
