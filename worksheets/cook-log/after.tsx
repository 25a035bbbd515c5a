import type { Reduction, ValueRow } from '@larderwright/calc/lethality';
import { fixedText } from '@larderwright/calc/quantities';
import * as say from '#words/cook-log/after.ts';
import { durationWords } from '../parts/clock-text.ts';
import { Worked } from '../parts/worked.tsx';
import { afterCookWorkings, reductionText, VALUE_WORDS } from '../words/after-cook.ts';

const minutes = (value: number) => (value < 10 ? fixedText(value, 2, 'down') : fixedText(value, 0, 'down'));

/** D in words a cook can place. */
function resistance({ dRefMin, line, zIsDerived }: Reduction): string {
  const z = `z ${fixedText(line.zC, 1)} °C${zIsDerived ? say.derived : ''}`;
  return say.dMinAtC(fixedText(dRefMin, 2), fixedText(line.refC, 1), z);
}

/** Published organisms that fit the product, with what the log did to them. */
export function Reductions({ reductions }: { reductions: readonly Reduction[] }) {
  if (reductions.length === 0) return <p class="say">{say.logReductionsCannotTellNo}</p>;
  return (
    <>
      <table class="across">
        <caption>{say.logReductionsComeUpCounted}</caption>
        <thead>
          <tr>
            <th scope="col">{say.organismAndWhereItWasMeasured}</th>
            <th scope="col">{say.toTheEndOfHeating}</th>
            <th scope="col">{say.withCarryOver}</th>
          </tr>
        </thead>
        <tbody>
          {reductions.map((one) => (
            <tr key={one.row.id}>
              <th scope="row">
                {one.row.organism}, {one.row.food}
                <p class="leg-probe">
                  {say.toC(resistance(one), one.measuredC[0], one.measuredC[1], one.row.paper)}
                </p>
              </th>
              <td data-head="To the end of heating">{reductionText(one.atHeatEnd)}</td>
              <td data-head="With carry-over">{reductionText(one.whole)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <Worked>
        <p>{afterCookWorkings.reductions}</p>
      </Worked>
    </>
  );
}

/** Pasteurisation values, each with its reference. */
export function Values({ values }: { values: readonly ValueRow[] }) {
  return (
    <>
      <table class="across">
        <caption>{say.pasteurisationValuesMinTref}</caption>
        <thead>
          <tr>
            <th scope="col">{say.reference}</th>
            <th scope="col">{say.toTheEndOfHeating}</th>
            <th scope="col">{say.withCarryOver}</th>
            <th scope="col">{say.askedForElsewhere}</th>
          </tr>
        </thead>
        <tbody>
          {values.map(({ id, atHeatEndMin, wholeMin }) => (
            <tr key={id}>
              <th scope="row">{VALUE_WORDS[id].name}</th>
              <td data-head="To the end of heating">{minutes(atHeatEndMin)}</td>
              <td data-head="With carry-over">{minutes(wholeMin)}</td>
              <td data-head="Asked for elsewhere">{VALUE_WORDS[id].asked}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <Worked>
        <p>{afterCookWorkings.values}</p>
      </Worked>
    </>
  );
}

/** Seconds of a hold in words. */
export const holdText = (seconds: number) => (seconds === 0 ? say.noMore : durationWords(seconds / 60, 'up'));
