/** Disasters of the machine while the shop runs. */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { chmodSync, chownSync, cpSync, mkdirSync, readdirSync, statSync, symlinkSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { isRoot, leftOut, NOBODY, type Disaster, type Place } from './disaster.ts';
import { foundIn, pageOf, seen } from './people.ts';
import { root, startShop, type Shop } from './shop.ts';

const CLIENTS = 20;
const KILLS = 5;
const RECEIPTS_BETWEEN = 40;

/** Clients that send until told to stop. */
function load({ people }: Place, shop: () => Shop): { stop: () => Promise<void> } {
  let going = true;
  const client = async (): Promise<void> => {
    while (going) if ((await people.send(shop())) === 0) await pause(20);
  };
  const all = Promise.all(Array.from({ length: CLIENTS }, client));
  return {
    stop: async () => {
      going = false;
      await all;
    },
  };
}

const killed: Disaster = {
  name: `killed ${KILLS} times under load`,
  play: async (place) => {
    const { file, people } = place;
    let shop = await startShop(file);
    const clients = load(place, () => shop);
    for (let kill = 0; kill < KILLS; kill += 1) {
      // Each in the midst of orders, however slow the machine is.
      const enough = people.receipts.size + RECEIPTS_BETWEEN;
      while (people.receipts.size < enough) await pause(5);
      await shop.stop('SIGKILL');
      shop = await startShop(file);
    }
    await clients.stop();
    const saw = await seen(shop, '/bench/');
    await shop.stop();
    return { receipted: people.receipts.size, found: foundIn(file, people.receipts), saw };
  },
};

const twoServers: Disaster = {
  name: 'two servers on one book',
  play: async (place) => {
    const { file, people } = place;
    const both = await Promise.all([startShop(file), startShop(file)]);
    await Promise.all(both.map((shop) => people.sendMany(shop, 60)));
    const counts = await Promise.all(
      both.map(async (shop) => /\d+ orders/.exec(await pageOf(shop, '/bench/'))?.[0] ?? 'none'),
    );
    await Promise.all(both.map((shop) => shop.stop()));
    const found = foundIn(file, people.receipts);
    return { receipted: people.receipts.size, found, saw: `${counts.join(' at the one, ')} at the other` };
  },
};

/** As a full disk answers: no file may grow beyond it. Kilobytes: a new book and some orders. */
const FULL_KB = 260;

const full: Disaster = {
  name: 'disk full',
  play: async ({ file, people }) => {
    if (process.platform === 'win32') return leftOut('this system has no limit on files');
    const shop = await startShop(file, {
      before: ['bash', '-c', `ulimit -f ${FULL_KB}; exec "$0" "$@"`],
    });
    const refused = await people.sendMany(shop, 200);
    const saw = await seen(shop, '/bench/');
    await shop.stop();
    const after = await startShop(file);
    const again = await people.sendMany(after, 3);
    await after.stop();
    return {
      receipted: people.receipts.size,
      found: foundIn(file, people.receipts),
      saw: `${saw}, ${refused} of 200 orders refused by name; with room again ${3 - again} of 3 taken`,
    };
  },
};

const readOnly: Disaster = {
  name: 'read-only folder',
  play: async ({ folder, file, people }) => {
    const shop = await startShop(file);
    await people.sendMany(shop, 5);
    await shop.stop();
    const all = [folder, ...readdirSync(folder).map((name) => join(folder, name))];
    if (isRoot) for (const one of all) chownSync(one, NOBODY, NOBODY);
    for (const one of all.toReversed()) chmodSync(one, one === folder ? 0o500 : 0o400);
    const closed = await startShop(file, isRoot ? { uid: NOBODY } : {});
    const status = await people.send(closed);
    const saw = await seen(closed, '/bench/');
    await closed.stop();
    for (const one of all) chmodSync(one, one === folder ? 0o700 : 0o600);
    return {
      receipted: people.receipts.size,
      found: foundIn(file, people.receipts),
      saw: `${saw} (new orders ${status})`,
    };
  },
};

/** The project with everything but what it builds, as far as a build needs it. */
const PROJECT = ['astro.config.mjs', 'content', 'package.json', 'public', 'src', 'tsconfig.json', '.config'];

const build: Disaster = {
  name: 'build folder not writable',
  play: async ({ folder }) => {
    const project = join(folder, 'project');
    mkdirSync(join(project, '.releases'), { recursive: true });
    for (const name of PROJECT) cpSync(join(root, name), join(project, name), { recursive: true });
    symlinkSync(join(root, 'node_modules'), join(project, 'node_modules'));
    for (const one of [dirname(folder), folder]) chmodSync(one, 0o755);
    chmodSync(join(project, '.releases'), 0o500);
    chmodSync(project, 0o555);
    const home = join(folder, 'home');
    mkdirSync(home, { mode: 0o777 });
    chmodSync(home, 0o777);
    const child = spawn(process.execPath, ['src/command/start.ts'], {
      cwd: project,
      env: { ...process.env, PORT: '0', HOME: home },
      stdio: ['ignore', 'ignore', 'pipe'],
      ...(isRoot ? { uid: NOBODY, gid: NOBODY } : {}),
    });
    let said = '';
    child.stderr.on('data', (part: Buffer) => (said += part.toString()));
    const [code] = (await once(child, 'exit')) as [number | null];
    chmodSync(project, 0o755);
    chmodSync(join(project, '.releases'), 0o755);
    const line = said.split('\n').find((one) => one.trim() !== '') ?? 'nothing';
    return { receipted: 0, found: 0, saw: `${line.slice(0, 150)} (ended with ${code})` };
  },
};

/** Node with a clock that is so many days off. */
const clock = (days: number): string[] => [
  '--import',
  `data:text/javascript,const now = Date.now; Date.now = () => now() + ${days} * 864e5`,
];

const clocks: Disaster = {
  name: 'clock a year ahead, then back',
  play: async ({ file, people }) => {
    const ahead = await startShop(file, { node: clock(365) });
    await people.sendMany(ahead, 3);
    await ahead.stop();
    const back = await startShop(file);
    const saw = await seen(back, '/bench/');
    await people.sendMany(back, 3);
    await back.stop();
    const size = statSync(file).size;
    return { receipted: people.receipts.size, found: size === 0 ? 0 : foundIn(file, people.receipts), saw };
  },
};

export const running: readonly Disaster[] = [killed, twoServers, full, readOnly, build, clocks];
