import { compensatedSum, fromBase } from '../quantities/index.ts';
import type { FormulaFacts } from './facts.ts';
import type { FormulaFinding } from './finding-ids.ts';
import { COMPONENTS } from './line-composition.ts';
import type { LinedMix } from './lined.ts';
import type { Mix, MixMasses } from './mix.ts';
import { isInBowl, isMeat } from './parts.ts';
import type { PlainSaltNeed } from './plain-salt.ts';
import type { ReadLine } from './read-line.ts';
import type { MassProblem } from './solve-masses.ts';

const PER_CENT = 100;
/** Weighed so far from the plan that a slip of pen or scale is likelier than a choice. Common practice, no source. */
const OFF_PLAN = 0.1;
/** A tenth of a gram is within the last digit of a kitchen scale. */
const SCALE_NOISE_G = 1;
/** Salt this far from its target is tasted: a tenth of a point. Common practice, no source. */
const SALT_OFF_TARGET = 0.001;

/** Salt of a lining worth a word, g: what a kitchen scale shows. */
const LINING_SALT_G = 0.5;

type Draft = Omit<FormulaFinding, 'stage'>;

function massFindings(lines: readonly ReadLine[], problem: MassProblem | null): Draft[] {
  const found: Draft[] = [];
  if (problem === 'percent-over-100') {
    const sum = (basis: string, meatOnly: boolean) =>
      PER_CENT *
      compensatedSum(
        lines
          .filter(({ planned }) => planned.basis === basis && (!meatOnly || isMeat(planned.part)))
          .map(({ planned }) => planned.amount ?? 0),
      );
    found.push({
      id: 'formula.percent-over-100',
      severity: 'caution',
      field: 'formula.lines',
      params: { ofTotalPercent: sum('percent-of-total', false), meatPercent: sum('percent-of-meat', true) },
    });
  }
  if (problem === 'no-anchor')
    found.push({ id: 'formula.no-anchor', severity: 'caution', field: 'formula.lines', params: {} });
  for (const { line, path } of lines.filter(({ curingSaltInPercent }) => curingSaltInPercent)) {
    found.push({
      id: 'formula.curing-salt-in-percent',
      severity: 'stop',
      field: `${path}.amount`,
      params: { name: line.name },
      caution: 'no-spoons-for-curing-salt',
    });
  }
  return found;
}

function compositionFindings(lines: readonly ReadLine[], mix: Mix, lined: LinedMix | null): Draft[] {
  const found: Draft[] = [];
  for (const { line, path, row, composition } of lines) {
    const declared = COMPONENTS.map((component) => composition[component]).filter(
      ({ from }) => from === 'declared',
    );
    const percent = PER_CENT * compensatedSum(declared.map(({ fraction }) => fraction ?? 0));
    if (percent > PER_CENT + 1e-9)
      found.push({
        id: 'formula.declared-over-100',
        severity: 'caution',
        field: `${path}.declared`,
        params: { name: line.name, percent },
      });
    if (line.ingredientId !== null && row === undefined)
      found.push({
        id: 'formula.unknown-ingredient',
        severity: 'caution',
        field: `${path}.ingredientId`,
        params: { name: line.name, ingredientId: line.ingredientId },
      });
  }
  const told = lined === null ? [mix] : [mix, lined];
  const leftOut = new Set(told.flatMap((of) => COMPONENTS.flatMap((component) => of[component].leftOut)));
  if (leftOut.size > 0)
    found.push({
      id: 'formula.small-parts-left-out',
      severity: 'note',
      field: 'formula.lines',
      params: { names: namesOf(lines, leftOut), count: leftOut.size },
    });
  const open = new Set(
    told
      .filter(({ totalG }) => totalG !== null)
      .flatMap((of) => COMPONENTS.map((component) => of[component]))
      .filter(({ fraction }) => fraction === null)
      .flatMap(({ contributions }) =>
        contributions.filter(({ grams, massG }) => grams === null && massG !== 0).map(({ lineId }) => lineId),
      ),
  );
  if (open.size > 0)
    found.push({
      id: 'formula.composition-unknown',
      severity: 'caution',
      field: 'formula.lines',
      params: { names: namesOf(lines, open), count: open.size },
    });
  return found;
}

function namesOf(lines: readonly ReadLine[], ids: ReadonlySet<string>): string {
  return lines
    .filter(({ line }) => ids.has(line.id))
    .map(({ line }) => line.name || line.id)
    .join(', ');
}

function weighingFindings(
  lines: readonly ReadLine[],
  planned: MixMasses,
  weighed: MixMasses | null,
): Draft[] {
  if (!weighed) return [];
  const found: Draft[] = [];
  const open = lines.filter(({ actualG, actualUnreadable }) => actualG === null && !actualUnreadable);
  if (open.length > 0)
    found.push({
      id: 'formula.partly-weighed',
      severity: 'note',
      field: 'formula.lines',
      params: {
        names: open.map(({ line }) => line.name || line.id).join(', '),
        count: open.length,
        ofCount: lines.length,
      },
    });
  for (const [index, { line, path, actualG }] of lines.entries()) {
    const plannedG = planned.massesG[index] ?? null;
    if (actualG === null || plannedG === null) continue;
    const offG = Math.abs(actualG - plannedG);
    if (offG <= OFF_PLAN * plannedG || offG <= SCALE_NOISE_G) continue;
    found.push({
      id: 'formula.weighed-off-plan',
      severity: 'note',
      field: `${path}.actual`,
      params: { name: line.name, actualG, plannedG },
    });
  }
  return found;
}

function saltFindings(mix: Mix, targetFraction: number | null, need: PlainSaltNeed): Draft[] {
  if (targetFraction === null) return [];
  if (need.state === 'over-supplied')
    return [
      {
        id: 'formula.salt-over-supplied',
        severity: 'caution',
        field: 'formula.saltTarget',
        params: {
          name: need.overSupplier.name,
          saltG: need.overSupplier.saltG,
          carriedPercent: need.carriedFraction * PER_CENT,
          targetPercent: fromBase(targetFraction, '%'),
          excessG: need.excessG,
        },
      },
    ];
  if (need.state !== 'ok' || mix.salt.fraction === null) return [];
  if (Math.abs(mix.salt.fraction - targetFraction) <= SALT_OFF_TARGET) return [];
  return [
    {
      id: 'formula.salt-off-target',
      severity: 'note',
      field: 'formula.saltTarget',
      params: {
        saltPercent: mix.salt.fraction * PER_CENT,
        targetPercent: fromBase(targetFraction, '%'),
        plainSaltG: need.plainSaltG,
      },
    },
  ];
}

/** A lining with salt of its own: the slice tastes of it, the mix is not seasoned by it. */
function liningFindings(lines: readonly ReadLine[], mix: Mix, lined: LinedMix | null): Draft[] {
  if (lined === null || lined.liningSaltG === null || lined.liningSaltG < LINING_SALT_G) return [];
  if (mix.salt.fraction === null || lined.salt.fraction === null) return [];
  const ids = new Set(lines.filter(({ line }) => !isInBowl(line.part)).map(({ line }) => line.id));
  return [
    {
      id: 'formula.lining-salt',
      severity: 'note',
      field: 'formula.saltTarget',
      params: {
        names: namesOf(lines, ids),
        liningSaltG: lined.liningSaltG,
        mixPercent: mix.salt.fraction * PER_CENT,
        linedPercent: lined.salt.fraction * PER_CENT,
      },
    },
  ];
}

function allergenFindings(lines: readonly ReadLine[], facts: FormulaFacts): Draft[] {
  if (facts.allergensUnknown.length === 0) return [];
  return [
    {
      id: 'formula.allergens-unknown',
      severity: 'caution',
      field: 'formula.lines',
      params: {
        names: namesOf(lines, new Set(facts.allergensUnknown)),
        count: facts.allergensUnknown.length,
      },
      caution: 'allergens-listed',
    },
  ];
}

/** What the stage has already worked out. */
export interface FormulaState {
  readonly lines: readonly ReadLine[];
  readonly planned: MixMasses & { readonly problem: MassProblem | null };
  readonly weighed: MixMasses | null;
  readonly mix: Mix;
  readonly lined: LinedMix | null;
  readonly facts: FormulaFacts;
  readonly saltTargetFraction: number | null;
  readonly plainSalt: PlainSaltNeed;
}

/** All findings but those of the family. */
export function formulaFindings(state: FormulaState): FormulaFinding[] {
  const { lines, planned, weighed, mix, lined, facts } = state;
  const drafts = [
    ...massFindings(lines, planned.problem),
    ...compositionFindings(lines, mix, lined),
    ...liningFindings(lines, mix, lined),
    ...weighingFindings(lines, planned, weighed),
    ...saltFindings(mix, state.saltTargetFraction, state.plainSalt),
    ...allergenFindings(lines, facts),
  ];
  return drafts.map((draft) => ({ ...draft, stage: 'formula' }));
}
