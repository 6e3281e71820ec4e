/** The measuring strip, alone and as the shop's page, printed to PDF by Chromium and measured on the sheet. */
import { beforeAll, describe, expect, test } from 'vitest';
import { tapeLengthMm, type Paper } from '#draw/drawings/strip.ts';
import { sampleStrip } from '#tests/draw/strip.ts';
import { paintedPaths, type PaintedPath } from '#tests/support/pdfPaths.ts';
import { LANGS } from '#words/lang.ts';
import { address } from '#ui/site/addresses.ts';
import { newPage, visit } from './shop.ts';

async function printed(paper: Paper, scale = 1): Promise<Buffer> {
  const { page } = await newPage();
  await page.setContent(
    `<!doctype html><style>@page{margin:0}body{margin:0}svg{display:block}</style>${sampleStrip(paper)}`,
  );
  const pdf = await page.pdf({ format: paper === 'a4' ? 'A4' : 'Letter', preferCSSPageSize: false, scale });
  await page.context().close();
  return pdf;
}

/** Paths of that size; a stroke's own width isn't part of its path. */
function ofSize(paths: readonly PaintedPath[], width: number, height: number): PaintedPath[] {
  return paths.filter(
    (path) => Math.abs(path.width - width) < TOLERANCE_MM && Math.abs(path.height - height) < TOLERANCE_MM,
  );
}

function sheetsOf(pdf: Buffer): number {
  return pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;
}

/** A tenth of what an eye reads off a tape. */
const TOLERANCE_MM = 0.05;

describe.each(['a4', 'letter'] as const)('on %s', (paper) => {
  let paths: PaintedPath[];
  let pages: number;

  beforeAll(async () => {
    const pdf = await printed(paper);
    paths = paintedPaths(pdf);
    pages = sheetsOf(pdf);
  });

  test('it is one page', () => {
    expect(pages).toBe(1);
  });

  test('the bar is 100 mm long', () => {
    expect(ofSize(paths, 100, 3)).toHaveLength(1);
  });

  // ISO/IEC 7810, ID-1: 85.60 × 53.98 mm.
  test('the card outline is a bank card', () => {
    expect(ofSize(paths, 85.6, 53.98)).toHaveLength(1);
  });

  test('the millimetre scale is as long as it says', () => {
    const lengthMm = tapeLengthMm(paper);
    const marks = ofSize(paths, 6, lengthMm);
    expect(marks.length).toBeGreaterThan(0);
    expect(lengthMm).toBeGreaterThanOrEqual(230);
  });

  // NIST SP 811, appendix B: 1 in = 25.4 mm exactly.
  test('the inch marks end at a whole eighth of 25.4 mm', () => {
    const lengthMm = Math.floor(tapeLengthMm(paper) / 3.175) * 3.175;
    expect(ofSize(paths, 6, lengthMm).length).toBeGreaterThan(0);
  });
});

test('a page that a printer has fitted to smaller paper is found out by the bar', async () => {
  const paths = paintedPaths(await printed('a4', 0.96));
  expect(ofSize(paths, 100, 3)).toHaveLength(0);
  expect(ofSize(paths, 96, 2.88)).toHaveLength(1);
});

describe.each(LANGS)("the shop's page in %s", (lang) => {
  // Sheets in points (1/72 in): A4 (ISO 216) is 595 × 842, US Letter (ANSI/ASME Y14.1) 612 × 792.
  test.each([
    ['a4', 595, 842],
    ['letter', 612, 792],
  ] as const)('prints on one sheet of %s, true to size', async (paper, widthPt, heightPt) => {
    const { page, complaints } = await visit(address(lang, 'measuring-strip', paper), {
      colorScheme: 'dark',
    });
    const pdf = await page.pdf({ preferCSSPageSize: true });
    const box = /\/MediaBox\s*\[\s*0\s+0\s+([\d.]+)\s+([\d.]+)/.exec(pdf.toString('latin1'));
    expect([Math.round(Number(box?.[1])), Math.round(Number(box?.[2]))]).toEqual([widthPt, heightPt]);
    expect(sheetsOf(pdf)).toBe(1);
    const paths = paintedPaths(pdf);
    expect(ofSize(paths, 100, 3)).toHaveLength(1);
    expect(ofSize(paths, 85.6, 53.98)).toHaveLength(1); // ISO/IEC 7810, ID-1
    expect(ofSize(paths, 6, tapeLengthMm(paper)).length).toBeGreaterThan(0);
    expect(complaints).toEqual([]);
  });

  test('without script, the other paper is a link away and the caution is read before the sheet', async () => {
    const { page } = await visit(address(lang, 'measuring-strip', 'a4'), { javaScriptEnabled: false });
    const other = page.locator('.papers a:not([aria-current])');
    expect(await other.getAttribute('href')).toBe(address(lang, 'measuring-strip', 'letter'));
    expect(await page.locator('.opening').innerText()).toMatch(/100\s?%/);
  });
});
