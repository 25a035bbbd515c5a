import { coolRuleSet } from '@larderwright/calc/cooling';
import { fixedText } from '@larderwright/calc/quantities';
import { timeRatio } from '@larderwright/calc/trends';
import * as say from '#words/compare/rows.ts';
import { legTitle } from '../batch-sheet/build/cool.ts';
import { durationWords } from '../parts/clock-text.ts';
import { PART_NAMES } from '../words/line-parts.ts';
import { STATE_WORDS } from '../words/states.ts';
import type { CompareFigures } from './figures-of.ts';

/** One line of the table: what it is, and what each batch has. Null: not recorded. */
export interface CompareRow {
  readonly id: string;
  readonly label: string;
  readonly cells: readonly (string | null)[];
  /** Two batches that have it have it differently. */
  readonly differs: boolean;
}

export interface CompareGroup {
  readonly title: string;
  readonly rows: readonly CompareRow[];
}

const percent = (fraction: number | null, decimals = 1) =>
  fraction === null ? null : `${fixedText(fraction * 100, decimals)} %`;
const grams = (massG: number | null) => (massG === null ? null : `${fixedText(massG, 0)} g`);
const time = (minutes: number | null) => (minutes === null ? null : durationWords(minutes, 'up'));
const share = (part: number | null, whole: number | null) =>
  part === null || whole === null || !(whole > 0) ? null : part / whole;

const STATE = { pass: 'pass', fail: say.fail, 'cannot-tell': say.cannotTell } as const;

function row(id: string, label: string, cells: readonly (string | null)[]): CompareRow {
  const known = cells.filter((cell) => cell !== null);
  return { id, label, cells, differs: new Set(known).size > 1 };
}

/** A row for each part that any batch has. A formula without it holds none of it. */
function formulaRows(batches: readonly CompareFigures[]): CompareRow[] {
  const parts = Object.entries(PART_NAMES).filter(([part]) => batches.some(({ shares }) => part in shares));
  return parts.map(([part, name]) => {
    const cells = batches.map(({ shares }) => {
      const own = Object.entries(shares).find(([id]) => id === part);
      if (own) return percent(own[1] ?? null);
      return Object.keys(shares).length > 0 ? 'none' : null;
    });
    return row(`share-${part}`, name, cells);
  });
}

/** Legs of one rule set stand in one row. Legs of other rule sets are other rows. */
function legRows(batches: readonly CompareFigures[]): CompareRow[] {
  const sets = [...new Set(batches.map(({ coolRuleSetId }) => coolRuleSetId))];
  return sets.flatMap((id) =>
    (coolRuleSet(id)?.legs ?? []).map((leg) =>
      row(
        `leg-${id}-${leg.id}`,
        say.atWorst(legTitle(leg)),
        batches.map(({ coolRuleSetId, legs }) => {
          const own = coolRuleSetId === id ? legs.find((each) => each.id === leg.id) : undefined;
          if (own === undefined) return null;
          return [time(own.worstMin), STATE[own.state]].filter(Boolean).join(', ');
        }),
      ),
    ),
  );
}

/** Everything two batches can be told apart by, in the order of the work. */
export function compareGroups(batches: readonly CompareFigures[]): CompareGroup[] {
  const each = (id: string, label: string, cell: (batch: CompareFigures) => string | null) =>
    row(id, label, batches.map(cell));
  return [
    {
      title: say.formulaOfEverythingInTheBowl,
      rows: [
        ...formulaRows(batches),
        each('salt', say.saltFromAllSources, ({ saltFraction }) => percent(saltFraction, 2)),
        each('nitrite', say.nitriteOnTheTotal, ({ nitritePpmTotal }) =>
          nitritePpmTotal === null ? null : `${fixedText(nitritePpmTotal, 1, 'up')} mg/kg`,
        ),
      ],
    },
    {
      title: say.yieldWord,
      rows: [
        each('bought', say.bought, ({ boughtG }) => grams(boughtG)),
        each('trimmed', say.trimmedOfBought, ({ boughtG, trimmedG }) => percent(share(trimmedG, boughtG))),
        each('filled', say.filled, ({ filledG }) => grams(filledG)),
        each('finished', say.cookedAndChilled, ({ finishedG }) => grams(finishedG)),
        each('loss', say.cookLoss, ({ cookLossFraction }) => percent(cookLossFraction)),
        each('sliced', say.slicedOfCooked, ({ slicedG, finishedG }) => percent(share(slicedG, finishedG))),
        each('price', say.priceOfASlice, ({ pricePerSlice, currency }) =>
          pricePerSlice === null ? null : `${fixedText(pricePerSlice, 2, 'up')} ${currency}`.trim(),
        ),
      ],
    },
    {
      title: say.cook,
      rows: [
        each('planned', say.plannedTimeToTheLimit, ({ predictedMin }) => time(predictedMin)),
        each('taken', say.takenByTheReadings, ({ cookMin }) => time(cookMin)),
        each('ratio', say.takenPlanned, ({ predictedMin, cookMin }) => {
          const ratio = timeRatio({ predictedMin, actualMin: cookMin });
          return ratio === null ? null : fixedText(ratio, 2);
        }),
        each('come-up', say.n10C50FTo54, ({ comeUpMin }) => time(comeUpMin)),
        each('peak', say.hottestCore, ({ peakC }) =>
          peakC === null ? null : `${fixedText(peakC, 1, 'down')} °C`,
        ),
        each('oven', say.ovenRecord, ({ oven }) => oven || null),
      ],
    },
    { title: say.cooling, rows: legRows(batches) },
    {
      title: say.howItEnded,
      rows: [
        each('verdicts', say.verdictsPassFailCannotTell, ({ verdicts }) =>
          [verdicts.pass, verdicts.fail, verdicts['cannot-tell']].join(', '),
        ),
        each('deviations', say.deviationsWrittenDown, ({ deviations }) => String(deviations)),
        each('state', say.state, ({ state }) => STATE_WORDS[state]),
      ],
    },
  ].filter(({ rows }) => rows.length > 0);
}
