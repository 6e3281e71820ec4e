/** The folder on the host: files are written beside, then renamed, so that each is whole or not there. */
import { posix } from 'node:path';
import { promisify } from 'node:util';
import type { SFTPWrapper } from 'ssh2';
import type { Connection } from './connect.ts';
import { fileTrouble, HostError, isMissing } from './trouble.ts';

/** As web servers of hosts expect it: everybody may read what is public. */
const FILE_MODE = 0o644;
const FOLDER_MODE = 0o755;
/** Of what is read: the list of a large shop is a megabyte. */
const MOST_BYTES = 64 * 1024 * 1024;

export type Remote = {
  /** Names in a folder; null where there is none. */
  list(path: string): Promise<string[] | null>;
  /** Null where there is no such file. */
  read(path: string): Promise<Buffer | null>;
  /** Makes a folder and those above it; those that are there already are fine. */
  makeFolder(path: string): Promise<void>;
  /** Writes a file whole under another name, which lies in a folder that is there, and gives it its own. */
  put(bytes: Buffer, path: string, by: string): Promise<void>;
  /** Adds bytes at the end of a file. `at`: how long it is. */
  add(bytes: Buffer, path: string, at: number): Promise<void>;
  /** Nothing where it is gone already. */
  remove(path: string): Promise<void>;
  /** Takes an empty folder away; one that isn't empty stays. */
  removeFolder(path: string): Promise<void>;
};

/** The calls that are used, as promises. */
function promised(sftp: SFTPWrapper) {
  const call = <Args extends unknown[], Result>(
    method: (...all: [...Args, (error: Error | undefined | null, result: Result) => void]) => unknown,
  ) => promisify(method.bind(sftp)) as unknown as (...args: Args) => Promise<Result>;
  return {
    readdir: call<[string], { readonly filename: string }[]>(sftp.readdir),
    readFile: call<[string], Buffer>(sftp.readFile as never),
    stat: call<[string], { isDirectory(): boolean; readonly size: number }>(sftp.stat),
    mkdir: call<[string, object], void>(sftp.mkdir as never),
    open: call<[string, string, object], Buffer>(sftp.open as never),
    write: call<[Buffer, Buffer, number, number, number], void>(sftp.write as never),
    close: call<[Buffer], void>(sftp.close as never),
    unlink: call<[string], void>(sftp.unlink as never),
    rmdir: call<[string], void>(sftp.rmdir as never),
    rename: call<[string, string], void>(sftp.rename as never),
    replace: call<[string, string], void>(sftp.ext_openssh_rename as never),
  };
}

/** @param folder on the host; all paths are below it, but for absolute ones */
export function remoteFolder({ sftp, lost }: Connection, folder: string): Remote {
  const calls = promised(sftp);
  const whole = (path: string): string => posix.join(folder, path);
  /** Every step ends with the line. */
  const step = <Result>(work: Promise<Result>): Promise<Result> => Promise.race([work, lost]);
  const failing =
    (path: string, writing = false) =>
    (error: unknown): never => {
      throw error instanceof HostError
        ? error
        : new HostError(fileTrouble(error, path, writing), { cause: error });
    };
  let replaces = true;

  async function rename(from: string, to: string): Promise<void> {
    if (replaces) {
      try {
        return await step(calls.replace(from, to));
      } catch (error) {
        // Thrown by the library where the host doesn't have it.
        if (!/does not support/i.test(String(error))) throw error;
        replaces = false;
      }
    }
    // Version 3 of the protocol renames onto nothing that is there: without the extension there is a gap of two answers.
    await step(calls.unlink(to)).catch((error: unknown) => {
      if (!isMissing(error)) throw error;
    });
    await step(calls.rename(from, to));
  }

  /** `named`: how the file is called in what is said of it. */
  async function write(bytes: Buffer, path: string, flags: string, at: number, named: string): Promise<void> {
    const handle = await step(calls.open(path, flags, { mode: FILE_MODE })).catch(failing(named));
    try {
      if (bytes.length === 0) return;
      await step(calls.write(handle, bytes, 0, bytes.length, at)).catch(failing(named, true));
    } finally {
      await step(calls.close(handle)).catch(failing(named, true));
    }
  }

  const whatIs = async (path: string): Promise<'folder' | 'other' | 'nothing'> =>
    step(calls.stat(path)).then(
      (found) => (found.isDirectory() ? 'folder' : 'other'),
      (error: unknown) => (isMissing(error) ? 'nothing' : failing(path)(error)),
    );

  async function makeWhole(path: string): Promise<void> {
    try {
      await step(calls.mkdir(path, { mode: FOLDER_MODE }));
    } catch (error) {
      const there = await whatIs(path);
      if (there === 'folder') return;
      if (there === 'other') throw new HostError({ code: 'not-a-folder', path }, { cause: error });
      const above = posix.dirname(path);
      if (!isMissing(error) || above === path) failing(path)(error);
      await makeWhole(above);
      await step(calls.mkdir(path, { mode: FOLDER_MODE })).catch(failing(path));
    }
  }

  return {
    async list(path) {
      const names = await step(calls.readdir(whole(path))).catch(async (error: unknown) => {
        if (isMissing(error)) return null;
        return failing(path)(error);
      });
      return names === null ? null : names.map(({ filename }) => filename);
    },
    async read(path) {
      try {
        const { size } = await step(calls.stat(whole(path)));
        if (size > MOST_BYTES) throw new HostError({ code: 'host-said', path, said: `${size} bytes` });
        return await step(calls.readFile(whole(path)));
      } catch (error) {
        return isMissing(error) ? null : failing(path)(error);
      }
    },
    makeFolder: (path) => makeWhole(whole(path)),
    async put(bytes, path, by) {
      await write(bytes, whole(by), 'w', 0, path);
      await rename(whole(by), whole(path)).catch(failing(path));
    },
    add: (bytes, path, at) => write(bytes, whole(path), at === 0 ? 'w' : 'r+', at, path),
    async remove(path) {
      await step(calls.unlink(whole(path))).catch((error: unknown) => {
        if (!isMissing(error)) failing(path)(error);
      });
    },
    async removeFolder(path) {
      await step(calls.rmdir(whole(path))).catch((error: unknown) => {
        if (error instanceof HostError) throw error;
      });
    },
  };
}
