import type { CompositionTable } from '../ingredients/index.ts';
import type { Assessment } from './assess.ts';
import type { Batch, IssuedAssessment } from './record.ts';

const per100 = (fraction: number | null): number | null => (fraction === null ? null : fraction * 100);

/** The figures of an assessment that paper states, by name with the unit. */
function figuresOf({ formula, cure, mould }: Assessment): Record<string, number | null> {
  const { mix, lined, finished } = formula.values;
  return {
    totalG: mix.totalG,
    meatBlockG: mix.meatBlockG,
    saltFraction: mix.salt.fraction,
    saltOnWaterFraction: mix.saltOnWaterFraction,
    fatFraction: mix.fat.fraction,
    ...(lined ? { linedSaltFraction: lined.salt.fraction, linedFatFraction: lined.fat.fraction } : {}),
    ...(finished ? { finishedSaltFraction: finished.saltFraction } : {}),
    nitritePpmMeat: cure.values.nitritePpmMeat,
    nitritePpmTotal: cure.values.nitritePpmTotal,
    capacityG: mould.values.capacityG,
  };
}

/**
 * Keeps an assessment as it is issued on paper: verdicts, figures, the editions and compositions behind them.
 *
 * @param at ISO 8601 with offset, the moment of printing
 */
export function issueAssessment(
  batch: Batch,
  assessment: Assessment,
  composition: CompositionTable,
  at: string,
): IssuedAssessment {
  const used: Record<string, IssuedAssessment['composition'][string]> = {};
  for (const { ingredientId } of batch.formula.lines) {
    const row = ingredientId === null ? undefined : composition.get(ingredientId);
    if (!row) continue;
    used[row.id] = {
      waterG: per100(row.waterFraction),
      proteinG: per100(row.proteinFraction),
      fatG: per100(row.fatFraction),
      saltG: per100(row.saltFraction),
    };
  }
  return {
    issuedAt: at,
    calcVersion: assessment.calcVersion,
    ruleSets: assessment.ruleSets.map(({ subject, id, edition, reviewed }) => ({
      subject,
      id,
      edition,
      reviewed,
    })),
    composition: used,
    verdicts: assessment.verdicts.map(({ id, state, reason }) => ({ id, state, reason })),
    figures: figuresOf(assessment),
  };
}

/** One thing that reads otherwise today than on the paper. */
export interface IssuedDifference {
  readonly what: string;
  readonly issued: string;
  readonly today: string;
}

const shown = (value: number | null | undefined) =>
  value == null ? 'unknown' : String(Number(value.toPrecision(6)));

/** States of one limit: several where it is judged for each piece. */
function statesOf(verdicts: readonly { id: string; state: string }[], id: string): string | undefined {
  const states = verdicts.filter((verdict) => verdict.id === id).map(({ state }) => state);
  return states.length === 0 ? undefined : states.join(', ');
}

/** Where an issued assessment and today's differ: verdicts, figures, editions. Empty when they agree. */
export function issuedDifferences(issued: IssuedAssessment, today: Assessment): IssuedDifference[] {
  const differences: IssuedDifference[] = [];
  const compare = (what: string, before: string | undefined, now: string | undefined) => {
    if (before !== now) differences.push({ what, issued: before ?? 'absent', today: now ?? 'absent' });
  };
  const verdicts = new Set([...issued.verdicts, ...today.verdicts].map((verdict) => verdict.id));
  for (const id of verdicts) compare(id, statesOf(issued.verdicts, id), statesOf(today.verdicts, id));
  for (const [name, value] of Object.entries(figuresOf(today)))
    compare(name, shown(issued.figures[name]), shown(value));
  const subjects = new Set([...issued.ruleSets, ...today.ruleSets].map((set) => set.subject));
  for (const subject of subjects) {
    const edition = (sets: readonly { subject: string; id: string; edition: string }[]) => {
      const set = sets.find((each) => each.subject === subject);
      return set && `${set.id}, ${set.edition}`;
    };
    compare(`rule set, ${subject}`, edition(issued.ruleSets), edition(today.ruleSets));
  }
  compare('calc', issued.calcVersion, today.calcVersion);
  return differences;
}
