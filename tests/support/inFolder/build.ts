/**
 * Builds a small shop that lies in a folder of its host, for the tests of what is built:
 * a few pieces of the demo shop, under another address. Their pictures are in the cache of the shop's own build.
 */
import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { ADDRESS, CONTENT, DIST, PIECES, RELEASES } from './shop.ts';

const root = new URL('../../..', import.meta.url).pathname;
const from = join(root, 'content');
const to = join(root, CONTENT);

rmSync(to, { recursive: true, force: true });
mkdirSync(join(to, 'pieces'), { recursive: true });
for (const part of ['components', 'wires', 'guides'])
  cpSync(join(from, part), join(to, part), { recursive: true });
for (const id of PIECES) cpSync(join(from, 'pieces', `${id}.yaml`), join(to, 'pieces', `${id}.yaml`));
const shop = readFileSync(join(from, 'shop.yaml'), 'utf8');
writeFileSync(join(to, 'shop.yaml'), shop.replace(/^address: \S+/m, `address: ${ADDRESS}`));

const { status } = spawnSync(process.execPath, [join(root, 'src/command/publish.ts')], {
  cwd: root,
  stdio: 'inherit',
  env: {
    ...process.env,
    CLASPWISE_CONTENT: CONTENT,
    CLASPWISE_RELEASES: RELEASES,
    CLASPWISE_DIST: DIST,
  },
});
process.exitCode = status ?? 1;
