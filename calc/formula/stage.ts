import type { StageResult } from '../findings/index.ts';
import type { CompositionTable } from '../ingredients/index.ts';
import { entryValue } from '../quantities/index.ts';
import { type FormulaFacts, formulaFacts } from './facts.ts';
import { familyOf } from './families/index.ts';
import { familyNotes } from './family-notes.ts';
import type { FormulaFindingId } from './finding-ids.ts';
import { formulaFindings } from './findings.ts';
import { type FinishedSlice, finishedSlice } from './finished.ts';
import { type LinedMix, linedMix } from './lined.ts';
import { formulaMissing } from './missing.ts';
import { type Mix, makeMix } from './mix.ts';
import { type PlainSaltNeed, plainSaltNeed } from './plain-salt.ts';
import { readLines } from './read-line.ts';
import type { FormulaSlice } from './slice.ts';
import { plannedMasses, weighedMasses } from './variants.ts';

export interface FormulaValues {
  /** The mix that counts: as weighed once anything has been weighed, as planned before. */
  readonly mix: Mix;
  readonly inUse: 'planned' | 'as-weighed';
  readonly planned: Mix;
  readonly asWeighed: Mix | null;
  /** The mix in use with its lining; null where no line is one. */
  readonly lined: LinedMix | null;
  /** The finished slice; null until it is weighed. */
  readonly finished: FinishedSlice | null;
  readonly facts: FormulaFacts;
  readonly saltTargetFraction: number | null;
  /** Plain salt in all for the target, on the mix in use. */
  readonly plainSalt: PlainSaltNeed;
}

export interface FormulaContext {
  readonly composition: CompositionTable;
  /** The whole finished product after chilling, g. */
  readonly finishedMassG?: number | null;
}

/**
 * What a formula makes: masses, shares, composition, salt from every source, and the facts other rules follow.
 *
 * Once any weight is written down the mix as weighed counts; the plan stands in for lines not weighed yet, and a
 * finding says so. Quality ranges give notes only; nothing here is a safety verdict.
 */
export function formulaStage(
  slice: FormulaSlice,
  context: FormulaContext,
): StageResult<FormulaValues, FormulaFindingId> {
  const lines = readLines(slice.lines, context.composition);
  const plannedM = plannedMasses(lines);
  const weighedM = weighedMasses(lines, plannedM);
  const planned = makeMix(lines, plannedM);
  const asWeighed = weighedM ? makeMix(lines, weighedM) : null;
  const mix = asWeighed ?? planned;
  const lined = linedMix(lines, mix);
  const facts = formulaFacts(lines, mix);
  const saltTargetFraction = entryValue('fraction', slice.saltTarget);
  const plainSalt = plainSaltNeed(lines, saltTargetFraction, weighedM);
  const state = {
    lines,
    planned: plannedM,
    weighed: weighedM,
    mix,
    lined,
    facts,
    saltTargetFraction,
    plainSalt,
  };
  return {
    values: {
      mix,
      inUse: asWeighed ? 'as-weighed' : 'planned',
      planned,
      asWeighed,
      lined,
      finished: finishedSlice(mix, lined, context.finishedMassG ?? null),
      facts,
      saltTargetFraction,
      plainSalt,
    },
    findings: [...formulaFindings(state), ...familyNotes(familyOf(slice.familyId), mix, facts)],
    verdicts: [],
    missing: formulaMissing(lines, mix, lined),
  };
}
