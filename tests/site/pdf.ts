import jsQr from 'jsqr';
import type { Page } from 'playwright-core';
import { getDocumentProxy, getResolvedPDFJS } from 'unpdf';
import { expect } from 'vitest';

const MM_PER_POINT = 25.4 / 72;

/** A run of text on paper. Its place is that of the start of its baseline, from the top left of the sheet. */
export interface PrintedText {
  text: string;
  sizePt: number;
  leftMm: number;
  topMm: number;
}

export interface PrintedPage {
  widthMm: number;
  heightMm: number;
  texts: PrintedText[];
  /** All text in reading order, runs of white space made one. */
  text: string;
}

/** Prints a page as the browser would on paper, at the margins and size its style sheet asks for. */
export async function pdfOf(page: Page, options: { format: 'A4' | 'Letter' }): Promise<Uint8Array> {
  return new Uint8Array(await page.pdf({ format: options.format, printBackground: false, tagged: true }));
}

/** Reads a PDF: its pages, what stands on them, how large and where. Blank runs are left out. */
export async function readPdf(bytes: Uint8Array): Promise<PrintedPage[]> {
  // The reader takes the bytes over, so it is given its own.
  const document = await getDocumentProxy(bytes.slice());
  const pages: PrintedPage[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    const [left = 0, bottom = 0, right = 0, top = 0] = page.view;
    const { items } = await page.getTextContent();
    const texts: PrintedText[] = [];
    let text = '';
    for (const item of items) {
      if (!('str' in item)) continue;
      text += item.hasEOL ? `${item.str}\n` : item.str;
      if (item.str.trim() === '') continue;
      const [, , c = 0, d = 0, x = 0, y = 0] = item.transform as number[];
      texts.push({
        text: item.str,
        sizePt: Math.hypot(c, d),
        leftMm: (x - left) * MM_PER_POINT,
        topMm: (top - y) * MM_PER_POINT,
      });
    }
    pages.push({
      widthMm: (right - left) * MM_PER_POINT,
      heightMm: (top - bottom) * MM_PER_POINT,
      texts,
      text: text.replace(/\s+/g, ' ').trim(),
    });
  }
  await document.loadingTask.destroy();
  return pages;
}

/** A square code on paper. */
export interface PrintedCode {
  /** Page, from 1. */
  page: number;
  /** Side of the code without its white margin. */
  sideMm: number;
  /** What a camera reads; null where it reads nothing. */
  text: string | null;
}

/** A path of more corners than this is a square code: nothing else on a sheet comes near. */
const CODE_CORNERS = 400;
/** Pixels a square is drawn with for the reader, and white squares around the code. */
const PIXELS = 4;
const MARGIN = 4;

type Corners = { x: number; y: number }[][];

/** Corners of the outlines of a path, as the PDF's own drawing operators give them. */
function outlinesOf(data: readonly number[]): Corners {
  const outlines: Corners = [];
  let at = 0;
  while (at < data.length) {
    const [op, x = 0, y = 0] = data.slice(at, at + 3);
    if (op === 0) outlines.push([{ x, y }]);
    else if (op === 1) outlines.at(-1)?.push({ x, y });
    at += op === 4 ? 1 : 3;
  }
  return outlines;
}

/** Even-odd rule: a point inside an odd number of outlines is black. */
function isBlack(outlines: Corners, x: number, y: number): boolean {
  let crossings = 0;
  for (const outline of outlines)
    for (const [index, from] of outline.entries()) {
      const to = outline[(index + 1) % outline.length] ?? from;
      if (from.y > y !== to.y > y && x < from.x) crossings += 1;
    }
  return crossings % 2 === 1;
}

function readCode(outlines: Corners, squares: number): string | null {
  const width = (squares + 2 * MARGIN) * PIXELS;
  const image = new Uint8ClampedArray(width * width * 4).fill(255);
  for (let row = 0; row < squares; row++)
    for (let column = 0; column < squares; column++) {
      if (!isBlack(outlines, column + 0.5, row + 0.5)) continue;
      for (let pixel = 0; pixel < PIXELS * PIXELS; pixel++) {
        const x = (column + MARGIN) * PIXELS + (pixel % PIXELS);
        const y = (row + MARGIN) * PIXELS + Math.floor(pixel / PIXELS);
        image.fill(0, (y * width + x) * 4, (y * width + x) * 4 + 3);
      }
    }
  return jsQr(image, width, width)?.data ?? null;
}

/** Finds the square codes of a PDF in its own drawing, measures them on paper and reads them. */
export async function printedCodes(bytes: Uint8Array): Promise<PrintedCode[]> {
  const { OPS } = await getResolvedPDFJS();
  const document = await getDocumentProxy(bytes.slice());
  const codes: PrintedCode[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const { fnArray, argsArray } = await (await document.getPage(number)).getOperatorList();
    const scales = [1];
    for (const [index, op] of fnArray.entries()) {
      const args: unknown[] = argsArray[index] ?? [];
      if (op === OPS.save) scales.push(scales.at(-1) ?? 1);
      else if (op === OPS.restore) scales.pop();
      else if (op === OPS.transform) scales.push((scales.pop() ?? 1) * Number(args[0]));
      else if (op === OPS.constructPath) {
        const [, [path] = []] = args as [number, (ArrayLike<number> | Record<number, number>)[]];
        const data = Object.values(path ?? {});
        if (data.length < CODE_CORNERS * 3) continue;
        const outlines = outlinesOf(data);
        const squares = Math.max(...outlines.flat().map(({ x }) => x));
        const sideMm = squares * (scales.at(-1) ?? 1) * MM_PER_POINT;
        codes.push({ page: number, sideMm, text: readCode(outlines, squares) });
      }
    }
  }
  await document.loadingTask.destroy();
  return codes;
}

/** The smallest type on a page, pt; null on a page without text. */
export function smallestTypePt(page: PrintedPage): number | null {
  return page.texts.length === 0 ? null : Math.min(...page.texts.map((text) => text.sizePt));
}

const PAPER_MM = { A4: [210, 297], Letter: [215.9, 279.4] } as const;
/** A point of type is never smaller than this on paper, and no box to write in lower or narrower. */
const LEAST_PT = 9;
const LEAST_BOX_MM = { height: 7, width: 14 };

/** Fails unless cards stand on pages of their size, in type and boxes that a cold hand can use, with nothing cut off. */
export async function expectPrintable(
  page: Page,
  pages: readonly PrintedPage[],
  format: 'A4' | 'Letter',
): Promise<void> {
  const [widthMm, heightMm] = PAPER_MM[format];
  for (const each of pages) {
    expect(each.widthMm).toBeCloseTo(widthMm, 0);
    expect(each.heightMm).toBeCloseTo(heightMm, 0);
    expect(smallestTypePt(each)).toBeGreaterThanOrEqual(LEAST_PT - 0.02);
    const farMm = Math.max(...each.texts.map(({ topMm }) => topMm));
    expect(farMm).toBeLessThan(heightMm - 4);
  }
  await page.emulateMedia({ media: 'print' });
  const faults = await page.evaluate((least) => {
    const mm = 25.4 / 96;
    const boxes = Array.from(document.querySelectorAll('.card :is(.write-in-box, .tick-box, tbody td)'));
    const small = boxes
      .map((box) => ({ box, size: box.getBoundingClientRect() }))
      .filter(({ size }) => size.height * mm < least.height - 0.05 || size.width * mm < least.width - 0.05)
      .map(({ box }) => `small: ${box.className || box.tagName} ${box.textContent}`);
    const wide = boxes.filter((box) => box.scrollWidth > box.clientWidth + 1);
    return [...small, ...wide.map((box) => `too wide: ${box.textContent}`)];
  }, LEAST_BOX_MM);
  await page.emulateMedia({ media: null });
  expect(faults).toEqual([]);
}
