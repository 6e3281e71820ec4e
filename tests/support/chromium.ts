/**
 * The Chromium of the browser tests: the headless shell from the npm packages, unpacked once. It is the same
 * version on every machine, and takes a third of the time of a machine's own whole browser.
 */
import { existsSync, mkdtempSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { mkdir } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { delimiter, dirname, join } from 'node:path';
import { chromium, type BrowserServer } from 'playwright-core';

const LAUNCH_ARGS = [
  // Quiet and closed: no sandbox for root, no background requests.
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  // No process is started ahead for a page that may never come.
  '--renderer-process-limit=1',
];

/** Where the packaged browser doesn't run: it is built for Linux on x86-64. */
const SYSTEM_PATHS = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
];

/** Where the packaged browser is unpacked: outside node_modules, which `npm ci` empties. */
const UNPACKED = new URL('../../.cache/chromium/', import.meta.url).pathname;

/** The package's own list of fonts names folders of another host; without any font Chromium ends itself. */
const FONT_LIST = `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <dir prefix="relative">fonts</dir>
  <cachedir prefix="xdg">fonts</cachedir>
</fontconfig>
`;

type Found = { readonly executablePath: string; readonly env: Record<string, string> };

/** Launches headless Chromium for many to connect to; the caller closes it. */
export async function launchChromium(): Promise<BrowserServer> {
  const { executablePath, env } = await findChromium();
  return chromium.launchServer({ executablePath, env, args: LAUNCH_ARGS });
}

/** The executable and the environment it needs. `CLASPWISE_CHROMIUM` names another. */
export async function findChromium(): Promise<Found> {
  const env = cleanEnv();
  const runsPackaged = process.platform === 'linux' && process.arch === 'x64';
  const own =
    process.env.CLASPWISE_CHROMIUM ??
    (runsPackaged ? undefined : SYSTEM_PATHS.find((path) => existsSync(path)));
  if (own !== undefined) return { executablePath: own, env };
  const folder = await unpackedFolder();
  const libraries = join(folder, 'al2023', 'lib');
  return {
    executablePath: join(folder, 'chromium'),
    env: {
      ...env,
      LD_LIBRARY_PATH: [libraries, env.LD_LIBRARY_PATH].filter(Boolean).join(delimiter),
      FONTCONFIG_PATH: join(folder, 'fonts'),
      XDG_CACHE_HOME: join(folder, 'cache'),
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
  const folder = join(UNPACKED, `shell-${version}`);
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
  writeFileSync(join(fresh, 'fonts', 'fonts.conf'), FONT_LIST);
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
