import { type Assessment, type Batch, isWholeMuscle } from '@larderwright/calc/batch';
import type { JudgedLimit } from '@larderwright/calc/cure';
import { fixedText } from '@larderwright/calc/quantities';
import * as say from '#words/batch-sheet/build/whole-muscle.ts';
import type { CureBlock, CureLine } from '../sheet-model.ts';
import { filled, percent, words, worked } from './filled.ts';
import { sheetVerdicts } from './verdicts.ts';

/** Pieces weighed one by one on the sheet; more of them stand on their own card. */
const MOST_PIECES = 3;

const shown = (fraction: number | null) => percent(fraction) ?? say.percent(say.open);

/** Salt of a whole muscle where it is reckoned: in the brine, or piece by piece; null for any other batch. */
export function saltElsewhere(batch: Batch, { brine, dryCure }: Assessment): string | null {
  if (!isWholeMuscle(batch)) return null;
  const isBrined = batch.brine !== undefined && isWholeMuscle({ brine: batch.brine });
  if (isBrined) {
    const salt = brine?.values.salt ?? null;
    return say.brineSalt(shown(salt?.saltOnMeatFraction ?? null), shown(salt?.waterPhaseFraction ?? null));
  }
  const each = dryCure?.values.pieces.map(({ saltFraction }) => saltFraction) ?? [];
  const known = each.filter((fraction) => fraction !== null);
  if (known.length === 0 || known.length < each.length) return say.dryCureSalt(shown(null));
  const [low, high] = [shown(Math.min(...known)), shown(Math.max(...known))];
  return say.dryCureSalt(low === high ? low : `${low}–${high}`);
}

/** Most nitrite put in by brine or dry cure, mg/kg on meat as its limits were judged; null: not known. */
function mostPpm(ceilings: readonly JudgedLimit[]): number | null {
  const judged = ceilings.filter(({ limit }) => limit.substance === 'nitrite' && limit.kind === 'ingoing');
  const highest = judged.map(({ highestPpm }) => highestPpm);
  return highest.length === 0 || highest.includes(null) ? null : Math.max(...highest.map((ppm) => ppm ?? 0));
}

function brineLines({ brine }: Batch, of: Assessment['brine']): CureLine[] {
  if (!brine || !of) return [];
  return [
    {
      name: words(brine.pack.name) ?? say.curingSalt,
      strength: filled('fraction', brine.pack.strength.nitrite, '%'),
      grams: worked(of.values.recipe?.curingSaltG ?? null, true),
      actual: filled('mass', brine.actual.curingSalt, 'g'),
      lot: words(brine.pack.lot),
    },
  ];
}

function pieceLines({ dryCure }: Batch, of: Assessment['dryCure']): CureLine[] {
  if (!dryCure || !of) return [];
  const salt = words(dryCure.pack.name) ?? say.curingSalt;
  const pack = {
    strength: filled('fraction', dryCure.pack.strength.nitrite, '%'),
    lot: words(dryCure.pack.lot),
  };
  const { pieces } = dryCure;
  if (pieces.length > MOST_PIECES)
    return [{ ...pack, name: say.pieces(salt, pieces.length), grams: null, actual: null }];
  return pieces.map((piece) => {
    const planned = of.values.pieces.find(({ id }) => id === piece.id)?.plan?.curingSaltG ?? null;
    const name = words(piece.name);
    return {
      ...pack,
      name: name === null ? salt : say.pieceNamed(salt, name),
      grams: worked(planned, true),
      actual: filled('mass', piece.curingSaltActual, 'g'),
    };
  });
}

/**
 * The heavy box of a whole muscle: the curing salt of its brine or dry cure, and the nitrite reckoned there. Null where
 * none is named yet, so that the box prints empty.
 */
export function cureElsewhere(
  batch: Batch,
  assessment: Assessment,
  ofFormula: readonly CureLine[],
): CureBlock | null {
  const { brine, dryCure } = assessment;
  const own = [...brineLines(batch, brine), ...pieceLines(batch, dryCure)];
  const lines = [...ofFormula, ...own];
  if (lines.every(({ strength, grams, actual }) => strength === null && grams === null && actual === null))
    return null;
  const ceilings = [
    ...(brine?.values.ceilings ?? []),
    ...(dryCure?.values.pieces.flatMap((piece) => piece.ceilings) ?? []),
  ];
  const ppm = mostPpm(ceilings);
  return {
    lines,
    ppm:
      (ppm === null ? say.nitriteOpen : say.nitriteAtMost(fixedText(ppm, 1, 'up'))) +
      (ofFormula.length > 0 ? say.besideFormula : ''),
    weighedBy: words(batch.cure.weighedBy),
    checkedBy: words(batch.cure.checkedBy),
    verdicts: sheetVerdicts([...(brine?.verdicts ?? []), ...(dryCure?.verdicts ?? [])]),
  };
}
