import { type MixProperties, mixProperties } from '@larderwright/calc/cook-plan';
import { fixedText } from '@larderwright/calc/quantities';
import * as say from '#words/cook-plan/counted-with.ts';
import { FigureTable } from '../parts/figure-table.tsx';
import { percentText } from '../parts/number-text.ts';
import { cookPlanWorkings, mixWords } from '../words/cook-plan.ts';
import type { CookPlanComputed } from './compute.ts';

/** What the curve rests on: the mix as the engine sees it, and the melting of its fat. */
export function CountedWith({ plan }: { plan: CookPlanComputed }) {
  const { problem } = plan.ground;
  const mix = problem && mixProperties(problem);
  if (problem === null || mix === null) return null;
  const { water, protein, fat } = problem.composition;
  return (
    <>
      <p class="say">{mixWords.melting(percentText(fat, 0))}</p>
      <details class="worked">
        <summary>{mixWords.fold}</summary>
        <div class="worked-body">
          <p>{cookPlanWorkings.curve}</p>
          <p>
            {mixWords.parts(percentText(water, 1), percentText(protein, 1), percentText(fat, 1))}{' '}
            {densityWords(mix)} {mixWords.heatOfMelting(fixedText(mix.meltingKJkg, 1))}
          </p>
          <FigureTable
            caption={mixWords.caption}
            columns={[say.at, say.conductsWMK, say.takesForOneDegreeKjKg]}
            rows={mix.rows.map(({ tempC, conductivityWmK, heatKJkgK }) => ({
              key: String(tempC),
              head: `${tempC} °C (${fixedText(tempC * 1.8 + 32, 0)} °F)`,
              cells: [fixedText(conductivityWmK, 3), fixedText(heatKJkgK, 2)],
            }))}
          />
        </div>
      </details>
    </>
  );
}

function densityWords({ densityKgM3, airFraction, freezingC }: MixProperties): string {
  const air = airFraction > 0.0005 ? mixWords.air(percentText(airFraction, 1)) : '';
  const ice = freezingC === null ? '' : mixWords.ice(fixedText(freezingC, 1));
  return `${mixWords.density(fixedText(densityKgM3 / 1000, 3))}${air} ${ice}`;
}
