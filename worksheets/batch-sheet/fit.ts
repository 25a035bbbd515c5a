import * as say from '#words/batch-sheet/fit.ts';
import type { GatheredRow, MaterialRow, Materials, SheetModel } from './sheet-model.ts';

/**
 * How the bench copy is made to fit its one page, tried in this order until the blocks measure to fit:
 * every line by itself; seasonings gathered in one row; all but meat and salt on a card; all on a card.
 */
export const BENCH_STEPS = ['spread', 'gathered', 'card', 'all-on-card'] as const;
export type BenchStep = (typeof BENCH_STEPS)[number];

/** Each of these with the square code in the foot, then without it: a line of weights is worth more there. */
const BENCH_TRIES = BENCH_STEPS.flatMap((step) => [
  { step, hasCode: true },
  { step, hasCode: false },
]);
export const LAST_BENCH_TRY = BENCH_TRIES.length - 1;

/** What is tried at one turn of the fitting, from 0. */
export function benchTry(turn: number): { step: BenchStep; hasCode: boolean } {
  return BENCH_TRIES[turn] ?? { step: 'all-on-card', hasCode: false };
}

/** The record copy: with the curve; without it; without information; the ruling log only; long notes on a page of their own. */
export const RECORD_STEPS = [
  'with-curve',
  'with-information',
  'all-logs',
  'ruling-log',
  'notes-apart',
] as const;
export type RecordStep = (typeof RECORD_STEPS)[number];

function gather(rows: readonly MaterialRow[], totalText: string | null): GatheredRow | null {
  if (rows.length === 0) return null;
  return {
    name: say.seasoningLines(rows.length),
    planned: totalText === null ? null : { text: totalText, flag: 'W' },
    gathered: rows.map((row) => `${row.name} ${row.planned?.text ?? '___'}`).join(' · '),
  };
}

/** The materials as one step of the fitting shows them. No line is ever dropped. */
export function materialsAt(step: BenchStep, materials: Materials): Materials {
  const { meats, others, seasonings, seasoningTotal } = materials;
  switch (step) {
    case 'spread':
      return { ...materials, others: [...others, ...seasonings], gathered: null, onCard: [] };
    case 'gathered':
      return { ...materials, gathered: gather(seasonings, seasoningTotal), onCard: [] };
    case 'card': {
      const stay = others.filter((row) => row.staysOnBench);
      const leave = others.filter((row) => !row.staysOnBench);
      return { ...materials, others: stay, gathered: null, onCard: [...leave, ...seasonings] };
    }
    case 'all-on-card':
      return {
        ...materials,
        meats: [],
        others: [],
        gathered: null,
        onCard: [...meats, ...others, ...seasonings],
      };
  }
}

/** The record blocks as one step of the fitting shows them. */
export function recordAt(step: RecordStep, model: SheetModel): SheetModel {
  if (step === 'with-curve') return model;
  const plain = { ...model, curve: null };
  if (step === 'with-information') return plain;
  const all = {
    ...plain,
    cook: { ...model.cook, beside: [] },
    cool: { ...model.cool, beside: [] },
  };
  if (step === 'all-logs') return all;
  const cook = { ...all.cook, logs: all.cook.logs.slice(0, 1) };
  const cool = { ...all.cool, logs: all.cool.logs.slice(0, 1) };
  if (step === 'ruling-log') return { ...all, cook, cool };
  return { ...all, cook: { ...cook, remarks: [] }, cool, deviations: [] };
}

/** True when a page's content is taller than its paper. A pixel of rounding is forgiven. */
export function overflows(page: Element): boolean {
  return page.scrollHeight > page.clientHeight + 1;
}

/** Height of what stands on a page, without the slack above its foot. */
function filled(page: Element, without: string): number {
  const blocks = Array.from(page.querySelector('.sheet-fit')?.children ?? []);
  return blocks
    .filter((block) => !block.matches(without))
    .reduce((sum, block) => sum + block.getBoundingClientRect().height, 0);
}

/** What a page drops before anything else: it only informs. */
const EXTRA = '.sheet-curve, .sheet-beside';

/** Height of what only informs on a page. */
function extra(page: Element): number {
  return Array.from(page.querySelectorAll(EXTRA)).reduce(
    (sum, each) => sum + each.getBoundingClientRect().height,
    0,
  );
}

/**
 * True when the blocks of both copies would stand on one page, a tenth of it left for the gaps.
 * @param plain without what only informs
 */
export function fitOnOne(bench: Element, record: Element, plain = false): boolean {
  const together =
    filled(bench, say.not) + filled(record, '.sheet-head, .sheet-stops, .batch-line, .sheet-foot');
  return together - (plain ? extra(record) : 0) <= bench.clientHeight * 0.9;
}
