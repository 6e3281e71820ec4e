/** Brings a release to the folder on the host: only what differs, in an order that no visitor sees, and to be gone on with. */
import { readFile } from 'node:fs/promises';
import { join, posix } from 'node:path';
import type { HostStep } from '#words/hosting.ts';
import { beginJournal } from './journal.ts';
import {
  EMPTY,
  INCOMING_FOLDER,
  isOurs,
  JOURNAL_FILE,
  MANIFEST_FILE,
  readJournal,
  readManifest,
  withJournal,
  type Done,
  type Manifest,
} from './manifest.ts';
import { isNothing, listAfter, listDuring, planUpload, type Plan } from './plan.ts';
import { digestsOf, isPage, publicFolder, type Digests } from './publicFiles.ts';
import type { Remote } from './remote.ts';

/** So many files are under way at a time: most are small, and each takes four answers of the host. */
const AT_ONCE = 8;
/** Names that the question about a folder shows. */
const SHOWN = 8;

export type Wish = {
  /** The folder may have files in it that did not come from here. Those that stand in the way are replaced, no other is touched. */
  readonly evenIfForeign: boolean;
  /** Sends every file again, whatever the list on the host says. */
  readonly whole: boolean;
};

export type Told = {
  readonly step: (step: HostStep) => void;
  readonly files: (done: number, of: number) => void;
};

export type Outcome =
  | { readonly outcome: 'done'; readonly sent: number; readonly removed: number }
  | { readonly outcome: 'foreign'; readonly names: readonly string[]; readonly count: number };

/** What lies there by the list and the journal; null where neither tells that it came from here. */
async function whatLies(remote: Remote): Promise<Manifest | null> {
  const [list, journal] = await Promise.all([remote.read(MANIFEST_FILE), remote.read(JOURNAL_FILE)]);
  const manifest = list === null ? null : readManifest(list.toString('utf8'));
  if (manifest === null || journal === null) return manifest;
  return withJournal(manifest, readJournal(journal.toString('utf8')));
}

/** Of a folder that has no list nothing is known but the names in it: what is sent below one of them may stand there from elsewhere. */
const unknown = (wanted: Digests, names: readonly string[]): Manifest => ({
  ...EMPTY,
  unsure: Object.fromEntries(
    Object.keys(wanted)
      .filter((path) => names.includes(path.split('/')[0] ?? ''))
      .map((path) => [path, 'there']),
  ),
});

/**
 * @param release its folder
 * @param id its name
 * @throws HostError naming what went wrong; what is there then is whole as far as visitors see, and the next upload goes on
 */
export async function upload(
  { release, id }: { readonly release: string; readonly id: string },
  remote: Remote,
  wish: Wish,
  told: Told,
): Promise<Outcome> {
  told.step('comparing');
  const names = await remote.list('.');
  if (names === null) await remote.makeFolder('.');
  const found = names === null ? null : await whatLies(remote);
  const foreign = (names ?? []).filter((name) => name !== '.' && name !== '..' && !isOurs(name)).sort();
  if (found === null && foreign.length > 0 && !wish.evenIfForeign) {
    return { outcome: 'foreign', names: foreign.slice(0, SHOWN), count: foreign.length };
  }
  const wanted = await digestsOf(release);
  const there = found ?? unknown(wanted, foreign);
  const plan = planUpload(wanted, there, wish.whole);
  const send = new Sending(remote, publicFolder(release), wanted, told);
  if (!isNothing(plan) || there.release === null) await send.all(there, plan);
  if (there.release !== id || !isNothing(plan)) await send.finish(listAfter(id, wanted, there, plan));
  return { outcome: 'done', sent: plan.groups.flat().length, removed: plan.remove.length };
}

class Sending {
  readonly #remote: Remote;
  readonly #from: string;
  readonly #wanted: Digests;
  readonly #told: Told;
  #done = 0;
  #names = 0;

  constructor(remote: Remote, from: string, wanted: Digests, told: Told) {
    this.#remote = remote;
    this.#from = from;
    this.#wanted = wanted;
    this.#told = told;
  }

  async all(there: Manifest, plan: Plan): Promise<void> {
    const remote = this.#remote;
    this.#told.step('sending');
    await remote.makeFolder(INCOMING_FOLDER);
    await this.#clearIncoming();
    await this.#putList(listDuring(there, plan));
    await remote.remove(JOURNAL_FILE);
    const journal = beginJournal(remote, Date.now);
    const of = plan.groups.flat().length;
    this.#told.files(0, of);
    for (const group of plan.groups) {
      await this.#makeFolders(group, there);
      await each(group, async (path) => {
        const bytes = await readFile(join(this.#from, path));
        await remote.put(bytes, path, this.#incoming());
        await journal.note({ path, digest: this.#wanted[path] ?? '' });
        this.#done += 1;
        this.#told.files(this.#done, of);
      });
      // What comes next rests on it.
      await journal.flush();
    }
    await this.#removeAll(plan.remove, (done) => journal.note(done));
  }

  async finish(list: Manifest): Promise<void> {
    const remote = this.#remote;
    await remote.makeFolder(INCOMING_FOLDER);
    await this.#putList(list);
    await remote.remove(JOURNAL_FILE);
    await remote.removeFolder(INCOMING_FOLDER);
  }

  #incoming(): string {
    this.#names += 1;
    return posix.join(INCOMING_FOLDER, String(this.#names));
  }

  /** What an upload that broke off left half-written. */
  async #clearIncoming(): Promise<void> {
    const left = (await this.#remote.list(INCOMING_FOLDER)) ?? [];
    const files = left.filter((name) => /^\d+$/.test(name));
    await each(files, (name) => this.#remote.remove(posix.join(INCOMING_FOLDER, name)));
  }

  #putList(list: Manifest): Promise<void> {
    return this.#remote.put(Buffer.from(JSON.stringify(list)), MANIFEST_FILE, this.#incoming());
  }

  async #makeFolders(paths: readonly string[], there: Manifest): Promise<void> {
    const known = new Set(Object.keys(there.files).map((path) => posix.dirname(path)));
    const needed = [...new Set(paths.map((path) => posix.dirname(path)))].filter((path) => !known.has(path));
    const depthOf = (folder: string): number => folder.split('/').length;
    // A folder comes before those that are in it.
    for (let depth = 1; depth <= Math.max(0, ...needed.map(depthOf)); depth += 1) {
      const level = needed.filter((folder) => depthOf(folder) === depth);
      await each(level, (folder) => this.#remote.makeFolder(folder));
    }
  }

  /** Pages first: what they ask for goes after them. Folders that are empty then go too. */
  async #removeAll(paths: readonly string[], note: (done: Done) => Promise<void>): Promise<void> {
    if (paths.length === 0) return;
    this.#told.step('clearing');
    const remote = this.#remote;
    for (const group of [paths.filter(isPage), paths.filter((path) => !isPage(path))]) {
      await each(group, async (path) => {
        await remote.remove(path);
        await note({ path, digest: null });
      });
    }
    const folders = new Set(paths.map((path) => posix.dirname(path)).filter((path) => path !== '.'));
    for (const folder of [...folders].sort((one, other) => other.length - one.length)) {
      await remote.removeFolder(folder);
    }
  }
}

/** Some at a time; ends with the first that fails, once those under way have ended. */
async function each(paths: readonly string[], act: (path: string) => Promise<void>): Promise<void> {
  const waiting = [...paths].reverse();
  let failed = false;
  const worker = async (): Promise<void> => {
    for (let path = waiting.pop(); path !== undefined && !failed; path = waiting.pop()) {
      try {
        await act(path);
      } catch (error) {
        failed = true;
        throw error;
      }
    }
  };
  const ended = await Promise.allSettled(Array.from({ length: AT_ONCE }, worker));
  for (const one of ended) if (one.status === 'rejected') throw one.reason;
}
