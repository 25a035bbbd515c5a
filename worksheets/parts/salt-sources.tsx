import type { MixComponent } from '@larderwright/calc/formula';
import { fixedText } from '@larderwright/calc/quantities';
import { FigureTable } from './figure-table.tsx';
import { gramsText, percentText } from './number-text.ts';
import { Worked } from './worked.tsx';

/** Grams of salt, to the tenth that a kitchen scale shows. */
const saltText = (grams: number) => `${fixedText(grams, 1)} g`;
/** A line that brings less than the tenth of a gram a scale shows is told together with others of its kind. */
const SMALL_G = 0.05;
const NOT_KNOWN = 'not known';

function shareText({ fraction, minFraction }: MixComponent): string {
  if (fraction !== null) return percentText(fraction, 2);
  return minFraction === null ? NOT_KNOWN : `at least ${percentText(minFraction, 2)}`;
}

/** Salt of the mix by where it comes from: plain salt, curing salt, and what the ingredients bring. */
export function SaltSources({ salt, totalG }: { salt: MixComponent; totalG: number | null }) {
  const sources = salt.contributions.filter(({ grams, massG }) => grams !== 0 && massG !== 0);
  if (sources.length === 0) return <p class="say">No line of the formula brings salt yet.</p>;
  const small = sources.filter(({ grams }) => grams !== null && grams < SMALL_G);
  const told = small.length > 1 ? sources.filter((source) => !small.includes(source)) : sources;
  const rows = told
    .toSorted((a, b) => (b.grams ?? Infinity) - (a.grams ?? Infinity))
    .map(({ lineId, name, massG, fraction, grams }) => ({
      key: lineId,
      head: name || 'Unnamed line',
      cells: [
        massG === null ? NOT_KNOWN : gramsText(massG),
        fraction === null ? NOT_KNOWN : percentText(fraction),
        grams === null ? NOT_KNOWN : saltText(grams),
      ],
    }));
  const sum = (of: readonly { grams: number | null }[]) =>
    of.reduce((total, { grams }) => total + (grams ?? 0), 0);
  if (small.length > 1)
    rows.push({
      key: 'traces',
      head: `${small.length} lines with a trace each`,
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
        caption="Salt by where it comes from"
        columns={['From', 'Weight', 'Salt in it', 'Salt']}
        rows={rows}
        foot={{
          key: 'all',
          head: 'All sources',
          cells: [
            totalG === null ? NOT_KNOWN : gramsText(totalG),
            shareText(salt),
            open ? `${saltText(sum(sources))} and more` : saltText(sum(sources)),
          ],
        }}
      />
      <Worked>
        <p>
          Weight × its share of salt: off the pack where it was typed, else by the composition table. All
          sources ÷ everything in the bowl. Derived: mass balance.
        </p>
      </Worked>
    </>
  );
}
