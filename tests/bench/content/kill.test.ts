/** A process that is killed while it saves: the file is the old one or the new one, and the history knows which. */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { expect, it } from 'vitest';
import { openContent } from '#bench/content/store.ts';
import { contentFolder } from '#tests/catalogue/contentFolder.ts';
import { randomByte } from '../shop.ts';

/** 200 kills where CLASPWISE_THOROUGH is set (about four minutes); else a few. */
const KILLS = process.env.CLASPWISE_THOROUGH === undefined ? 6 : 200;
const FILE = 'pieces/row.yaml';

const summaryOf = (nth: number): string => `Save ${nth} ${'x'.repeat(nth % 90)}`.trimEnd();
const numberOf = (text: string): number => Number(/^summary: .*?\bSave (\d+)/m.exec(text)?.[1]);

it(
  `${KILLS} kills in mid-save: file and history are whole and agree, and nothing that was told to be saved is lost`,
  { timeout: 600_000 },
  async () => {
    const folder = contentFolder([{ file: FILE, from: 'A row of beads.', to: 'Save 0' }]);
    const historyFile = join(contentFolder([]), 'beside', 'content-history.sqlite');
    const untouched = readFileSync(join(folder, FILE), 'utf8').replace(/^summary: .*$/m, '');
    let nth = 0;
    for (let kill = 0; kill < KILLS; kill += 1) {
      const child = spawn(
        process.execPath,
        ['tests/bench/content/saver.ts', folder, historyFile, String(nth + 1)],
        { stdio: ['ignore', 'pipe', 'inherit'] },
      );
      let told = '';
      child.stdout.on('data', (chunk: Buffer) => (told += chunk.toString()));
      await once(child.stdout, 'data');
      // Some saves on, at any moment of one.
      await pause(randomByte() / 4);
      child.kill('SIGKILL');
      await once(child, 'close');
      const last = Number(told.trimEnd().split('\n').at(-1));

      const text = readFileSync(join(folder, FILE), 'utf8');
      nth = numberOf(text);
      // The last that was told, or the one after it, which was under way.
      expect([last, last + 1]).toContain(nth);
      expect(text.replace(/^summary: .*(\n {2}.*)*$/m, '')).toBe(untouched);

      const store = openContent({ folder, historyFile, nowMs: Date.now });
      const saves = store.history({ most: 1_000_000 });
      expect(saves.map(({ after }) => numberOf(after ?? ''))).toEqual(
        Array.from({ length: nth }, (_, at) => nth - at),
      );
      expect(saves[0]?.after).toBe(text);
      for (const [at, { before }] of saves.entries())
        expect(before).toBe(saves[at + 1]?.after ?? saves.at(-1)?.before);
      expect(store.reading().problems).toEqual([]);
      expect(store.reading().catalogue?.pieces.find(({ id }) => id === 'row')?.summary).toBe(summaryOf(nth));
    }
    // What was left half written is never read, and is few.
    expect(
      readdirSync(join(folder, 'pieces')).filter((name) => name.startsWith('.unfinished-')).length,
    ).toBeLessThanOrEqual(KILLS);
  },
);
