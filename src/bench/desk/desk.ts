/** The desk: takes a posted order, or says why not. */
import { isLang, type Lang } from '#words/lang.ts';
import type { DeskProblem } from '#words/deskProblem.ts';
import type { OrderDocument } from '#order/document.ts';
import { readDocument } from '#order/migrate.ts';
import type { Throttle } from '../http/throttle.ts';
import type { Inbox } from '../book/inbox.ts';
import { BookError } from '../book/problem.ts';
import type { Reception } from '../book/receive.ts';
import type { Snapshot } from '../book/snapshot.ts';
import type { ReadyStanding } from '../book/ready.ts';
import { readyDifferences } from '../check/ready.ts';
import { recheck } from '../check/recheck.ts';
import type { There } from '../check/there.ts';
import { allowOrigin, preflight } from './origin.ts';
import { problemResponse } from './problem.ts';
import { readBody, MOST_BYTES } from '../http/readBody.ts';

export type Desk = {
  /** The book's inbox. Throws or rejects with BookError. */
  readonly inbox: () => Inbox;
  /** The maker's own copy of a piece as it stands now. */
  readonly pieceNow: (id: string) => Promise<Snapshot | null>;
  /** What an order that comes in now may take. Rejects with BookError. */
  readonly there: () => Promise<There>;
  /** How it stands with the piece that lies finished; null for an order that is strung for its buyer. Rejects with BookError. */
  readonly standing: (document: OrderDocument, at: string) => Promise<ReadyStanding | null>;
  /** Origins whose pages may post here, the desk's own among them. */
  readonly origins: readonly string[];
  readonly throttle: Throttle;
  readonly nowMs: () => number;
};

/** What the buyer keeps. `checked`: whether the maker's own figures are those that the buyer saw. */
export type Receipt = {
  readonly number: string;
  readonly receivedAt: string;
  readonly checked: 'same' | 'differs';
  /** Codes of what differs. */
  readonly differences: readonly string[];
};

/**
 * Answers one request to `/desk/orders`. Nothing is thrown for anything that is
 * sent; 201 with a receipt only once the order is on disk, 200 where it was.
 * @param address of the sender, for the limit only; it is not kept
 */
export async function answerOrder(desk: Desk, request: Request, address: string): Promise<Response> {
  const origin = request.headers.get('origin');
  const allowed = allowOrigin(origin, desk.origins);
  if (request.method === 'OPTIONS') return preflight(allowed ? origin : null);
  const answer = await take(desk, request, address, allowed);
  if (allowed && origin !== null) {
    answer.headers.set('access-control-allow-origin', origin);
    answer.headers.set('vary', 'Origin');
  }
  return answer;
}

async function take(desk: Desk, request: Request, address: string, allowed: boolean): Promise<Response> {
  const asked = request.headers.get('accept-language')?.slice(0, 2);
  const spoken: Lang = isLang(asked) ? asked : 'en';
  const refuse = (problem: DeskProblem, lang = spoken): Response => problemResponse(problem, lang);
  if (request.method !== 'POST') return refuse({ code: 'method-not-allowed' });
  if (!allowed) return refuse({ code: 'origin-not-allowed' });
  const seconds = desk.throttle.take(address, desk.nowMs());
  if (seconds > 0) return refuse({ code: 'too-many', seconds });
  const type = (request.headers.get('content-type') ?? '').split(';')[0]?.trim().toLowerCase();
  if (type !== 'application/json') return refuse({ code: 'content-type' });
  const body = await readBody(request);
  if (!body.ok) {
    return refuse(
      body.code === 'too-large' ? { code: body.code, mostBytes: MOST_BYTES } : { code: body.code },
    );
  }
  const value = parse(body.text);
  if (value === undefined) return refuse({ code: 'not-json' });
  const { trap, rest } = withoutTrap(value);
  if (trap) return refuse({ code: 'robot' });
  const read = readDocument(rest);
  if (!read.ok) return refuse(read.problem);
  // Only an order that the maker enters herself may be without: whoever sends one must be answered.
  if (read.document.buyer.email === '') return refuse({ code: 'wrong-field', field: 'buyer.email' });
  return keep(desk, read.document, (problem) => refuse(problem, read.document.lang));
}

async function keep(
  desk: Desk,
  document: OrderDocument,
  refuse: (problem: DeskProblem) => Response,
): Promise<Response> {
  const at = new Date(desk.nowMs()).toISOString();
  try {
    const now = await desk.pieceNow(document.piece.id);
    const standing = await desk.standing(document, at);
    const there = await desk.there();
    if (standing?.is === 'gone') return refuse({ code: 'ready-gone', piece: document.piece.id });
    const reception = await desk.inbox()({ document, way: 'desk', at, now });
    if (reception.outcome === 'number-taken')
      return refuse({ code: 'number-taken', number: document.number });
    return receipt(
      reception,
      [...recheck(document, now, at, 'desk', there).differences, ...readyDifferences(standing, 'new')].map(
        ({ code }) => code,
      ),
    );
  } catch (error) {
    if (!(error instanceof BookError)) throw error;
    if (error.problem === 'locked') return refuse({ code: 'book-locked' });
    return refuse({ code: error.problem === 'full' ? 'book-full' : 'book-closed' });
  }
}

function receipt({ outcome, number, receivedAt }: Reception, differences: string[]): Response {
  const checked = differences.length === 0 ? 'same' : 'differs';
  const body: Receipt = { number, receivedAt, checked, differences };
  return Response.json(body, { status: outcome === 'received' ? 201 : 200 });
}

function parse(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
}

/** A form may carry a field `website` that people don't see; whoever fills it in is a robot. */
function withoutTrap(value: unknown): { trap: boolean; rest: unknown } {
  if (typeof value !== 'object' || value === null || !Object.hasOwn(value, 'website')) {
    return { trap: false, rest: value };
  }
  const { website, ...rest } = value as Record<string, unknown>;
  return { trap: website !== '', rest };
}
