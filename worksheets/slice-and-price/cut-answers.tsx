import { plainText } from '@larderwright/calc/quantities';
import { useContext } from 'preact/hooks';
import * as say from '#words/slice-and-price/cut-answers.ts';
import { Answer } from '../parts/answer.tsx';
import { Computed } from '../parts/computed.tsx';
import { FigureTable } from '../parts/figure-table.tsx';
import { Links } from '../parts/links.ts';
import { Needed } from '../parts/needed.tsx';
import { gramsText } from '../parts/number-text.ts';
import { useShared } from '../state/use-shared.ts';
import { slicingFigureNames, slicingWorkings } from '../words/slicing.ts';
import type { SlicingComputed } from './compute.ts';
import { $slicing } from './computed.ts';

const FIELD_NAMES: Readonly<Record<string, string>> = {
  'product.finished': say.finishedWeightWeighedPlanned,
  'mould.moulds': say.howManyMouldsThereAre,
  'slicing.packMass': say.theWeightOfAPortion,
  'slicing.endLoss': say.theLossOnEndsAndCrumbs,
  'slicing.length': say.theLengthOfAPiece,
  'slicing.thickness': say.theThicknessOfASlice,
  'slicing.endTrim': say.whatComesOffEachEnd,
  'slicing.kerf': say.whatTheBladeTakes,
  'slicing.slicesPerPortion': say.slicesToAPortion,
};

const FROM = {
  weighed: say.asWeighed,
  planned: say.plannedWeighFinishedPiecesWhen,
  unknown: '',
} as const;

function habitText({ habit }: SlicingComputed): string {
  if (!habit) return say.noHabitTradeKnownFamily;
  const range = ([low, high]: readonly [number, number], unit: string) =>
    low === high ? `${plainText(low)} ${unit}` : say.to(plainText(low), plainText(high), unit);
  const said = [
    habit.thicknessMm ? say.slicesOf(range(habit.thicknessMm, 'mm')) : null,
    habit.starterG ? say.forAStarter(range(habit.starterG, 'g')) : null,
    habit.mainG ? say.forAMain(range(habit.mainG, 'g')) : null,
  ].filter((part) => part !== null);
  return say.usualFamilyCommonPracticeNo(said.join(', '));
}

/** Slices and portions, and where the weight goes. */
export function CutAnswers() {
  const links = useContext(Links);
  return (
    <Computed of={useShared($slicing)}>
      {(computed) => {
        const { values, missing, slice, finishedFrom, mouldCount } = computed;
        const { cut, packed, slices, portions, portionG, soldG, finishedG, perMouldG, lengthMm } = values;
        const byThickness = slice.cutBy === 'thickness';
        const mass = (massG: number | null | undefined) => (massG == null ? null : gramsText(massG));
        const thickness = slice.thickness.text;
        return (
          <>
            <Needed
              missing={missing}
              figures={slicingFigureNames}
              nameOf={(field) => FIELD_NAMES[field] ?? field}
            />
            {mouldCount === null && byThickness ? (
              <p class="say">
                {say.mouldsAreCountedOn(
                  <a href={links.worksheets['mould-and-fill']}>{say.theirOwnWorksheet}</a>,
                )}
              </p>
            ) : null}
            <div class="answers">
              <Answer
                label={say.finishedWeight}
                value={mass(finishedG)}
                missing={say.cannotTellNotWeighedNotPlanned}
                worked={<p>{say.whatScaleShowedAfterChilling}</p>}
              >
                {FROM[finishedFrom] === '' ? null : <p>{FROM[finishedFrom]}</p>}
              </Answer>
              {byThickness ? (
                <>
                  <Answer
                    label={say.slicesAMould}
                    value={cut === null ? null : `${cut.slices}`}
                    worked={
                      <>
                        <p>
                          {say.commonPracticeNoSource(
                            slicingWorkings.slices,
                            cut && lengthMm !== null
                              ? say.hereLessTwoEndsByAnd(plainText(lengthMm), thickness)
                              : null,
                          )}
                        </p>
                        {cut && perMouldG !== null ? (
                          <FigureTable
                            columns={[say.ofOneMould, say.weight]}
                            rows={[
                              { key: 'slices', head: say.slices, cells: [gramsText(cut.slicesG)] },
                              { key: 'ends', head: say.bothEnds, cells: [gramsText(cut.endsG)] },
                              { key: 'blade', head: say.blade, cells: [gramsText(cut.kerfG)] },
                              { key: 'rest', head: say.restTooThin, cells: [gramsText(cut.restG)] },
                            ]}
                            foot={{ key: 'all', head: say.oneMould, cells: [gramsText(perMouldG)] }}
                          />
                        ) : null}
                      </>
                    }
                  />
                  <Answer
                    label={say.aSliceWeighs}
                    value={mass(cut?.sliceG)}
                    worked={<p>{say.derived(slicingWorkings.sliceG)}</p>}
                  />
                  <Answer
                    label={say.slicesInAll}
                    value={slices === null ? null : `${slices}`}
                    worked={<p>{say.slicesMouldTimesMouldsDerived}</p>}
                  />
                </>
              ) : null}
              <Answer
                label={say.portions}
                value={portions === null ? null : `${portions}`}
                worked={
                  <p>
                    {say.derived2(
                      byThickness ? slicingWorkings.portions : slicingWorkings.packs,
                      habitText(computed),
                    )}
                  </p>
                }
              />
              <Answer
                label={say.aPortionWeighs}
                value={mass(portionG)}
                worked={<p>{say.derived3(byThickness ? say.aSliceTimesSlicesToA : say.asYouWroteIt)}</p>}
              />
              <Answer
                label={say.soldInAll}
                value={mass(soldG)}
                worked={<p>{say.portionsTimesWeightEndsCrumbs}</p>}
              >
                {packed && packed.restG > 0 ? <p>{say.rest(gramsText(packed.restG))}</p> : null}
              </Answer>
            </div>
          </>
        );
      }}
    </Computed>
  );
}
