import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, expect, it } from 'vitest';
import type { Finding, Findings, Quantities } from './findings';
import { QuantitiesPanel, tableRows } from './quantities_panel';
import { tabbed } from './table_copy';

const rock = {
  item: 'rock-ordered',
  of: 'fhwa-3',
  what: 'Rock, Class III, ordered',
  how: 'in place + 5 % to spare',
  price: 'rock: 58 USD for 1 ton',
  partial: false,
  value: 1621.5,
  unit: 'ton',
  text: '1622 ton',
  cost: 94047,
  cost_text: '94 047 USD',
};
const unknown = {
  item: 'rock-toe',
  of: 'fhwa-3',
  what: 'Rock of the toe',
  how: '',
  price: '',
  partial: false,
};
const quantities: Quantities = {
  currency: 'USD',
  prices_from: 'a test',
  zones: [
    {
      zone: 'bank',
      name: 'Outer\tbank',
      rows: [rock, unknown],
      missing: ['Its length is not known.'],
    },
  ],
  totals: [{ ...rock, partial: true }],
  cost_text: '94 047 USD',
};
const findings = (topics: string[]) =>
  ({ findings: topics.map((topic) => ({ topic }) as Finding) }) as Findings;

let place: HTMLElement;
beforeEach(() => {
  place = document.createElement('div');
  document.body.append(place);
});
afterEach(() => {
  render(null, place);
  place.remove();
});

async function show(topics: string[], open: boolean) {
  const asked: string[] = [];
  const ask = (what: string) => {
    asked.push(what);
    return Promise.resolve({ quantities, csv: 'a,b' });
  };
  const all = findings(topics);
  await act(() => render(<QuantitiesPanel findings={all} ask={ask} />, place));
  const details = place.querySelector('details');
  if (open && details) {
    await act(() => {
      details.open = true;
      details.dispatchEvent(new Event('toggle'));
    });
  }
  return asked;
}

it('is not there where the engine counted nothing', async () => {
  await show(['layer'], false);
  expect(place.querySelector('details')).toBeNull();
});

it('asks only when it is unfolded', async () => {
  expect(await show(['quantities'], false)).toEqual([]);
  expect(await show(['quantities'], true)).toEqual(['quantities']);
});

it('shows amounts, costs and what is missing as the engine words them', async () => {
  await show(['quantities'], true);
  const text = place.textContent ?? '';
  for (const part of [
    '1622 ton',
    '94 047 USD',
    'in place + 5 % to spare',
    'not yet known',
    'Its length is not known.',
    '1622 ton, in part',
    'a test',
  ]) {
    expect(text).toContain(part);
  }
});

it('copies numbers as numbers, one row a line', () => {
  const lines = tabbed(tableRows(quantities)).split('\n');
  expect(lines[1]).toBe(
    'Outer bank\tRock, Class III, ordered\t1621.5\tton\tin place + 5 % to spare\trock: 58 USD for 1 ton\t94047',
  );
  expect(lines[2]?.split('\t')[2]).toBe('');
  expect(lines.length).toBe(5);
});
