/** Plays disasters one after another, each in a folder of its own. */
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { orderTexts } from '../benchmarks/desk/orders.ts';
import type { Disaster, Outcome } from './disaster.ts';
import { files } from './files.ts';
import { buyers } from './people.ts';
import { powerCut } from './powerCut.ts';
import { running } from './running.ts';
import { root } from './shop.ts';

/** All that the drill knows, in order. */
export const disasters: readonly Disaster[] = [...running, ...files, powerCut];

/** @param tell told the name of each before it is played */
export async function playAll(
  wanted: readonly Disaster[],
  tell: (name: string) => void = () => undefined,
): Promise<(Outcome & { readonly name: string })[]> {
  const texts = await orderTexts(join(root, 'content'));
  // On the disk that holds the project, not in memory.
  mkdirSync(join(root, '.cache'), { recursive: true });
  const outcomes = [];
  for (const { name, play } of wanted) {
    tell(name);
    const home = mkdtempSync(join(root, '.cache', 'drill-'));
    const folder = join(home, 'book');
    mkdirSync(folder);
    try {
      const file = join(folder, 'orders.sqlite');
      outcomes.push({ name, ...(await play({ folder, file, people: buyers(texts) })) });
    } finally {
      rmSync(home, { recursive: true, force: true });
    }
  }
  return outcomes;
}
