/** An upload that breaks off at each of its steps, over a host in memory. */
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, posix } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import type { Remote } from '#hosting/remote.ts';
import { HostError } from '#hosting/trouble.ts';
import { upload, type Outcome } from '#hosting/upload.ts';
import { missingFromFront, missingIn, releaseOf, removeAll, siteOf, type Site } from './release.ts';

const place = mkdtempSync(join(tmpdir(), 'cut-'));
afterAll(() => removeAll(place));

/** Files by path; `null` for a folder. `steps`: how many changes it lets through before the line breaks. */
class MemoryHost implements Remote {
  readonly there: Map<string, Buffer | null>;
  left: number;

  constructor(there: ReadonlyMap<string, Buffer | null> = new Map(), left = Infinity) {
    this.there = new Map(there);
    this.left = left;
  }
  #step(): void {
    if (this.left <= 0) throw new HostError({ code: 'cut-off' });
    this.left -= 1;
  }
  async list(path: string): Promise<string[] | null> {
    const folder = posix.normalize(path);
    if (folder !== '.' && !this.there.has(folder)) return null;
    return [...this.there.keys()]
      .filter((one) => posix.dirname(one) === folder)
      .map((one) => posix.basename(one));
  }
  async read(path: string): Promise<Buffer | null> {
    return this.there.get(path) ?? null;
  }
  async makeFolder(path: string): Promise<void> {
    this.#step();
    for (let one = path; one !== '.'; one = posix.dirname(one)) this.there.set(one, null);
  }
  async put(bytes: Buffer, path: string, by: string): Promise<void> {
    this.#step();
    if (this.there.get(posix.dirname(by)) !== null) throw new Error(`no folder for ${by}`);
    this.there.set(by, bytes.subarray(0, 3));
    this.#step();
    this.there.delete(by);
    if (posix.dirname(path) !== '.' && this.there.get(posix.dirname(path)) !== null) {
      throw new Error(`no folder for ${path}`);
    }
    this.there.set(path, bytes);
  }
  async add(bytes: Buffer, path: string, at: number): Promise<void> {
    this.#step();
    const old = this.there.get(path) ?? Buffer.alloc(0);
    // Half of it may have come through.
    this.there.set(path, Buffer.concat([old.subarray(0, at), bytes.subarray(0, bytes.length / 2)]));
    this.#step();
    this.there.set(path, Buffer.concat([old.subarray(0, at), bytes]));
  }
  async remove(path: string): Promise<void> {
    this.#step();
    this.there.delete(path);
  }
  async removeFolder(path: string): Promise<void> {
    this.#step();
    if ([...this.there.keys()].every((one) => posix.dirname(one) !== path)) this.there.delete(path);
  }
  site(): Site {
    return Object.fromEntries(
      [...this.there].flatMap(([path, bytes]) =>
        bytes === null || path.startsWith('.') ? [] : [[path, bytes.toString()]],
      ),
    );
  }
}

const quiet = { step: () => undefined, files: () => undefined };
const wish = { evenIfForeign: false, whole: false };

let made = 0;
function release(site: Site): { readonly release: string; readonly id: string } {
  made += 1;
  const id = `20260401-100000-${String(made).padStart(3, '0')}`;
  return { release: releaseOf(join(place, 'releases'), id, site), id };
}
async function cutOff(work: Promise<Outcome>): Promise<boolean> {
  try {
    await work;
    return false;
  } catch (error) {
    if (error instanceof HostError && error.trouble.code === 'cut-off') return true;
    throw error;
  }
}

const before = siteOf({ ford: 'as it was', weir: 'as it was', mill: 'as it was', gone: 'as it was' });
const after = siteOf({ ford: 'restrung', weir: 'as it was', mill: 'as it was', lock: 'new', rush: 'new' });
/** A third that wants some of the first back: what a broken upload may have left of the second must not pass for it. */
const third = siteOf({ ford: 'as it was', weir: 'restrung', lock: 'new', gone: 'as it was' });

describe('an upload that breaks off after any number of steps', () => {
  it('never leaves a page that asks for what isn’t there, and the next one ends it, whatever it brings', async () => {
    const releases = { before: release(before), after: release(after), third: release(third) };
    const whole = new MemoryHost();
    await upload(releases.before, whole, wish, quiet);
    expect(whole.site()).toEqual(before);
    let cuts = 0;
    for (let steps = 0; ; steps += 1) {
      const host = new MemoryHost(whole.there, steps);
      if (!(await cutOff(upload(releases.after, host, wish, quiet)))) break;
      cuts += 1;
      expect(missingIn(host.site()), `after ${steps} steps`).toEqual([]);
      for (const next of ['after', 'third', 'before'] as const) {
        const again = new MemoryHost(host.there);
        await upload(releases[next], again, wish, quiet);
        const wanted = { before, after, third }[next];
        const there = again.site();
        // Besides what is wanted there lies only what somebody may still have open.
        expect(there, `after ${steps} steps, then ${next}`).toMatchObject(wanted);
        const more = Object.keys(there).filter((path) => !(path in wanted));
        expect(more.filter((path) => !path.startsWith('pictures/'))).toEqual([]);
        await upload(releases[next], again, wish, quiet);
        expect(again.site(), `after ${steps} steps, then ${next} twice`).toEqual(wanted);
      }
    }
    expect(cuts).toBeGreaterThan(30);
  });

  it('keeps pictures for pages that were open, also where it had to be gone on with', async () => {
    const [one, other] = [release(before), release(after)];
    const whole = new MemoryHost();
    await upload(one, whole, wish, quiet);
    const old = Object.keys(before).filter((path) => path.startsWith('pictures/') && !(path in after));
    expect(old.length).toBeGreaterThan(0);
    const host = new MemoryHost(whole.there, 12);
    expect(await cutOff(upload(other, host, wish, quiet))).toBe(true);
    host.left = Infinity;
    await upload(other, host, wish, quiet);
    expect(Object.keys(host.site())).toEqual(expect.arrayContaining(old));
  });

  it('into an empty folder shows no front page before all that it leads to', async () => {
    const one = release(after);
    for (let steps = 0; ; steps += 1) {
      const host = new MemoryHost(new Map(), steps);
      const cut = await cutOff(upload(one, host, wish, quiet));
      expect(missingFromFront(host.site()), `after ${steps} steps`).toEqual([]);
      if (!cut) break;
    }
  });

  it('into a folder from elsewhere replaces pages last, and asks first', async () => {
    const foreign = new Map([['index.html', Buffer.from('<a href="/pictures/theirs.png">')]]);
    foreign.set('pictures/theirs.png', Buffer.from('x'));
    const one = release(after);
    const asked = new MemoryHost(foreign);
    expect(await upload(one, asked, wish, quiet)).toMatchObject({ outcome: 'foreign' });
    expect(asked.there).toEqual(foreign);
    for (let steps = 0; ; steps += 1) {
      const host = new MemoryHost(foreign, steps);
      const cut = await cutOff(upload(one, host, { ...wish, evenIfForeign: true }, quiet));
      expect(missingFromFront(host.site()), `after ${steps} steps`).toEqual([]);
      expect(host.site()).toHaveProperty(['pictures/theirs.png'], 'x');
      if (!cut) break;
    }
  });
});

describe('a list on the host that nobody here wrote', () => {
  it('that names places outside the folder counts for none: nothing outside is removed', async () => {
    const list = {
      version: 1,
      release: 'x',
      files: { '../../.ssh/authorized_keys': 'a'.repeat(64) },
      leaving: [],
      unsure: {},
    };
    const host = new MemoryHost(new Map([['.claspwise-files.json', Buffer.from(JSON.stringify(list))]]));
    host.there.set('hello.txt', Buffer.from('hello'));
    expect(await upload(release(after), host, wish, quiet)).toMatchObject({ outcome: 'foreign' });
  });
});
