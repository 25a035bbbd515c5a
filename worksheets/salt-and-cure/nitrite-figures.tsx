import type { CureValues } from '@larderwright/calc/cure';
import { fixedText } from '@larderwright/calc/quantities';
import * as say from '#words/salt-and-cure/nitrite-figures.ts';
import { Computed } from '../parts/computed.tsx';
import { FigureTable } from '../parts/figure-table.tsx';
import { gramsText } from '../parts/number-text.ts';
import { Worked } from '../parts/worked.tsx';
import { useShared } from '../state/use-shared.ts';
import { $cure } from './computed.ts';

/** mg/kg to the tenth, as the verdicts print it; what is judged is the exact figure. */
const ppmText = (ppm: number | null) => (ppm === null ? say.cannotTell : `${fixedText(ppm, 1)} mg/kg`);

/** Nitrite on both weights and in both forms, from every source. */
export function NitriteFigures() {
  return (
    <Computed of={useShared($cure)}>
      {({ cure, isReckonedElsewhere }) =>
        isReckonedElsewhere ? (
          <p class="say">{say.reckonedElsewhere}</p>
        ) : (
          <>
            <p class="say">
              {cure.inUse === 'as-weighed'
                ? say.weightsOffScalePlanStandsLines
                : say.planNothingHasBeenWeighedYet}
            </p>
            <NitriteTable cure={cure} />
            <Carried cure={cure} />
            <Worked>
              <p>
                {say.gramsCuringSaltStrengthWhat(
                  cure.nitriteG === null
                    ? say.cannotTell
                    : say.mgAsSodiumNitrite(fixedText(cure.nitriteG * 1000, 0)),
                )}
              </p>
              {cure.liningG === 0 ? null : <p>{say.liningDosedNothingBelongs}</p>}
              <p>{say.ion06668WeightNitriteSodium}</p>
            </Worked>
          </>
        )
      }
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
    const cells = [massG === null ? say.notKnown : gramsText(massG), salt, ion];
    return {
      key: head,
      head,
      cells: [...cells, ...(open ? [highest] : []), ...(weighed ? [planned] : [])],
    };
  };
  return (
    <FigureTable
      caption={say.nitritePutInFromEverySource}
      columns={[
        say.countedOn,
        say.weight,
        say.asSodiumNitrite,
        say.asNitriteIon,
        ...(open ? [say.atWorstAsSodiumNitrite] : []),
        ...(weighed ? [say.asPlanned] : []),
      ]}
      rows={[
        row(say.meatBlock, cure.meatBlockG, [
          cure.nitritePpmMeat,
          cure.nitriteIonPpmMeat,
          cure.highestPpmMeat,
          cure.plannedPpmMeat,
        ]),
        row(say.everythingInTheBowl, cure.totalG, [
          cure.nitritePpmTotal,
          cure.nitriteIonPpmTotal,
          cure.highestPpmTotal,
          cure.plannedPpmTotal,
        ]),
        ...(cure.liningG === 0
          ? []
          : [
              row(
                say.withTheLining,
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
          {name || say.unnamedLine}:{' '}
          {isBound
            ? say.makersFigureNotKnownCounted(
                highG === null ? say.noKnownEnd : `${fixedText(highG * 1000, 1)} mg`,
              )
            : say.bringsMgByItsMaker(fixedText(lowG * 1000, 1))}
        </li>
      ))}
    </ul>
  );
}
