/** The painted paths of a PDF page, in millimetres from its lower left corner: enough of the format to measure a drawing by. */
import { inflateSync } from 'node:zlib';

export type PaintedPath = {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
};

/** Points an inch and millimetres an inch (ISO 32000-1, 8.3.2.3: default user space is 1/72 in). */
const MM_PER_POINT = 25.4 / 72;

type Matrix = readonly [number, number, number, number, number, number];

const UNCHANGED: Matrix = [1, 0, 0, 1, 0, 0];

/** `first`, then `second` (ISO 32000-1, 8.3.4). */
function times(first: Matrix, second: Matrix): Matrix {
  const [a, b, c, d, e, f] = first;
  const [A, B, C, D, E, F] = second;
  return [a * A + b * C, a * B + b * D, c * A + d * C, c * B + d * D, e * A + f * C + E, e * B + f * D + F];
}

/** Content streams, unpacked: those that paint. */
function contents(pdf: Buffer): string[] {
  const text = pdf.toString('latin1');
  const found: string[] = [];
  for (const match of text.matchAll(/<<([^]*?)>>\s*stream\r?\n/g)) {
    const start = match.index + match[0].length;
    const end = text.indexOf('endstream', start);
    if (!/FlateDecode/.test(match[1] ?? '') || end === -1) continue;
    try {
      const plain = inflateSync(pdf.subarray(start, end)).toString('latin1');
      if (/\bcm\b/.test(plain) && /\bre\b|\bl\b/.test(plain)) found.push(plain);
    } catch {
      // Fonts and pictures aren't asked for.
    }
  }
  return found;
}

/** Every path that is filled or stroked, as its bounding box. Control points of curves count as corners. */
export function paintedPaths(pdf: Buffer): PaintedPath[] {
  return contents(pdf).flatMap(pathsOf);
}

function pathsOf(content: string): PaintedPath[] {
  const painted: PaintedPath[] = [];
  const stack: Matrix[] = [];
  let matrix = UNCHANGED;
  let numbers: number[] = [];
  let points: (readonly [number, number])[] = [];
  const put = (x: number, y: number): void => {
    const [a, b, c, d, e, f] = matrix;
    points.push([(a * x + c * y + e) * MM_PER_POINT, (b * x + d * y + f) * MM_PER_POINT]);
  };
  for (const token of content.split(/\s+/)) {
    const value = Number(token);
    if (token !== '' && Number.isFinite(value)) {
      numbers.push(value);
      continue;
    }
    if (token === 'q') stack.push(matrix);
    if (token === 'Q') matrix = stack.pop() ?? UNCHANGED;
    if (token === 'cm') matrix = times(numbers.slice(-6) as unknown as Matrix, matrix);
    if (token === 'm' || token === 'l' || token === 'c') {
      for (let at = 0; at + 1 < numbers.length; at += 2) put(numbers[at] ?? NaN, numbers[at + 1] ?? NaN);
    }
    if (token === 're') {
      const [x = NaN, y = NaN, width = NaN, height = NaN] = numbers.slice(-4);
      put(x, y);
      put(x + width, y + height);
    }
    if (/^[fFSsBb]\*?$/.test(token) && points.length > 0) painted.push(boxOf(points));
    if (/^([fFSsBb]\*?|n)$/.test(token)) points = [];
    numbers = [];
  }
  return painted;
}

function boxOf(points: readonly (readonly [number, number])[]): PaintedPath {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  const x = Math.min(...xs);
  const y = Math.min(...ys);
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}
