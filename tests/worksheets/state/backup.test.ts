import { newBatch, summaryOf } from '@larderwright/calc/batch';
import { describe, expect, test } from 'vitest';
import { backupState } from '../../../worksheets/state/backup.ts';
import type { Shelved } from '../../../worksheets/state/database.ts';
import { STATE_WORDS } from '../../../worksheets/words/states.ts';

const NOW = Date.parse('2026-11-27T08:00:00+00:00');

function changedOn(updatedAt: string, demo = false): Shelved {
  const batch = { ...newBatch({ id: updatedAt, at: updatedAt, zone: 'UTC' }), demo };
  return { ...summaryOf(batch, STATE_WORDS), rev: 1, archivedAt: null };
}

describe('a backup', () => {
  test('is not due while nothing has changed, nor for demos', () => {
    expect(backupState([], null, NOW)).toEqual({ lastAt: null, changed: 0, due: false });
    expect(backupState([changedOn('2026-01-01T08:00:00+00:00', true)], null, NOW).due).toBe(false);
  });

  test('is due after ten changed batches', () => {
    const changed = Array.from({ length: 10 }, () => changedOn('2026-11-26T08:00:00+00:00'));
    expect(backupState(changed.slice(1), null, NOW)).toMatchObject({ changed: 9, due: false });
    expect(backupState(changed, null, NOW)).toMatchObject({ changed: 10, due: true });
  });

  test('is due two weeks after the first change that is in none', () => {
    const one = changedOn('2026-11-12T08:00:00+00:00');
    expect(backupState([one], null, NOW).due).toBe(true);
    expect(backupState([one], '2026-11-13T08:00:00+00:00', NOW)).toMatchObject({ changed: 0, due: false });
    expect(backupState([changedOn('2026-11-20T08:00:00+00:00')], null, NOW).due).toBe(false);
  });
});
