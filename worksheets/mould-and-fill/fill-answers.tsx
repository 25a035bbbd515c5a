import type { MouldFill } from '@larderwright/calc/mould';
import { fixedText, formatQuantity } from '@larderwright/calc/quantities';
import { Answer } from '../parts/answer.tsx';
import { gramsText, litresText } from '../parts/number-text.ts';

/** What goes into one mould, worked out. */
export function FillAnswers({ fill, name }: { fill: MouldFill; name: string }) {
  const { fillG, count, totalG, batchFills } = fill;
  return (
    <div class="answers">
      <Answer
        label="Fill each mould with"
        value={fillG === null ? null : gramsText(fillG)}
        missing="Cannot tell yet: measures, headspace, lining or density are missing"
        worked={<FillWorked fill={fill} />}
      />
      {totalG !== null && count !== null && count !== 1 ? (
        <Answer
          label={`All ${count} of ${name}`}
          value={gramsText(totalG)}
          worked={<p>Fill of one × how many. Derived.</p>}
        />
      ) : null}
      {batchFills ? (
        <Answer
          label="The whole batch fills, of this mould alone"
          value={`${batchFills.whole} and ${gramsText(batchFills.leftoverG)} over`}
          worked={
            <p>Everything in the bowl ÷ the fill of one, in whole moulds, and what is left. Derived.</p>
          }
        />
      ) : null}
      {fill.liningSheetMm ? (
        <Answer
          label="Sheet to cut for one mould"
          value={`${fixedText(fill.liningSheetMm.acrossMm, 0, 'up')} × ${fixedText(fill.liningSheetMm.alongMm, 0, 'up')} mm`}
          worked={
            <p>
              Across the mould, up both walls and over the top, by its length with the ends.{' '}
              {fill.fatLiningG === null
                ? null
                : `About ${gramsText(fill.fatLiningG)} of fat: area × thickness × 0.93 g/mL, offcuts on top. `}
              Common practice, no source.
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
    return <p>Volume up to the headspace, less the lining, times the density of the raw mix. Derived.</p>;
  }
  const measured = waterDifferenceFraction !== null;
  return (
    <>
      <p>
        To the rim it holds {litresText(brimMl)}{' '}
        {measured ? `by water (${litresText(calculatedBrimMl)} by its measures)` : 'by its inside measures'}.
        {headspaceMm ? ` Leaving ${fixedText(headspaceMm, 1)} mm free, it is filled` : ' It is filled'}{' '}
        {fillDepthMm === null ? '' : `${fixedText(fillDepthMm, 1)} mm deep`}
        {liningMl ? `, and the lining takes ${fixedText(liningMl, 0)} mL` : ''}: {litresText(fillMl)} of mix.
      </p>
      <p>
        {litresText(fillMl)} × {formatQuantity('density', densityGPerMl ?? 0, { withUnit: true })} ={' '}
        {gramsText(fillG)}.
      </p>
      <p>
        {measured ? 'The water measure outranks the rule. ' : ''}Geometry of the shape: derived. Headspace and
        density: common practice, no source.
      </p>
    </>
  );
}
