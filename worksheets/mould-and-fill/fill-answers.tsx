import type { MouldFill } from '@larderwright/calc/mould';
import { fixedText, formatQuantity } from '@larderwright/calc/quantities';
import * as say from '#words/mould-and-fill/fill-answers.ts';
import { Answer } from '../parts/answer.tsx';
import { gramsText, litresText } from '../parts/number-text.ts';

/** What goes into one mould, worked out. */
export function FillAnswers({ fill, name }: { fill: MouldFill; name: string }) {
  const { fillG, count, totalG, batchFills } = fill;
  return (
    <div class="answers">
      <Answer
        label={say.fillEachMouldWith}
        value={fillG === null ? null : gramsText(fillG)}
        missing={say.cannotTellYetMeasuresHeadspace}
        worked={<FillWorked fill={fill} />}
      />
      {totalG !== null && count !== null && count !== 1 ? (
        <Answer
          label={say.allOf(count, name)}
          value={gramsText(totalG)}
          worked={<p>{say.fillOfOneHowManyDerived}</p>}
        />
      ) : null}
      {batchFills ? (
        <Answer
          label={say.wholeBatchFillsMouldAlone}
          value={say.andOver(batchFills.whole, gramsText(batchFills.leftoverG))}
          worked={<p>{say.everythingBowlFillOneWhole}</p>}
        />
      ) : null}
      {fill.liningSheetMm ? (
        <Answer
          label={say.sheetToCutForOneMould}
          value={`${fixedText(fill.liningSheetMm.acrossMm, 0, 'up')} × ${fixedText(fill.liningSheetMm.alongMm, 0, 'up')} mm`}
          worked={
            <p>
              {say.acrossMouldUpBothWallsOver(
                fill.fatLiningG === null ? null : say.aboutFatAreaThickness093(gramsText(fill.fatLiningG)),
              )}
            </p>
          }
        />
      ) : null}
    </div>
  );
}

/** The fill of one mould in words, with its own numbers. */
function FillWorked({ fill }: { fill: MouldFill }) {
  const { brimMl, calculatedBrimMl, waterDifferenceFraction, headspaceMm, fillDepthMm } = fill;
  const { liningMl, fillMl, densityGPerMl, fillG } = fill;
  if (fillMl === null || brimMl === null || calculatedBrimMl === null || fillG === null) {
    return <p>{say.volumeUpHeadspaceLessLining}</p>;
  }
  const measured = waterDifferenceFraction !== null;
  return (
    <>
      <p>
        {say.toTheRimItHoldsOf(
          litresText(brimMl),
          measured ? say.byWaterByItsMeasures(litresText(calculatedBrimMl)) : say.byItsInsideMeasures,
          headspaceMm ? say.leavingMmFreeItIsFilled(fixedText(headspaceMm, 1)) : say.itIsFilled,
          fillDepthMm === null ? '' : say.mmDeep(fixedText(fillDepthMm, 1)),
          liningMl ? say.andTheLiningTakesMl(fixedText(liningMl, 0)) : '',
          litresText(fillMl),
        )}
      </p>
      <p>
        {litresText(fillMl)} × {formatQuantity('density', densityGPerMl ?? 0, { withUnit: true })} ={' '}
        {gramsText(fillG)}.
      </p>
      <p>{say.geometryShapeDerivedHeadspace(measured ? say.theWaterMeasureOutranksTheRule : '')}</p>
    </>
  );
}
