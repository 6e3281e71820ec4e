/** Saves one piece again and again, in a process that can be killed. Arguments: content folder, the history's file, the first number. */
import { writeSync } from 'node:fs';
import { openContent } from '#bench/content/store.ts';

const [folder = '', historyFile = '', first = '1'] = process.argv.slice(2);
const store = openContent({ folder, historyFile, nowMs: Date.now });
const key = { kind: 'piece', id: 'row' } as const;

for (let nth = Number(first); ; nth += 1) {
  const opened = store.open(key);
  if (opened === null) throw new Error('got no piece');
  const saved = store.save(opened, [{ path: ['summary'], value: `Save ${nth} ${'x'.repeat(nth % 90)}` }]);
  if (!saved.ok) throw new Error(JSON.stringify(saved));
  // At once, whatever becomes of this process: what is told here has been saved.
  writeSync(1, `${nth}\n`);
}
