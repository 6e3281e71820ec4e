/** What an answer from the shop means for an order. */
import type { SendProblem } from '#words/orderFacts.ts';
import type { Answer } from '../../model/ports.ts';

export type SendResult =
  | {
      readonly kind: 'received';
      readonly receivedAt: string;
      readonly differs: boolean;
      readonly askedBefore: boolean;
    }
  /** A form service has it and passes it on; only the maker can confirm. */
  | { readonly kind: 'handed' }
  | { readonly kind: 'later'; readonly problem: SendProblem }
  | { readonly kind: 'refused'; readonly problem: SendProblem }
  /** Nothing there takes orders: a plain static host. Trying again won't help, and nobody refused anything. */
  | { readonly kind: 'no-desk' };

/** Answers that ask for patience: RFC 9110 15.5.9 (408), RFC 6585 4 (429). */
const TIMED_OUT = 408;
const TOO_MANY = 429;
/** What a host of mere files says to a POST: RFC 9110 15.5.2 (403), 15.5.5 (404), 15.5.6 (405), 15.6.2 (501). */
const OF_FILES_ONLY: readonly number[] = [403, 404, 405, 501];
/** The longest reason that is shown. */
const MOST_REASON = 300;

/** Reads a form service's answer: any 2xx is enough, for nobody can pose as an https address. */
export function readFormAnswer(number: string, answer: Answer): SendResult {
  const taken = answer.kind === 'answer' && answer.status >= 200 && answer.status < 300;
  return taken ? { kind: 'handed' } : readDeskAnswer(number, answer);
}

/**
 * Reads a desk's answer. Only a receipt that bears the order's own number counts as
 * received: the sign-in page of a hotel's network also answers with 200.
 */
export function readDeskAnswer(number: string, answer: Answer): SendResult {
  if (answer.kind === 'offline') return { kind: 'later', problem: { code: 'offline' } };
  if (answer.kind === 'none') return { kind: 'later', problem: { code: 'no-answer' } };
  const { status, json } = answer;
  if (status >= 200 && status < 300) {
    return receiptOf(number, json) ?? { kind: 'later', problem: { code: 'no-answer' } };
  }
  // A desk answers in JSON, whatever it has to say.
  if (json === null && OF_FILES_ONLY.includes(status)) return { kind: 'no-desk' };
  if (status === TOO_MANY) return { kind: 'later', problem: { code: 'too-many' } };
  if (status >= 500 || status === TIMED_OUT)
    return { kind: 'later', problem: { code: 'shop-trouble', status } };
  if (typeOf(json).endsWith('#ready-gone')) return { kind: 'refused', problem: { code: 'ready-gone' } };
  return { kind: 'refused', problem: { code: 'turned-down', reason: reasonOf(json) } };
}

/** The receipt, where it is one for this number. `checked` tells whether the maker's own figures are the buyer's. */
function receiptOf(number: string, json: unknown): SendResult | null {
  if (typeof json !== 'object' || json === null) return null;
  const { number: named, receivedAt, checked, differences } = json as Record<string, unknown>;
  if (named !== number || typeof receivedAt !== 'string' || !Number.isFinite(Date.parse(receivedAt)))
    return null;
  const codes: readonly unknown[] = Array.isArray(differences) ? differences : [];
  const askedBefore = codes.includes('asked-before');
  return {
    kind: 'received',
    receivedAt,
    differs: checked === 'differs' && !(askedBefore && codes.length === 1),
    askedBefore,
  };
}

/** The type of a problem document (RFC 9457, 3.1); '' where it has none. */
function typeOf(json: unknown): string {
  const type: unknown =
    typeof json === 'object' && json !== null ? (json as Record<string, unknown>)['type'] : '';
  return typeof type === 'string' ? type : '';
}

/** The sentence of a problem document (RFC 9457, 3.1): `detail`, else `title`. */
function reasonOf(json: unknown): string {
  if (typeof json !== 'object' || json === null) return '';
  const { detail, title } = json as Record<string, unknown>;
  const reason = typeof detail === 'string' ? detail : typeof title === 'string' ? title : '';
  return reason.slice(0, MOST_REASON);
}
