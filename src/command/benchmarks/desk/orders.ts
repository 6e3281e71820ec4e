/** Orders as buyers of the demo shop would send them, ready to be posted. */
import { randomBytes, randomInt } from 'node:crypto';
import { Agent, request } from 'node:http';
import { readCatalogue } from '#catalogue/load/readCatalogue.ts';
import { HANDS, SITS } from '#core/design/choice.ts';
import { size } from '#core/sizing/size.ts';
import { compose } from '#order/compose.ts';
import { makeNumber } from '#order/number.ts';
import type { Send } from './load.ts';

/** Wrists by the half centimetre, as a tape is read. */
const WRISTS_MM = Array.from({ length: 9 }, (_, step) => 145 + 5 * step);

/** An order's number that none has. */
const newNumber = (): string => makeNumber(() => randomBytes(1)[0] ?? 0);

/** Order documents as JSON: every bracelet of the content, for every wrist, sit and hand that it can be made for. */
export async function orderTexts(content: string): Promise<readonly string[]> {
  const { catalogue } = await readCatalogue(content);
  if (catalogue === null) throw new Error('content/ has faults: npm run -s content names them');
  const { rules } = catalogue.shop;
  const bracelets = catalogue.pieces.filter(({ design }) => design.kind === 'bracelet');
  return bracelets.flatMap((piece) =>
    WRISTS_MM.flatMap((mm) =>
      SITS.flatMap((sit) =>
        HANDS.flatMap((hand) => {
          const choice = { measure: { of: 'wrist', mm }, sit, hand, pick: 'best', quantity: 1 } as const;
          const sizing = size(piece.design, rules, piece.listedMinor, choice);
          if (sizing.status !== 'fits') return [];
          const order = compose({
            number: newNumber(),
            placedAtMs: Date.now(),
            lang: 'en',
            piece,
            choice,
            measureText: `${mm / 10} cm`,
            candidate: sizing.chosen,
            design: piece.design,
            currency: rules.currency,
            buyer: { name: 'A Buyer', email: 'buyer@example.org', note: '' },
            delivery: { by: 'unsaid' },
            postageMinor: 0,
          });
          return [JSON.stringify(order)];
        }),
      ),
    ),
  );
}

const NUMBER = /(?<="number":")[^"]+/;

/** An order as JSON under a new number. */
export const renumbered = (text: string): string => text.replace(NUMBER, newNumber());

/**
 * Posts one of `texts`, by chance, under a new number for each call, over connections that stay open.
 * @throws Error for any answer but 201
 */
export function sender(address: string, texts: readonly string[]): { send: Send; close: () => void } {
  const agent = new Agent({ keepAlive: true });
  const post = (body: string): Promise<void> =>
    new Promise((resolve, reject) => {
      const headers = { 'content-type': 'application/json', 'content-length': Buffer.byteLength(body) };
      const outgoing = request(`${address}/desk/orders`, { method: 'POST', agent, headers }, (incoming) => {
        incoming.resume();
        incoming.on('end', () => {
          if (incoming.statusCode === 201) resolve();
          else reject(new Error(`The desk answered ${incoming.statusCode ?? 0}.`));
        });
      });
      outgoing.on('error', reject);
      outgoing.end(body);
    });
  const send = (): Promise<void> => post(renumbered(texts[randomInt(texts.length)] ?? ''));
  return { send, close: () => agent.destroy() };
}
