import { expect, it } from 'vitest';
import { openPage } from './browser.ts';
import { pdfOf, readPdf, smallestTypePt } from './pdf.ts';

const DOCUMENT = `<!doctype html><style>
  @page { margin: 0 }
  body { margin: 0; font: 12pt sans-serif }
  p { position: absolute; margin: 0; top: 50mm; left: 30mm; line-height: 1 }
  small { position: absolute; top: 100mm; left: 30mm; font-size: 8.5pt }
  div { break-before: page }
</style>first sheet<p>Salt 54 g</p><small>small print</small><div>second sheet</div>`;

it.each([
  ['A4', 210, 297],
  ['Letter', 215.9, 279.4],
] as const)(
  'reads back from paper what was printed on %s, where and how large',
  async (format, widthMm, heightMm) => {
    await using visit = await openPage('/');
    const page = await visit.context.newPage();
    await page.setContent(DOCUMENT);
    const [first, second, ...more] = await readPdf(await pdfOf(page, { format }));

    expect(more).toEqual([]);
    expect(second?.text).toBe('second sheet');
    expect(first?.widthMm).toBeCloseTo(widthMm, 0);
    expect(first?.heightMm).toBeCloseTo(heightMm, 0);
    const salt = first?.texts.find(({ text }) => text.startsWith('Salt'));
    expect(salt?.sizePt).toBeCloseTo(12, 1);
    expect(salt?.leftMm).toBeCloseTo(30, 0);
    // The baseline lies within the 12 pt (4.2 mm) line that starts 50 mm down.
    expect(salt?.topMm).toBeGreaterThan(50);
    expect(salt?.topMm).toBeLessThan(54.3);
    expect(first && smallestTypePt(first)).toBeCloseTo(8.5, 1);
  },
);
