/** The steps as a card lists them: what is done alike on every strand stands once, with a box for each strand. */
import type { Step } from '#core/instructions/step.ts';

export type StepLine = {
  readonly code: Step['code'];
  /** Sentences with the strands they are for; no strands for the whole piece. */
  readonly parts: readonly { readonly text: string; readonly strands: readonly number[] }[];
};

/** @param say the sentence of a step; steps of several strands with one sentence are taken together */
export function stepLines(steps: readonly Step[], say: (step: Step) => string): StepLine[] {
  const lines: StepLine[] = [];
  let at = 0;
  while (at < steps.length) {
    const block = steps.slice(at).findIndex(({ strand }) => strand === null);
    const end = block === -1 ? steps.length : at + block;
    const [step] = steps.slice(at, at + 1);
    if (end > at) {
      lines.push(...blockLines(steps.slice(at, end), say));
      at = end;
    } else {
      if (step !== undefined) lines.push({ code: step.code, parts: [{ text: say(step), strands: [] }] });
      at += 1;
    }
  }
  return lines;
}

/** Steps of all strands, in the order of the strand that has the most. */
function blockLines(block: readonly Step[], say: (step: Step) => string): StepLine[] {
  const byStrand = new Map<number, Map<string, Step>>();
  for (const step of block) {
    const strand = step.strand ?? 0;
    const own = byStrand.get(strand) ?? new Map<string, Step>();
    own.set(keyOf(step, own), step);
    byStrand.set(strand, own);
  }
  const longest = [...byStrand.values()].sort((one, other) => other.size - one.size)[0] ?? new Map();
  const keys = new Set([...longest.keys(), ...[...byStrand.values()].flatMap((own) => [...own.keys()])]);
  return [...keys].map((key) => lineOf(key as string, byStrand, say));
}

/** The same step twice on one strand, once an end, is two lines. */
function keyOf({ code }: Step, own: ReadonlyMap<string, Step>): string {
  let time = 1;
  while (own.has(`${code} ${time}`)) time += 1;
  return `${code} ${time}`;
}

function lineOf(
  key: string,
  byStrand: ReadonlyMap<number, ReadonlyMap<string, Step>>,
  say: (step: Step) => string,
): StepLine {
  const parts = new Map<string, number[]>();
  let code: Step['code'] = 'check-closed';
  for (const [strand, own] of byStrand) {
    const step = own.get(key);
    if (step === undefined) continue;
    code = step.code;
    const text = say(step);
    parts.set(text, [...(parts.get(text) ?? []), strand]);
  }
  return { code, parts: [...parts].map(([text, strands]) => ({ text, strands })) };
}
