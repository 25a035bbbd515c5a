import { describe, expect, it } from 'vitest';
import { importFault } from './floors.mjs';

describe('importFault', () => {
  it.each([
    ['site/pages/index.astro', 'content/figures/index.ts'],
    ['site/pages/index.astro', 'worksheets/cure/island.tsx'],
    ['content/tables/limits.mdx', 'worksheets/parts/answer.tsx'],
    ['worksheets/cure/island.tsx', 'calc/cure/index.ts'],
    ['worksheets/cure/island.tsx', 'worksheets/parts/answer.tsx'],
    ['calc/cure/stage.ts', 'calc/formula/index.ts'],
    ['calc/cure/limits/eu.ts', 'calc/cure/parts/basis.ts'],
    ['calc/batch/assess.ts', 'calc/cooling/index.ts'],
    ['calc/batch/schema.ts', 'node_modules/valibot/dist/index.mjs'],
    ['tests/site/setup.ts', 'site/tools/serve.mjs'],
    ['tests/calc/cure/stage.test.ts', 'calc/cure/index.ts'],
  ])('lets %s import %s', (from, to) => {
    expect(importFault(from, to)).toBeNull();
  });

  it.each([
    ['calc/cure/stage.ts', 'worksheets/words/cure.ts', 'may not import from worksheets'],
    ['worksheets/cure/island.tsx', 'content/sources.ts', 'may not import from content'],
    ['worksheets/cure/island.tsx', 'site/lib/urls.ts', 'may not import from site'],
    ['content/tables/limits.mdx', 'site/lib/urls.ts', 'may not import from site'],
    ['worksheets/cure/island.tsx', 'calc/cure/stage.ts', 'by its index.ts only'],
    ['calc/cure/stage.ts', 'calc/formula/weights.ts', 'by its index.ts only'],
    ['calc/formula/stage.ts', 'calc/cure/index.ts', 'comes after or beside it'],
    ['calc/cure/stage.ts', 'calc/mould/index.ts', 'comes after or beside it'],
    ['calc/lethality/stage.ts', 'calc/cooling/index.ts', 'comes after or beside it'],
    ['calc/findings/finding.ts', 'calc/batch/index.ts', 'comes after or beside it'],
    ['calc/pickle/stage.ts', 'calc/quantities/index.ts', 'has no place yet'],
    ['worksheets/cure/island.tsx', 'tests/site/browser.ts', 'only tests may import tests'],
  ])('refuses %s importing %s', (from, to, fault) => {
    expect(importFault(from, to)).toContain(fault);
  });
});
