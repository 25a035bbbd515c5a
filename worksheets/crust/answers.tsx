import { CHIMNEY_MM, type PasteWeights } from '@larderwright/calc/mould';
import * as say from '#words/crust/answers.ts';
import { Answer } from '../parts/answer.tsx';
import { Computed } from '../parts/computed.tsx';
import { FigureTable } from '../parts/figure-table.tsx';
import { Needed } from '../parts/needed.tsx';
import { gramsText, litresText } from '../parts/number-text.ts';
import { useShared } from '../state/use-shared.ts';
import { crustFigureNames, crustWorkings } from '../words/crust.ts';
import { crustFieldName, PASTE_PART_NAMES } from '../words/crust-names.ts';
import { $crust } from './computed.ts';
import { caulText, chimneysText, partText, placesText, sheetText } from './figure-text.ts';

/** Sheets to cut and what the pastry weighs. */
export function Sheets() {
  return (
    <Computed of={useShared($crust)}>
      {({ values, missing }) => {
        const { sheets, pastry, pastryTotalG, cavityMl, cavityTotalMl } = values;
        const places = placesText(values);
        return (
          <>
            <div class="answers">
              <Answer
                label={sheets?.wall ? say.base : say.baseAndWallsInOne}
                value={sheets && sheetText(sheets.base)}
                missing={say.noSheet}
                worked={
                  <p>
                    {sheets?.wall ? say.thePlanOfTheMould : crustWorkings.base} {say.habit}
                  </p>
                }
              />
              {sheets?.wall ? (
                <Answer
                  label={say.stripForTheWall}
                  value={sheetText(sheets.wall)}
                  worked={<p>{say.wayRoundOneOverlapDepthTwo(say.habit)}</p>}
                />
              ) : null}
              <Answer
                label={say.lid}
                value={sheets && sheetText(sheets.lid)}
                missing={say.noSheet}
                worked={
                  <p>
                    {crustWorkings.lid} {say.habit}
                  </p>
                }
              />
              <Answer
                label={say.pastryForOne}
                value={pastry && gramsText(pastry.withSpareG)}
                missing={say.cannotTellSeeWhatStillNeeded}
                worked={
                  <p>
                    {say.derivedDensitySpareCommon(
                      crustWorkings.mass,
                      pastry ? say.sheetsAlone(gramsText(pastry.sheetsG)) : '',
                    )}
                  </p>
                }
              />
              <Answer
                label={say.pastryForAll}
                value={pastryTotalG === null ? null : gramsText(pastryTotalG)}
                missing={say.cannotTellPastryOneHowMany}
                worked={<p>{say.pastryForOneHowManyDerived}</p>}
              />
              <Answer
                label={say.chimneys}
                value={chimneysText(values)}
                missing={say.cannotTellLengthMouldMissing}
                worked={
                  <p>
                    {crustWorkings.chimneys} {say.habit}
                  </p>
                }
              >
                {places === null ? null : (
                  <p>
                    {say.holesOfToMmFunnelsTo(
                      places,
                      CHIMNEY_MM.holeMin,
                      CHIMNEY_MM.holeMax,
                      CHIMNEY_MM.funnelMin,
                      CHIMNEY_MM.funnelMax,
                    )}
                  </p>
                )}
              </Answer>
              <Answer
                label={say.roomInsideOneCrust}
                value={cavityMl === null ? null : litresText(cavityMl)}
                missing={say.cannotTellMeasureThickness}
                worked={<p>{say.derivedLittleTooLargeWhereLid(crustWorkings.cavity)}</p>}
              >
                {cavityTotalMl === null ? null : <p>{say.inAllOfThem(litresText(cavityTotalMl))}</p>}
              </Answer>
            </div>
            <Needed missing={missing} figures={crustFigureNames} nameOf={crustFieldName} />
          </>
        );
      }}
    </Computed>
  );
}

/** Grams of the paste, for all pies. */
export function PasteTable() {
  return (
    <Computed of={useShared($crust)}>
      {({ slice, values: { paste, saltG } }) =>
        paste === null ? (
          <div class="answers">
            <Answer
              label={say.saltInThePastry}
              value={saltG === null ? null : gramsText(saltG)}
              missing={
                slice.pasteId === null ? say.cannotTellPastrySaltOwnPaste : say.cannotTellPastryAllMissing
              }
              worked={<p>{say.pastryForAllItsSaltDerived}</p>}
            />
          </div>
        ) : (
          <FigureTable
            caption={say.pasteAllParts100FlourMiddle}
            columns={[say.what, say.weigh, say.to100OfFlour]}
            rows={(Object.keys(PASTE_PART_NAMES) as (keyof PasteWeights)[])
              .filter((part) => paste[part] > 0)
              .map((part) => ({
                key: part,
                head: PASTE_PART_NAMES[part],
                cells: [gramsText(paste[part]), partText(paste, part)],
              }))}
          />
        )
      }
    </Computed>
  );
}

/** Slices and caul for one mould. */
export function LiningAnswers() {
  return (
    <Computed of={useShared($crust)}>
      {({ values }) => {
        const { lining } = values;
        const sliced = lining?.sliced ?? null;
        return (
          <div class="answers">
            <Answer
              label={say.slicesForEachMould}
              value={lining?.slices == null ? null : `${lining.slices}`}
              missing={say.cannotTellMouldWidthSlice}
              worked={<p>{say.derived(crustWorkings.slices)}</p>}
            >
              {sliced === null ? null : (
                <p>
                  {gramsText(sliced.massG)};{' '}
                  {sliced.saltG === null ? say.theirSaltIsUnknown : say.ofSalt(gramsText(sliced.saltG))}
                </p>
              )}
            </Answer>
            <Answer
              label={say.orCaulForEachMould}
              value={caulText(values)}
              missing={say.cannotTellMeasureMouldMissing}
              worked={
                <p>
                  {crustWorkings.caul} {say.habit}
                </p>
              }
            />
          </div>
        );
      }}
    </Computed>
  );
}
