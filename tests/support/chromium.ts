/**
 * One Chromium for every browser test: the machine's own where it has one,
 * else the one that comes with the npm packages, unpacked once.
 */
import { existsSync, mkdtempSync, renameSync, rmSync } from 'node:fs';
import { mkdir } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { delimiter, dirname, join } from 'node:path';
import { chromium, type Browser } from 'playwright-core';

/** Quiet and closed: no sandbox for root, no background requests. */
const LAUNCH_ARGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

const SYSTEM_PATHS = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

/** Where the packaged browser is unpacked: outside node_modules, which `npm ci` empties. */
const UNPACKED = new URL('../../.cache/chromium/', import.meta.url).pathname;

type Found = { readonly executablePath: string; readonly env: Record<string, string> };

/** Launches headless Chromium; the caller closes it. `CLASPWISE_CHROMIUM=packaged` leaves the machine's own aside. */
export async function launchChromium(): Promise<Browser> {
  const { executablePath, env } = await findChromium();
  return chromium.launch({ executablePath, env, args: LAUNCH_ARGS });
}

/** The executable and the environment it needs. */
export async function findChromium(): Promise<Found> {
  const env = cleanEnv();
  const wanted = process.env.CLASPWISE_CHROMIUM;
  if (wanted !== undefined && wanted !== 'packaged') return { executablePath: wanted, env };
  const own = wanted === 'packaged' ? undefined : SYSTEM_PATHS.find((path) => existsSync(path));
  if (own !== undefined) return { executablePath: own, env };
  const folder = await unpackedFolder();
  const libraries = join(folder, 'al2023', 'lib');
  return {
    executablePath: join(folder, 'chromium'),
    env: {
      ...env,
      LD_LIBRARY_PATH: [libraries, env.LD_LIBRARY_PATH].filter(Boolean).join(delimiter),
      FONTCONFIG_PATH: join(folder, 'fonts'),
    },
  };
}

/**
 * Unpacks into a fresh folder and renames it into place, so that two first
 * starts at once can't read each other's half-written files.
 */
async function unpackedFolder(): Promise<string> {
  const packageJson = createRequire(import.meta.url)
    .resolve('@sparticuz/chromium')
    .replace(/build.*$/, 'package.json');
  const { version } = createRequire(import.meta.url)(packageJson) as { version: string };
  const folder = join(UNPACKED, version);
  if (existsSync(folder)) return folder;
  await mkdir(UNPACKED, { recursive: true });
  const fresh = mkdtempSync(join(UNPACKED, 'unpacking-'));
  const { inflate } = await import('@sparticuz/chromium');
  const before = process.env.TMPDIR;
  process.env.TMPDIR = fresh; // the package unpacks into the temporary folder, whatever it is
  try {
    const packed = join(dirname(packageJson), 'bin');
    for (const name of ['chromium.br', 'fonts.tar.br', 'swiftshader.tar.br', 'al2023.tar.br']) {
      await inflate(join(packed, name));
    }
  } finally {
    if (before === undefined) delete process.env.TMPDIR;
    else process.env.TMPDIR = before;
  }
  try {
    renameSync(fresh, folder);
  } catch (error) {
    if (!existsSync(folder)) throw error;
    rmSync(fresh, { recursive: true }); // another start was first
  }
  return folder;
}

function cleanEnv(): Record<string, string> {
  return Object.fromEntries(
    Object.entries(process.env).filter((entry): entry is [string, string] => entry[1] !== undefined),
  );
}
