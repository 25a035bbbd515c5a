import type { MixComponent } from '@larderwright/calc/formula';
import { fixedText } from '@larderwright/calc/quantities';
import * as say from '#words/parts/salt-sources.ts';
import { FigureTable } from './figure-table.tsx';
import { gramsText, percentText } from './number-text.ts';
import { Worked } from './worked.tsx';

/** Grams of salt, to the tenth that a kitchen scale shows. */
const saltText = (grams: number) => `${fixedText(grams, 1)} g`;
/** A line that brings less than the tenth of a gram a scale shows is told together with others of its kind. */
const SMALL_G = 0.05;

function shareText({ fraction, minFraction }: MixComponent): string {
  if (fraction !== null) return percentText(fraction, 2);
  return minFraction === null ? say.notKnown : say.atLeast(percentText(minFraction, 2));
}

/** Salt of the mix by where it comes from: plain salt, curing salt, and what the ingredients bring. */
export function SaltSources({ salt, totalG }: { salt: MixComponent; totalG: number | null }) {
  const sources = salt.contributions.filter(({ grams, massG }) => grams !== 0 && massG !== 0);
  if (sources.length === 0) return <p class="say">{say.noLineFormulaBringsSaltYet}</p>;
  const small = sources.filter(({ grams }) => grams !== null && grams < SMALL_G);
  const told = small.length > 1 ? sources.filter((source) => !small.includes(source)) : sources;
  const rows = told
    .toSorted((a, b) => (b.grams ?? Infinity) - (a.grams ?? Infinity))
    .map(({ lineId, name, massG, fraction, grams }) => ({
      key: lineId,
      head: name || say.unnamedLine,
      cells: [
        massG === null ? say.notKnown : gramsText(massG),
        fraction === null ? say.notKnown : percentText(fraction),
        grams === null ? say.notKnown : saltText(grams),
      ],
    }));
  const sum = (of: readonly { grams: number | null }[]) =>
    of.reduce((total, { grams }) => total + (grams ?? 0), 0);
  if (small.length > 1)
    rows.push({
      key: 'traces',
      head: say.linesWithATraceEach(small.length),
      cells: [
        gramsText(small.reduce((total, { massG }) => total + (massG ?? 0), 0)),
        '–',
        saltText(sum(small)),
      ],
    });
  const open = sources.some(({ grams }) => grams === null) && salt.grams === null;
  return (
    <>
      <FigureTable
        caption={say.saltByWhereItComesFrom}
        columns={[say.from, say.weight, say.saltInIt, say.salt]}
        rows={rows}
        foot={{
          key: 'all',
          head: say.allSources,
          cells: [
            totalG === null ? say.notKnown : gramsText(totalG),
            shareText(salt),
            open ? say.andMore(saltText(sum(sources))) : saltText(sum(sources)),
          ],
        }}
      />
      <Worked>
        <p>{say.weightShareSaltOffPackWhere}</p>
      </Worked>
    </>
  );
}
