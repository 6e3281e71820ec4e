/** `POST`: sets the passphrase or takes it away, at the machine itself only. */
import type { APIRoute } from 'astro';
import { bench } from '#bench/context/bench.ts';
import { LEAST_LENGTH, MOST_LENGTH, removePassphrase, setPassphrase } from '#bench/access/passphrase.ts';
import { refusalResponse, troubleResponse } from '#bench/access/refusal.ts';
import { isHere } from '#bench/access/visitor.ts';
import { readForm, seeOther } from '#bench/http/readForm.ts';

export const prerender = false;

export const POST: APIRoute = async ({ request, locals }) => {
  if (!isHere(locals.visitor)) return refusalResponse('cross-site', request);
  const form = await readForm(request);
  if (form === null) return troubleResponse({ code: 'bad-form' }, 400, request);
  const { book } = bench();
  if (form.get('remove') === 'yes') {
    removePassphrase(book());
    return seeOther('/bench/access/?saved');
  }
  const passphrase = form.get('passphrase') ?? '';
  if (passphrase.length < LEAST_LENGTH || passphrase.length > MOST_LENGTH) {
    return troubleResponse({ code: 'passphrase-length' }, 400, request);
  }
  await setPassphrase(book(), passphrase);
  return seeOther('/bench/access/?saved');
};
