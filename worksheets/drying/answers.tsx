import type { AfterDrying, DryingValues } from '@larderwright/calc/drying';
import { fixedText } from '@larderwright/calc/quantities';
import { type Mark, type SourceId, sourceOf } from '@larderwright/calc/sources';
import * as say from '#words/drying/answers.ts';
import { Answer } from '../parts/answer.tsx';
import { Computed } from '../parts/computed.tsx';
import { FigureTable } from '../parts/figure-table.tsx';
import { gramsText, percentText } from '../parts/number-text.ts';
import { useShared } from '../state/use-shared.ts';
import { RATIO_CLASS_NAMES, WATER_ACTIVITY_NAMES } from '../words/drying-names.ts';
import { $drying } from './computed.ts';

const sourceText = (source: SourceId, mark: Mark) =>
  `${sourceOf(source).title}${mark === 'memory' ? say.fromMemory : ''}`;

/** Loss so far, and the weight to wait for. */
export function WeightAnswers() {
  return (
    <Computed of={useShared($drying)}>
      {({ values: { lossFraction, targetMassG, toLoseG } }) => (
        <div class="answers">
          <Answer
            label={say.lostSoFar}
            value={lossFraction === null ? null : percentText(lossFraction, 1)}
            missing={say.cannotTellWeighStartNow}
            worked={<p>{say.n1WeightNowWeightWhenDrying}</p>}
          />
          <Answer
            label={say.weightAtTheLossWanted}
            value={targetMassG === null ? null : gramsText(targetMassG)}
            missing={say.cannotTellWriteWeightStartLoss}
            worked={<p>{say.weightWhenDryingBegan1Loss}</p>}
          >
            {toLoseG === null ? null : (
              <p>{toLoseG === 0 ? say.itIsThere : say.stillToLose(gramsText(toLoseG))}</p>
            )}
          </Answer>
        </div>
      )}
    </Computed>
  );
}

/** Salt on the water and water activity, estimated from what went in. */
export function Estimates() {
  return (
    <Computed of={useShared($drying)}>
      {({ values }) => (
        <>
          <FigureTable
            caption={say.estimatedFromSaltAndWaterAlone}
            columns={[say.when, say.saltOnTheWater, say.waterActivity]}
            rows={[
              { key: 'now', head: say.atTheLossSoFar, cells: afterCells(values.now) },
              { key: 'target', head: say.atTheLossWanted, cells: afterCells(values.atTarget) },
            ]}
          />
          <div class="answers">
            <Answer
              label={say.saltAtTheLossWanted}
              value={
                values.saltAtTargetFraction === null ? null : percentText(values.saltAtTargetFraction, 2)
              }
              missing={say.cannotTellSaltStartLossMissing}
              worked={
                <>
                  <p>{say.salt1LossSaltStaysWater}</p>
                  <p>{say.waterSaltSaltMoistureLossWater}</p>
                </>
              }
            />
            <Answer
              label={say.moistureToProteinEstimated}
              value={values.estimatedRatio === null ? null : fixedText(values.estimatedRatio, 2, 'up')}
              missing={say.cannotTellMoistureProteinLoss}
              worked={<p>{say.moistureStartLossProteinStart}</p>}
            />
          </div>
        </>
      )}
    </Computed>
  );
}

function afterCells(after: AfterDrying | null): string[] {
  if (after === null) return [say.cannotTell, say.cannotTell];
  const { waterPhaseFraction, waterActivity } = after;
  return [
    percentText(waterPhaseFraction, 2),
    waterActivity === null
      ? say.beyondSaturatedSalt
      : say.to(fixedText(waterActivity.low, 3), fixedText(waterActivity.high, 3, 'up')),
  ];
}

/** Measured figures beside what laws and microbes tie to them. None judges a product. */
export function Measured() {
  return (
    <Computed of={useShared($drying)}>
      {({ values }) => (
        <>
          <p class="say">{say.shownComparisonNoneSaysProduct}</p>
          <ActivityTable values={values} />
          <RatioTable values={values} />
        </>
      )}
    </Computed>
  );
}

function ActivityTable({ values: { waterActivityRows } }: { values: DryingValues }) {
  return (
    <FigureTable
      caption={say.waterActivity}
      columns={[say.what, say.figure, say.measured, say.by]}
      words
      rows={waterActivityRows.map(({ limit, isBelow }) => ({
        key: limit.id + limit.group,
        head: WATER_ACTIVITY_NAMES[limit.id] ?? limit.id,
        cells: [
          bandText(limit),
          isBelow === null ? say.notMeasured : isBelow ? say.below : say.notBelow,
          sourceText(limit.source, limit.mark),
        ],
      }))}
    />
  );
}

function bandText({ group, low, high }: DryingValues['waterActivityRows'][number]['limit']): string {
  if (group === 'growth') return say.from(low === null ? '' : fixedText(low, 3));
  if (low === null) return say.atMost(high === null ? '' : fixedText(high, 2));
  return say.to(fixedText(low, 2), high === null ? '' : fixedText(high, 2));
}

function RatioTable({ values: { ratioRows, measuredRatio } }: { values: DryingValues }) {
  return (
    <FigureTable
      caption={say.moistureToProtein(
        measuredRatio === null ? say.notMeasured2 : say.measured2(fixedText(measuredRatio, 2, 'up')),
      )}
      columns={[say.name, say.atMost2, say.hasIt, say.lossThatWouldReachIt, say.by]}
      words
      rows={ratioRows.map(({ ratioClass, meets, lossFraction }) => ({
        key: ratioClass.id,
        head: RATIO_CLASS_NAMES[ratioClass.id] ?? ratioClass.id,
        cells: [
          `${fixedText(ratioClass.maxRatio, 2)}${ratioClass.maxPh === null ? '' : `, pH ${fixedText(ratioClass.maxPh, 1)}`}`,
          meets === null ? say.cannotTell : meets ? say.yes : say.no,
          lossFraction === null ? say.cannotTell : percentText(lossFraction, 1),
          sourceText(ratioClass.source, ratioClass.mark),
        ],
      }))}
    />
  );
}

/** Least days in the drying room by the rule against Trichinella. */
export function TrichinaAnswer() {
  return (
    <Computed of={useShared($drying)}>
      {({ values: { trichina, trichinaSalt } }) => (
        <div class="answers">
          <Answer
            label={say.leastDaysInTheDryingRoom}
            value={trichina === null ? null : say.days(trichina.days)}
            missing={say.cannotTellCasingAllThree}
            worked={
              <p>
                {say.betweenTwoRowsLongerCounts9(
                  trichina === null
                    ? say.daysCasingLessWhatWarmHold
                    : say.casingDaysOffWarmHoldAdded(
                        trichina.tableDays,
                        trichina.offDays,
                        trichina.addedDays,
                      ),
                )}
              </p>
            }
          />
          <Answer
            label={say.saltAsThatRuleCountsIt}
            value={trichinaSalt === null ? null : say.lbTo100Lb(fixedText(trichinaSalt.percent, 2, 'down'))}
            missing={say.cannotTellWeighMixDry}
            worked={<p>{say.salt100AllMixDryIngredients}</p>}
          />
        </div>
      )}
    </Computed>
  );
}
