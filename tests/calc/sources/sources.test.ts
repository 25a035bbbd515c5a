import { isCheckOverdue, isSourceId, SOURCES, type Source, sourceOf } from '@larderwright/calc/sources';
import { describe, expect, it } from 'vitest';
import { binderSources } from '../../../calc/sources/register/binder.ts';
import { casingsSources } from '../../../calc/sources/register/casings.ts';
import { chillBudgetSources } from '../../../calc/sources/register/chill-budget.ts';
import { coolingSources } from '../../../calc/sources/register/cooling.ts';
import { cureSources } from '../../../calc/sources/register/cure.ts';
import { curingSources } from '../../../calc/sources/register/curing.ts';
import { formulaSources } from '../../../calc/sources/register/formula.ts';
import { geleeSources } from '../../../calc/sources/register/gelee.ts';
import { growthSources } from '../../../calc/sources/register/growth.ts';
import { heatSources } from '../../../calc/sources/register/heat.ts';
import { ingredientsSources } from '../../../calc/sources/register/ingredients.ts';
import { labelSources } from '../../../calc/sources/register/label.ts';
import { lethalitySources } from '../../../calc/sources/register/lethality.ts';
import { mouldSources } from '../../../calc/sources/register/mould.ts';
import { referenceSources } from '../../../calc/sources/register/reference.ts';
import { seasoningSources } from '../../../calc/sources/register/seasoning.ts';
import { thermometerSources } from '../../../calc/sources/register/thermometer.ts';
import { trendsSources } from '../../../calc/sources/register/trends.ts';
import { yieldSources } from '../../../calc/sources/register/yield.ts';

const all = Object.entries(SOURCES) as [string, Source][];

describe('the register of sources', () => {
  it('has no id that two subjects claim', () => {
    const parts = [
      ingredientsSources,
      formulaSources,
      cureSources,
      curingSources,
      mouldSources,
      yieldSources,
      lethalitySources,
      coolingSources,
      binderSources,
      casingsSources,
      chillBudgetSources,
      geleeSources,
      seasoningSources,
      growthSources,
      heatSources,
      thermometerSources,
      referenceSources,
      labelSources,
      trendsSources,
    ];
    const ids = parts.flatMap((part) => Object.keys(part));
    expect(ids).toHaveLength(new Set(ids).size);
    expect(all).toHaveLength(ids.length);
  });

  it.each(all)('%s names the text itself, its issuer, edition and a real day of review', (_, source) => {
    expect(source.title.trim()).not.toBe('');
    expect(source.issuer.trim()).not.toBe('');
    expect(source.edition.trim()).not.toBe('');
    expect(new Date(`${source.reviewed}T00:00:00Z`).toISOString().slice(0, 10)).toBe(source.reviewed);
    expect(JSON.stringify(source)).not.toMatch(/https?:|www\.|github/i);
  });

  it('finds a source by id and knows a stranger', () => {
    expect(sourceOf('usda-sr28').edition).toBe('Release 28 (SR28)');
    expect(isSourceId('usda-sr28')).toBe(true);
    expect(isSourceId('toString')).toBe(false);
    expect(isSourceId('')).toBe(false);
  });
});

describe('a check is overdue', () => {
  // Twelve calendar months: a rule of this house.
  it.each([
    ['2025-11-25', '2026-11-24', false],
    ['2025-11-25', '2026-11-25', false],
    ['2025-11-25', '2026-11-26', true],
    ['2025-11-25', '2026-12-01', true],
    ['2025-11-25', '2027-01-01', true],
    ['2025-11-25', '2025-11-25T23:59:00+13:00', false],
    ['2024-02-29', '2025-02-28', false],
    ['2024-02-29', '2025-03-01', true],
    ['2025-12-31', '2026-01-01', false],
  ])('reviewed %s, today %s: %s', (reviewed, today, overdue) => {
    expect(isCheckOverdue(reviewed, today)).toBe(overdue);
    expect(isCheckOverdue({ reviewed }, today)).toBe(overdue);
  });

  it.each(['', 'never', '2026-13-01', '2026-02-30', '26-1-1'])(
    'when its date cannot be read: "%s"',
    (bad) => {
      expect(isCheckOverdue(bad, '2026-11-25')).toBe(true);
      expect(isCheckOverdue('2026-11-25', bad)).toBe(true);
    },
  );
});
