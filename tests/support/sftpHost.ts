/** An OpenSSH server of this machine's own, if it is installed, as a host to send files to. No package brings it along. */
import { execFileSync, spawn, type ChildProcess } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  realpathSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { connect, createServer, type AddressInfo } from 'node:net';
import { tmpdir, userInfo } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';

/** Where sshd lies; undefined where it isn't installed. It wants to be called by its whole path. */
export const sshdPath = ['/usr/sbin/sshd', '/usr/local/sbin/sshd'].find((path) => existsSync(path));

export type SftpHost = {
  readonly port: number;
  readonly user: string;
  /** A folder that the account may write into, empty. */
  readonly folder: string;
  /** Private key that opens the account, as text. */
  readonly key: string;
  /** As `ssh-keygen` tells it. */
  readonly fingerprint: string;
  readonly child: ChildProcess;
  /** The same host after its key has become another one. */
  restart(settings?: HostSettings): Promise<void>;
  stop(): Promise<void>;
};

export type HostSettings = {
  /** The account may read and not write. */
  readonly readOnly?: boolean;
  /** No file may be longer, KiB: to whoever writes, a disk that is full. */
  readonly mostKib?: number;
  readonly newKey?: boolean;
  /** Without OpenSSH's own way to rename a file over another. */
  readonly noReplacing?: boolean;
};

function freePort(): Promise<number> {
  return new Promise((resolve) => {
    const server = createServer().listen(0, '127.0.0.1', () => {
      const { port } = server.address() as AddressInfo;
      server.close(() => resolve(port));
    });
  });
}

const answers = (port: number): Promise<boolean> =>
  new Promise((resolve) => {
    const socket = connect(port, '127.0.0.1');
    socket.once('data', () => {
      resolve(true);
      socket.destroy();
    });
    for (const event of ['error', 'close']) socket.once(event, () => resolve(false));
  });

const makeKey = (file: string): void => {
  for (const name of [file, `${file}.pub`]) rmSync(name, { force: true });
  execFileSync('ssh-keygen', ['-q', '-t', 'ed25519', '-N', '', '-C', 'test', '-f', file]);
};

const fingerprintOf = (file: string): string =>
  execFileSync('ssh-keygen', ['-l', '-E', 'sha256', '-f', `${file}.pub`], { encoding: 'utf8' }).split(
    ' ',
  )[1] ?? '';

/** @param sshd its whole path */
export async function startSftpHost(sshd: string): Promise<SftpHost> {
  const place = realpathSync(mkdtempSync(join(tmpdir(), 'sftp-host-')));
  const folder = join(place, 'site');
  mkdirSync(folder);
  const hostKey = join(place, 'host_key');
  const userKey = join(place, 'user_key');
  makeKey(userKey);
  const port = await freePort();
  // Run by root it sets its first half apart in a folder that the system's own start would make.
  if (process.getuid?.() === 0) mkdirSync('/run/sshd', { recursive: true, mode: 0o755 });
  let child: ChildProcess | null = null;

  const end = async (): Promise<void> => {
    const old = child;
    if (old === null || old.exitCode !== null) return;
    const ended = new Promise((resolve) => old.once('exit', resolve));
    old.kill();
    await ended;
  };

  async function begin({
    readOnly = false,
    mostKib,
    newKey = false,
    noReplacing = false,
  }: HostSettings): Promise<void> {
    await end();
    if (newKey || !existsSync(hostKey)) makeKey(hostKey);
    const config = [
      `Port ${port}`,
      'ListenAddress 127.0.0.1',
      `HostKey ${hostKey}`,
      `AuthorizedKeysFile ${userKey}.pub`,
      'PidFile none',
      'UsePAM no',
      'StrictModes no',
      'PermitRootLogin yes',
      'PasswordAuthentication yes',
      'KbdInteractiveAuthentication no',
      'MaxStartups 100',
      'LogLevel FATAL',
      `Subsystem sftp internal-sftp${readOnly ? ' -R' : ''}${noReplacing ? ' -P posix-rename' : ''}`,
    ];
    const file = join(place, 'sshd_config');
    writeFileSync(file, `${config.join('\n')}\n`);
    // A file that grows over the bound gets a signal, which would end the server; ignored, the write fails.
    const bound = mostKib === undefined ? '' : `trap '' XFSZ; ulimit -f ${mostKib}; `;
    child = spawn('bash', ['-c', `${bound}exec "$0" -D -e -f "$1"`, sshd, file], {
      stdio: ['ignore', 'ignore', 'inherit'],
    });
    while (!(await answers(port))) {
      if (child.exitCode !== null) throw new Error(`sshd ended with ${child.exitCode}`);
      await pause(20);
    }
  }

  await begin({});
  return {
    port,
    user: userInfo().username,
    folder,
    key: readFileSync(userKey, 'utf8'),
    get fingerprint() {
      return fingerprintOf(hostKey);
    },
    get child() {
      if (child === null) throw new Error('not started');
      return child;
    },
    restart: (settings = {}) => begin(settings),
    async stop() {
      await end();
      rmSync(place, { recursive: true, force: true });
    },
  };
}
