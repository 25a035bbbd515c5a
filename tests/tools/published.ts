import { join } from 'node:path';
import { isSourceId } from '@larderwright/calc/sources';
import { expect, it } from 'vitest';
import type { PublishedCheck } from '../../content/checks/check.ts';

/** A check as a test makes it: what calc gave is not yet rounded. */
type Check = Omit<PublishedCheck, 'within'> & {
  /** How far ours may be from theirs, in the unit. Null: told and not held, with the reason in `note`. */
  readonly within: number | null;
};

const kept: PublishedCheck[] = [];

/** Figures of the page: enough to see a difference, and no noise of the last place of a float. */
const shown = (value: number) => Number(value.toPrecision(6));

/**
 * Holds our value against a published one, and keeps both for the page "How we know". Throws when a source is
 * named that the register does not know, or when a check that is not held gives no reason.
 */
export function published(check: Check): void {
  if (check.sourceId !== undefined && !isSourceId(check.sourceId)) throw new Error(check.sourceId);
  if (check.within === null && !check.note) throw new Error(`${check.what}: say why it is not held.`);
  kept.push({ ...check, ours: shown(check.ours) });
  expect(Number.isFinite(check.ours), check.what).toBe(true);
  if (check.within === null) return;
  expect(Math.abs(check.ours - check.theirs), `${check.what}: ${check.ours}`).toBeLessThanOrEqual(
    check.within,
  );
}

/**
 * The last test of a file that calls `published`: the page lists what this file checked, no more and no less.
 * `npm run checks` writes the list anew.
 * @param name of the list in content/checks
 */
export function listsItsChecks(name: string): void {
  it(`the page "How we know" lists these checks as they came out (if not: npm run checks)`, async () => {
    expect(kept.length).toBeGreaterThan(0);
    await expect(`${JSON.stringify(kept, null, 2)}\n`).toMatchFileSnapshot(
      join(import.meta.dirname, '../../content/checks', `${name}.json`),
    );
  });
}

/** A row of a case table under tests/fixtures. */
interface Case {
  readonly task: string;
  readonly expected: number;
  readonly unit: string;
  readonly tolerance: number;
  readonly kind: string;
  readonly source: string;
  readonly sourceId?: string;
  readonly note: string;
}

/** The same for a row of a case table. What is worked out by ourselves alone is no published check and is not kept. */
export function publishedCase(row: Case, ours: number): void {
  if (row.kind === 'derived') return;
  published({
    what: row.task,
    sourceId: row.sourceId,
    cited: row.source,
    kind: row.kind === 'published' ? 'printed' : 'inputs',
    theirs: row.expected,
    ours,
    unit: row.unit,
    within: row.tolerance,
    ...(row.note && { note: row.note }),
  });
}
