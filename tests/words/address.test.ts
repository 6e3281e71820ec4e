import { expect, it } from 'vitest';
import { addressLines } from '#words/address.ts';
import { countryName } from '#words/format.ts';

const address = {
  name: 'Solveig Møller',
  line1: '7 Ropewalk',
  line2: '',
  town: 'Tenterholm',
  region: 'Scourshire',
  postcode: 'TH0 4ZZ',
  country: 'GB',
};
const lines = (fields: Partial<typeof address>) => {
  const to = { ...address, ...fields };
  return addressLines(to, countryName(to.country, 'en').toUpperCase()).slice(2);
};

it.each([
  [{}, ['Tenterholm', 'Scourshire', 'TH0 4ZZ', 'UNITED KINGDOM']],
  [{ country: 'US', region: 'VT', postcode: '05001' }, ['Tenterholm VT 05001', 'UNITED STATES']],
  [{ country: 'DE', region: '', postcode: '24999' }, ['24999 Tenterholm', 'GERMANY']],
  [{ country: 'IE', region: '', postcode: '' }, ['Tenterholm', 'IRELAND']],
  [
    { country: 'HK', region: '', postcode: '', line2: 'Flat 2' },
    ['Flat 2', 'Tenterholm', 'HONG KONG SAR CHINA'],
  ],
  [{ country: 'FR', town: '', region: '', postcode: '' }, ['FRANCE']],
])('%j stands in the order of its country, without empty lines', (fields, expected) => {
  expect(lines(fields)).toEqual(expected);
});

it('names a country in the reader’s language, and what is none by its letters', () => {
  expect(countryName('DE', 'de')).toBe('Deutschland');
  expect(countryName('<b>', 'en')).toBe('<b>');
});
