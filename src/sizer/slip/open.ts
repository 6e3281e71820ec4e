/** Shows the slip on its page, in the page's language. */
import type { SlipProps } from './Slip.tsx';

const slip = document.getElementById('slip');
if (slip !== null) {
  const { lang, addresses = '{}' } = slip.dataset;
  const { show } = await (lang === 'de' ? import('./SlipDe.tsx') : import('./SlipEn.tsx'));
  show(slip, JSON.parse(addresses) as SlipProps);
}

export {};
