/** `POST /desk/orders`: see public/schema/desk-openapi.json. */
import type { APIRoute } from 'astro';
import { ownOrigin, senderOf } from '#bench/access/visitor.ts';
import { bench } from '#bench/context/bench.ts';
import { pieceNow } from '#bench/check/pieceNow.ts';
import { answerOrder } from '#bench/desk/desk.ts';
import { behindProxy } from '#bench/http/throttle.ts';
import { readWhole } from '#catalogue/collections.ts';

export const prerender = false;

export const ALL: APIRoute = async ({ request, site, clientAddress, locals }) => {
  const { settings, inbox, deskThrottle, proxyThrottle, nowMs } = bench();
  const { proxies, shopOrigins } = settings;
  const own = ownOrigin(locals.visitor);
  const desk = {
    inbox,
    pieceNow: async (id: string) => pieceNow(await readWhole(), id),
    origins: [own, ...(site === undefined ? [] : [site.origin]), ...shopOrigins],
    throttle: behindProxy(deskThrottle, proxyThrottle, clientAddress),
    nowMs,
  };
  return answerOrder(desk, request, senderOf(request, clientAddress, proxies));
};
