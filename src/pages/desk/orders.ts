/** `POST /desk/orders`: see public/schema/desk-openapi.json. */
import type { APIRoute } from 'astro';
import { senderOf } from '#bench/access/visitor.ts';
import { bench } from '#bench/context/bench.ts';
import { pieceNow } from '#bench/check/pieceNow.ts';
import { answerOrder } from '#bench/desk/desk.ts';
import { readWhole } from '#catalogue/collections.ts';

export const prerender = false;

export const ALL: APIRoute = async ({ request, site, clientAddress }) => {
  const { settings, inbox, deskThrottle, nowMs } = bench();
  const own = site === undefined ? [] : [site.origin];
  const desk = {
    inbox,
    pieceNow: async (id: string) => pieceNow(await readWhole(), id),
    origins: [...own, ...settings.shopOrigins],
    throttle: deskThrottle,
    nowMs,
  };
  return answerOrder(desk, request, senderOf(request, clientAddress));
};
