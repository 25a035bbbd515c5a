import type { MixComponent } from '@larderwright/calc/formula';
import { fixedText } from '@larderwright/calc/quantities';
import { gramsText, percentText } from './number-text.ts';

/** Grams of salt, to the tenth that a kitchen scale shows. */
const saltText = (grams: number) => `${fixedText(grams, 1)} g`;

/** A line that brings less than the tenth of a gram a scale shows is told together with others of its kind. */
const SMALL_G = 0.05;

/** Salt of the mix by where it comes from: plain salt, curing salt, and what the ingredients bring. */
export function SaltSources({ salt, totalG }: { salt: MixComponent; totalG: number | null }) {
  const sources = salt.contributions.filter(({ grams, massG }) => grams !== 0 && massG !== 0);
  if (sources.length === 0) return <p class="say">No line of the formula brings salt yet.</p>;
  const small = sources.filter(({ grams }) => grams !== null && grams < SMALL_G);
  const told = small.length > 1 ? sources.filter((source) => !small.includes(source)) : sources;
  const sorted = told.toSorted((a, b) => (b.grams ?? Infinity) - (a.grams ?? Infinity));
  const unknown = sources.some(({ grams }) => grams === null);
  const knownG = sources.reduce((sum, { grams }) => sum + (grams ?? 0), 0);
  return (
    <div class="scroll">
      <table class="salt-sources">
        <caption>Salt by where it comes from</caption>
        <thead>
          <tr>
            <th scope="col">From</th>
            <th scope="col" class="n">
              Weight
            </th>
            <th scope="col" class="n">
              Salt in it
            </th>
            <th scope="col" class="n">
              Salt
            </th>
          </tr>
        </thead>
        <tbody>
          {sorted.map(({ lineId, name, massG, fraction, grams }) => (
            <tr key={lineId}>
              <th scope="row">{name || 'Unnamed line'}</th>
              <td class="n">{massG === null ? 'not known' : gramsText(massG)}</td>
              <td class="n">{fraction === null ? 'not known' : percentText(fraction)}</td>
              <td class="n">{grams === null ? 'not known' : saltText(grams)}</td>
            </tr>
          ))}
          {small.length > 1 ? (
            <tr>
              <th scope="row">{small.length} lines with a trace each</th>
              <td class="n">{gramsText(small.reduce((sum, { massG }) => sum + (massG ?? 0), 0))}</td>
              <td class="n">–</td>
              <td class="n">{saltText(small.reduce((sum, { grams }) => sum + (grams ?? 0), 0))}</td>
            </tr>
          ) : null}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">All sources</th>
            <td class="n">{totalG === null ? 'not known' : gramsText(totalG)}</td>
            <td class="n">
              {salt.fraction === null
                ? salt.minFraction === null
                  ? 'not known'
                  : `at least ${percentText(salt.minFraction, 2)}`
                : percentText(salt.fraction, 2)}
            </td>
            <td class="n">
              {unknown && salt.grams === null ? `${saltText(knownG)} and more` : saltText(knownG)}
            </td>
          </tr>
        </tfoot>
      </table>
    </div>
  );
}
