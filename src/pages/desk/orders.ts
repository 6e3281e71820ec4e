/** `POST /desk/orders`: see public/schema/desk-openapi.json. */
import type { APIRoute } from 'astro';
import { ownOrigin, senderOf } from '#bench/access/visitor.ts';
import { bench } from '#bench/context/bench.ts';
import { deskStanding } from '#bench/check/ready.ts';
import { pieceNow } from '#bench/check/pieceNow.ts';
import { answerOrder } from '#bench/desk/desk.ts';
import { behindProxy } from '#bench/http/throttle.ts';
import { stockNow } from '#bench/stock/stockNow.ts';
import { readWhole } from '#catalogue/collections.ts';
import type { OrderDocument } from '#order/document.ts';

export const prerender = false;

export const ALL: APIRoute = async ({ request, site, clientAddress, locals }) => {
  const { settings, book, inbox, deskThrottle, proxyThrottle, nowMs } = bench();
  const { proxies, shopOrigins } = settings;
  const own = ownOrigin(locals.visitor);
  const desk = {
    inbox,
    pieceNow: async (id: string) => pieceNow(await readWhole(), id),
    there: async () => stockNow(book(), await readWhole()).thereFor(null),
    standing: async (document: OrderDocument, at: string) => {
      const { pieces } = await readWhole();
      return deskStanding(book(), document, at, pieces);
    },
    origins: [own, ...(site === undefined ? [] : [site.origin]), ...shopOrigins],
    throttle: behindProxy(deskThrottle, proxyThrottle, clientAddress),
    nowMs,
  };
  return answerOrder(desk, request, senderOf(request, clientAddress, proxies));
};
