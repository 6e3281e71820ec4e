/** Listens for tablets on the home network, over TLS, while the setting says so. */
import { existsSync } from 'node:fs';
import { createServer, type Server } from 'node:https';
import type { RequestListener } from 'node:http';
import type { AddressInfo, Socket } from 'node:net';
import { DatabaseSync } from 'node:sqlite';
import { isHomeAddress } from './addresses.ts';
import { certificateIn, type DoorCertificate } from './certificate.ts';
import type { DoorState, TabletDoor } from './door.ts';

export type DoorPlan = {
  /** 0 for any. */
  readonly port: number;
  /** Where key and certificate lie. */
  readonly folder: string;
  /** Addresses and names of this moment. */
  readonly names: () => readonly string[];
  readonly isOn: () => boolean;
  readonly nowMs: () => number;
  readonly handler: RequestListener;
  /** How long a port in use is waited for, ms: another process of ours may be about to leave it. */
  readonly patienceMs: number;
};

/** A household has few; more is somebody else. */
const MOST_CONNECTIONS = 60;
const AGAIN_MS = 250;
/** How often it is looked at whether the machine has other addresses, ms. */
const LOOK_MS = 60_000;

/** The setting in an order book's file; off where it can't be read. */
export function tabletsOn(bookFile: string): boolean {
  if (!existsSync(bookFile)) return false;
  try {
    const db = new DatabaseSync(bookFile, { readOnly: true });
    try {
      return db.prepare(`SELECT 1 FROM setting WHERE name = 'tablets' AND value = 'on'`).get() !== undefined;
    } finally {
      db.close();
    }
  } catch {
    return false;
  }
}

type Opened = {
  readonly server: Server;
  readonly names: readonly string[];
  readonly certificate: DoorCertificate;
};

/** A door that is closed until `apply` finds it switched on. */
export function makeDoor(plan: DoorPlan): TabletDoor {
  let opened: Opened | null = null;
  let trouble: DoorState = { open: false, why: 'off' };
  let turn: Promise<unknown> = Promise.resolve();

  const state = (): DoorState => {
    if (opened === null) return trouble;
    const { names, certificate } = opened;
    const { port } = opened.server.address() as AddressInfo;
    return { open: true, port, names, fingerprint: certificate.fingerprint, endsAt: certificate.endsAt };
  };
  const shut = async (): Promise<void> => {
    const closing = opened?.server;
    opened = null;
    if (closing === undefined) return;
    await new Promise((resolve) => {
      closing.close(resolve);
      closing.closeAllConnections();
    });
  };
  const refresh = (): void => {
    if (opened === null) return;
    const names = plan.names();
    const certificate = certificateIn(plan.folder, names, plan.nowMs());
    if (certificate.cert !== opened.certificate.cert) opened.server.setSecureContext(certificate);
    opened = { ...opened, names, certificate };
  };
  const apply = async (): Promise<DoorState> => {
    if (!plan.isOn()) {
      await shut();
      trouble = { open: false, why: 'off' };
      return state();
    }
    try {
      if (opened === null) opened = await openUp(plan);
      else refresh();
    } catch (error) {
      trouble = { open: false, why: whyNot(error), port: plan.port };
    }
    return state();
  };
  /** One after the other: a switch pressed twice must not open two. */
  const inTurn = <T>(work: () => Promise<T>): Promise<T> => {
    const next = turn.then(work);
    turn = next.catch(() => undefined);
    return next;
  };
  setInterval(() => {
    if (opened !== null) void inTurn(apply);
  }, LOOK_MS).unref();
  return { state, apply: () => inTurn(apply), close: () => inTurn(shut) };
}

function whyNot(error: unknown): 'port-taken' | 'no-certificate' | 'failed' {
  const { code = '', syscall = '' } = error as NodeJS.ErrnoException;
  if (code === 'EADDRINUSE') return 'port-taken';
  return ['open', 'mkdir', 'rename', 'write'].includes(syscall) ? 'no-certificate' : 'failed';
}

async function openUp(plan: DoorPlan): Promise<Opened> {
  const names = plan.names();
  const certificate = certificateIn(plan.folder, names, plan.nowMs());
  const { key, cert } = certificate;
  const giveUpMs = performance.now() + plan.patienceMs;
  for (;;) {
    const server = createServer({ key, cert, minVersion: 'TLSv1.2' }, plan.handler);
    server.maxConnections = MOST_CONNECTIONS;
    server.on('connection', (socket: Socket) => {
      // Whoever is not of the home network is not even greeted.
      if (!isHomeAddress(socket.remoteAddress ?? '')) socket.destroy();
    });
    try {
      await listening(server, plan.port);
      // What goes wrong with one connection, as a browser that doesn't believe the certificate yet, is its own affair.
      server.on('error', () => undefined);
      return { server, names, certificate };
    } catch (error) {
      const isTaken = (error as NodeJS.ErrnoException).code === 'EADDRINUSE';
      if (!isTaken || performance.now() >= giveUpMs) throw error;
      await new Promise((resolve) => setTimeout(resolve, AGAIN_MS));
    }
  }
}

function listening(server: Server, port: number): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, () => {
      server.off('error', reject);
      resolve();
    });
  });
}
