/** Builds the shop with Astro, quietly unless something is wrong. */
import { spawn } from 'node:child_process';

/**
 * Runs the project's build in `root`.
 * @returns seconds it took
 * @throws Error carrying the build's whole output, where it failed
 */
export async function build(root: string): Promise<number> {
  const started = process.hrtime.bigint();
  const npm = process.env.npm_execpath;
  const [command, args] = npm === undefined ? ['npm', []] : [process.execPath, [npm]];
  const child = spawn(command, [...args, 'run', '--silent', 'build'], { cwd: root });
  let output = '';
  for (const stream of [child.stdout, child.stderr])
    stream.on('data', (chunk: Buffer) => (output += chunk.toString()));
  const code = await new Promise<number | null>((resolve, reject) => {
    child.on('error', reject);
    child.on('close', resolve);
  });
  if (code !== 0) throw new Error(output);
  return Number(process.hrtime.bigint() - started) / 1e9;
}
