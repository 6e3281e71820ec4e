/** A machine in another part of the world. */

/** What `run` comes to where the clock on the wall is that of `zone`, an IANA name. */
export async function inZone<T>(zone: string, run: () => T | Promise<T>): Promise<T> {
  const usual = process.env.TZ;
  process.env.TZ = zone;
  try {
    return await run();
  } finally {
    if (usual === undefined) delete process.env.TZ;
    else process.env.TZ = usual;
  }
}
